package org.shotledger.study;

import java.util.Comparator;
import org.shotledger.setup.Target;

/**
 * Which combination is the better one.
 *
 * <p>First those that keep every limit and reach the power, by margin in steps of 0.1 %, then by less nitrous; then those that keep
 * every limit but do not reach the power, by power; then the others, by margin.
 */
final class Rank {
    /** The ranking as a page states it. */
    static final String WORDS =
            "keeps every limit in every case and reaches the power; of those the larger margin (in steps of"
                    + " 0.1 %), then less nitrous; where the power is not reached, more power inside the limits";

    /** Steps of margin in a whole that count as one: our choice, less than any model knows. */
    private static final double STEPS = 1000;

    /**
     * What is known of a combination when it is ranked.
     *
     * @param index its number
     * @param margin least relative margin over all cases
     * @param power at the wheels in the stated case, W
     * @param nitrous flow in the stated case, kg/s
     */
    record Ranked(long index, double margin, double power, double nitrous) {}

    /** Above every power, W. */
    private static final double REACHED = 1e12;

    private Rank() {}

    /** The more, the better; what the ranking asks first. */
    static double score(double margin, double power, boolean reaches) {
        if (!(margin >= 0)) {
            return -REACHED + Math.floor(margin * STEPS);
        }
        return reaches ? REACHED + (int) (margin * STEPS) : power;
    }

    /** Best first; of equals the one that comes first in the space. */
    static Comparator<Ranked> bestFirst(Target target) {
        return Comparator.comparingDouble((Ranked r) -> -score(r.margin, r.power, target.reachedBy(r.power)))
                .thenComparingDouble(Ranked::nitrous)
                .thenComparingLong(Ranked::index);
    }

    /** Whether one is at least as good in power, margin and nitrous, and better in one. */
    static boolean dominates(Ranked a, Ranked b) {
        return a.power >= b.power
                && a.margin >= b.margin
                && a.nitrous <= b.nitrous
                && (a.power > b.power || a.margin > b.margin || a.nitrous < b.nitrous);
    }
}
