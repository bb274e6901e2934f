/**
 * Many setups at once: which keep every limit in every case, which of them is best, and what the others break.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code lib/plan}, {@code org.hipparchus}.
 */
package org.shotledger.study;
