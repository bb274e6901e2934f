package org.shotledger.risk;

import org.shotledger.limits.Provenance;
import org.shotledger.units.QuantityKind;

/**
 * One condition under which the nitrous may be on. It closes outside low and high, and opens again only inside both by the
 * hysteresis. Where setup or car state a bound, it is that figure; between which values every limit is kept stands beside it.
 *
 * @param key stable name, for example {@code "bottle-pressure"}
 * @param name in the words of the trade
 * @param kind what it measures
 * @param low closes below, SI; NaN when there is no lower end
 * @param high closes above, SI; NaN when there is no upper end
 * @param hysteresis how far inside low and high it must come back before it opens, SI, 0 or more
 * @param planned the value of the plan; NaN where the plan has none
 * @param kept where every limit is kept
 * @param lowReason why not lower
 * @param highReason why not higher
 * @param provenance how the bounds are known
 */
public record Interlock(
        String key,
        String name,
        QuantityKind kind,
        double low,
        double high,
        double hysteresis,
        double planned,
        Kept kept,
        String lowReason,
        String highReason,
        Provenance provenance) {
    /** Bounds closer than this share are the same bound: ends are searched no finer. */
    private static final double SAME = 1e-3;

    /**
     * The values between which every limit is kept while all else is as planned.
     *
     * @param low lowest, SI; NaN where no end was found
     * @param high highest, SI; NaN where no end was found
     */
    public record Kept(double low, double high) {
        /** Not examined. */
        public static final Kept UNKNOWN = new Kept(Double.NaN, Double.NaN);
    }

    /**
     * Tells whether a value closes the nitrous.
     *
     * @param value the value read, SI
     * @return true outside low and high; false for a value that is not a number
     */
    public boolean closesAt(double value) {
        return value < low || value > high;
    }

    /**
     * Whether it lets the nitrous be on below the values at which every limit is kept.
     *
     * @return true when its lower bound lies lower than the lowest such value
     */
    public boolean opensTooLow() {
        return low < kept.low - SAME * Math.abs(kept.low);
    }

    /**
     * Whether it lets the nitrous be on above the values at which every limit is kept.
     *
     * @return true when its upper bound lies higher than the highest such value
     */
    public boolean opensTooHigh() {
        return high > kept.high + SAME * Math.abs(kept.high);
    }
}
