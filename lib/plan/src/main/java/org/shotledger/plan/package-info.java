/**
 * The setup for a target, what it does in every case, and what else was weighed.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code sheet}, {@code car}, {@code setup}, {@code evaluate}, {@code limits},
 * {@code job}, {@code ledger}, {@code org.hipparchus}.
 */
package org.shotledger.plan;
