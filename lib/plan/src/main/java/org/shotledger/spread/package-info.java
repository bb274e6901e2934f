/**
 * Spread from cylinder to cylinder: what the tolerance of jets, or the way a shared nozzle divides its spray, does to the
 * mixture and the load of each cylinder.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code car}, {@code setup}, {@code evaluate}, {@code limits}, {@code job},
 * {@code ledger}, {@code plan}, {@code org.hipparchus}.
 */
package org.shotledger.spread;
