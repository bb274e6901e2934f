package org.shotledger.whathelps;

import org.shotledger.limits.Limit;
import org.shotledger.plan.Plan;

/**
 * How good a plan is, so that two can be compared that are both broken.
 *
 * @param missing what is missing to a plan that keeps everything: the share of the power that is not reached, and the relative margin by
 *     which the worst limit is broken, each at most 1
 * @param margin least relative margin, up to what is called tight
 */
record Quality(double missing, double margin) {
    /** Differences below this are those of two searches for the same plan: half a per cent of margin, as the search counts. */
    private static final double SAME = 0.005;

    static Quality of(Plan plan) {
        double margin = plan.parts().leastMargin();
        double shortBy =
                plan.reached() ? 0 : 1 - plan.stated().power() / plan.target().wheelPower();
        return new Quality(Math.min(1, shortBy) + Math.min(1, Math.max(0, -margin)), Math.min(margin, Limit.CAUTION));
    }

    boolean betterThan(Quality other) {
        boolean whole = missing == 0 && other.missing > 0;
        boolean less = other.missing - missing > SAME;
        boolean same = missing <= other.missing;
        return whole || less || (same && margin - other.margin > SAME);
    }
}
