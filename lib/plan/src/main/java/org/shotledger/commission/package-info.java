/**
 * Commissioning: what sensors must show and what their readings mean, the list of a first start and a first shot, the controller's tables,
 * and the job list with its bill of materials; all from one plan.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code car}, {@code setup}, {@code evaluate}, {@code limits}, {@code job},
 * {@code plan}, {@code stepup}, {@code workshop}.
 */
package org.shotledger.commission;
