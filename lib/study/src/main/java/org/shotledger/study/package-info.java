/**
 * Many setups at once: which keep every limit in every case, which of them is best, and what the others break.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code car}, {@code setup}, {@code evaluate}, {@code limits}, {@code job}, {@code plan}.
 */
package org.shotledger.study;
