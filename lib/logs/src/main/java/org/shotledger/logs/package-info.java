/**
 * Logs of an engine or a dynamometer: reading them from CSV, saying what is wrong with them, and the work on their series (common
 * step, smoothing, alignment, finding the pull). It knows no build and no plan.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code sheet}, {@code org.hipparchus}.
 */
package org.shotledger.logs;
