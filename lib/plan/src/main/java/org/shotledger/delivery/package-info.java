/**
 * Pulsed delivery of the shot: what the two solenoids really pass at a duty, what that does to the mixture, and a ramp of steps
 * that holds a torque or a grip limit.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code car}, {@code setup}, {@code evaluate}, {@code limits}, {@code job},
 * {@code ledger}, {@code plan}, {@code org.hipparchus}.
 */
package org.shotledger.delivery;
