/**
 * Pulsed delivery of the shot: what the two solenoids really pass at a duty, what that does to the mixture, and a ramp of steps
 * that holds a torque or a grip limit.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code flow}, {@code engine}, {@code nitrous}, {@code drive}, {@code build},
 * {@code budget}.
 */
package org.shotledger.delivery;
