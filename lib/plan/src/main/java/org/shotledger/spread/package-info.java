/**
 * Spread from cylinder to cylinder: what the tolerance of jets, or the way a shared nozzle divides its spray, does to the
 * mixture and the load of each cylinder.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code flow}, {@code fuel}, {@code engine}, {@code nitrous}, {@code build},
 * {@code budget}, {@code org.hipparchus}.
 */
package org.shotledger.spread;
