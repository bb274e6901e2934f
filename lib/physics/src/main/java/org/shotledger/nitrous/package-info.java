/**
 * The wet nitrous-oxide kit: jets and their ladder, solenoids, the fuel circuit that feeds the second jet, and pulsed
 * delivery.
 *
 * <p>It may import {@code units}, {@code curve}, {@code fluid}, {@code flow}, {@code fuel} and {@code supply}.
 */
package org.shotledger.nitrous;
