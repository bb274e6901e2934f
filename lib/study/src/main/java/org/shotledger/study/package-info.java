/**
 * Many builds at once: a space of combinations, a sweep that holds every one of them against every limit, the best, the
 * trade-off front, and what broke first in those that were refused.
 *
 * <p>The physics is the budget's: the sweep either calls it or reads factor tables filled by calling it, with their largest
 * difference stated.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code sheet}, {@code build}, {@code budget}, {@code org.hipparchus}.
 */
package org.shotledger.study;
