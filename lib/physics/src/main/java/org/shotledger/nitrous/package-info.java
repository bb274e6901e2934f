/**
 * The wet nitrous-oxide kit: jets and their ladder, solenoids, the fuel circuit that feeds the second jet, and pulsed
 * delivery.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code curve}, {@code fluid}, {@code flow}, {@code fuel}, {@code supply}.
 */
package org.shotledger.nitrous;
