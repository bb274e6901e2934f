/**
 * Fuel supply: injectors, pumps with their wiring, regulators, and what pressure and flow they leave at the rail and at a
 * fuel jet.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code curve}, {@code fuel}.
 */
package org.shotledger.supply;
