/**
 * Spread from cylinder to cylinder: what the tolerance of jets, or the way a shared nozzle divides its spray, does to the
 * mixture and the load of each cylinder.
 *
 * <p>It may import {@code units}, {@code flow}, {@code fuel}, {@code engine}, {@code nitrous}, {@code build} and {@code budget}.
 */
package org.shotledger.spread;
