/**
 * The step-up plan: a ladder of shots from small to target, each with its jets, what to expect, and the figures at which to go on
 * or to stop.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code car}, {@code setup}, {@code evaluate}, {@code limits}, {@code job},
 * {@code ledger}, {@code plan}, {@code org.hipparchus}.
 */
package org.shotledger.stepup;
