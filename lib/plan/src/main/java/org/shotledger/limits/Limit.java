package org.shotledger.limits;

import org.shotledger.units.QuantityKind;

/**
 * One value held against one bound.
 *
 * @param key stable name, for example {@code "peak-pressure"}
 * @param name what is limited, in the words of the trade
 * @param kind what the value measures
 * @param value the value reached, SI; NaN where the models have no answer, which breaks the limit
 * @param bound the value allowed, SI
 * @param side the side of the bound on which the value must stay
 * @param hard whether no message may invite to move it and no sheet may loosen it
 * @param consequence what happens when the limit is broken
 * @param provenance how the bound is known
 * @param reason where the bound comes from: the builder's words, the regulation, the habit
 * @param place where the value is closest to the bound, for example {@code "6,200 rpm, nitrous on"}
 * @param caseName the case in which it is
 * @param scale the distance that counts as the whole bound when margins are compared, SI; zero for a bound that is kept or not, with
 *     nothing between
 */
public record Limit(
        String key,
        String name,
        QuantityKind kind,
        double value,
        double bound,
        Side side,
        boolean hard,
        String consequence,
        Provenance provenance,
        String reason,
        String place,
        String caseName,
        double scale) {
    /** Margin below which a kept limit is called tight, as a share of the bound: common practice, no source. */
    public static final double CAUTION = 0.05;

    /**
     * Distance to the bound, positive while the limit is kept.
     *
     * @return the margin in the SI unit of {@link #kind()}
     */
    public double margin() {
        return side == Side.AT_MOST ? bound - value : value - bound;
    }

    /**
     * Distance to the bound as a fraction of the {@link #scale}, which is the bound itself for most limits.
     *
     * @return the relative margin; positive while the limit is kept; negative infinity where there is no value
     */
    public double relativeMargin() {
        double margin = margin();
        if (Double.isNaN(margin)) {
            return Double.NEGATIVE_INFINITY;
        }
        return scale > 0 ? margin / scale : margin >= 0 ? 1 : -1;
    }

    /**
     * The verdict on this limit.
     *
     * @return broken when the margin is negative or the value is not a number, tight when it is inside the caution range
     */
    public Verdict verdict() {
        if (!(margin() >= 0)) {
            return Verdict.BROKEN;
        }
        return relativeMargin() < CAUTION ? Verdict.TIGHT : Verdict.HOLDS;
    }

    /**
     * What a reader may do about it.
     *
     * @return for a limit that nobody may move, that it is so; else nothing
     */
    public String remedy() {
        return hard ? "change the part, the charge or the target; this limit is not to be moved" : "";
    }
}
