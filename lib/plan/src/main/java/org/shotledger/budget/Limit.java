package org.shotledger.budget;

import org.shotledger.units.QuantityKind;

/**
 * One value held against one bound.
 *
 * @param key stable name, for example {@code "peak-pressure"}
 * @param name what is limited, in the words of the trade
 * @param kind what the value measures
 * @param value the value reached, SI
 * @param bound the value allowed, SI
 * @param side the side of the bound on which the value must stay
 * @param caution margin below which a kept limit is called tight, as a fraction of the bound, 0 to 1
 * @param consequence what happens when the limit is broken
 * @param standing how the bound is known
 * @param powerToBound wheel power that could still be added until the limit bites, W; negative when it is broken by that
 *     much; NaN when the limit does not depend on power
 */
public record Limit(
        String key,
        String name,
        QuantityKind kind,
        double value,
        double bound,
        Side side,
        double caution,
        String consequence,
        Standing standing,
        double powerToBound) {

    /**
     * Distance to the bound, positive while the limit is kept.
     *
     * @return the margin in the SI unit of {@link #kind()}
     */
    public double margin() {
        return side == Side.AT_MOST ? bound - value : value - bound;
    }

    /**
     * Distance to the bound as a fraction of the bound.
     *
     * @return the relative margin; positive while the limit is kept
     */
    public double relativeMargin() {
        return bound == 0 ? margin() : margin() / Math.abs(bound);
    }

    /**
     * The verdict on this limit.
     *
     * @return broken when the margin is negative or the value is not a number, tight when it is inside the caution band
     */
    public Verdict verdict() {
        if (!(margin() >= 0)) {
            return Verdict.BROKEN;
        }
        return relativeMargin() < caution ? Verdict.TIGHT : Verdict.HOLDS;
    }
}
