/**
 * One job: a plan under sliders. What is set and what the day brings are moved by hand; shown is the outcome of that setup in that case,
 * the same object and the same figures as everywhere else.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code lib/plan}, {@code study}, {@code controls}, {@code display}, {@code table},
 * {@code chart}, {@code view}.
 */
package org.shotledger.explore;
