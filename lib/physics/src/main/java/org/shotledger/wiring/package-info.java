/**
 * Wiring: cables and fuses of the electric loads, what alternator and battery give during a pass, which signals the controller
 * has room for, and what its sensors put out.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code curve}.
 */
package org.shotledger.wiring;
