/**
 * The ledger of an outcome: every figure of its point of most power, with equation, source, inputs and a formula that makes it again.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code car}, {@code setup}, {@code evaluate}, {@code limits},
 * {@code org.hipparchus}.
 */
package org.shotledger.ledger;
