/**
 * Logs of an engine or a dynamometer: reading them from CSV, saying what is wrong with them, and the work on their series (common
 * step, smoothing, alignment, finding the pull). It knows no build and no plan.
 *
 * <p>Allowed imports: {@code units} and {@code sheet}.
 */
package org.shotledger.logs;
