package org.shotledger.units;

/**
 * A figure read with its unit.
 *
 * @param kind what it measures
 * @param value the SI value
 * @param halfWidth half-width of the band given after {@code +/-}, SI; NaN when none was given
 * @param text the figure as it was written
 */
public record Reading(QuantityKind kind, double value, double halfWidth, String text) {

    /**
     * Standard uncertainty of a figure of which only the band is known: half-width over the root of three (rectangular
     * distribution, JCGM 100:2008, 4.3.7).
     *
     * @return the standard uncertainty, SI; NaN when no band was given
     */
    public double uncertainty() {
        return halfWidth / Math.sqrt(3);
    }
}
