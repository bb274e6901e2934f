/**
 * Passes on a track: a pass in time from a plan's own setup, setups compared by it, the seconds under nitrous that a plan is to count, and
 * the card for the day.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code car}, {@code setup}, {@code evaluate}, {@code limits}, {@code job},
 * {@code plan}, {@code delivery}, {@code workshop}.
 */
package org.shotledger.track;
