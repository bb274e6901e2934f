/**
 * What would help a plan that breaks a limit or is close to one: single changes, each planned anew in full.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code sheet}, {@code car}, {@code setup}, {@code evaluate}, {@code limits},
 * {@code job}, {@code ledger}, {@code plan}.
 */
package org.shotledger.whathelps;
