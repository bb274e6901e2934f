package org.shotledger.budget;

import java.util.Optional;
import org.shotledger.build.Build;

/**
 * How much power a build gives inside every limit, and what stops more.
 *
 * @param asked the wheel power asked for, W
 * @param reached true when some split gives it inside every limit
 * @param wheelPower the most wheel power inside every limit, at most what was searched for, W
 * @param leastMargin smallest relative margin of the best split at the power asked; NaN when no jets give that power
 * @param limit the limit that stops more, in words
 */
public record Reach(double asked, boolean reached, double wheelPower, double leastMargin, String limit) {
    /** What stops more when no pair of jets gives more at any boost. */
    static final String NO_JETS = "the jets: no pair of the ladder that still burns gives more";

    /** The search for the most power stops at this relative step. */
    private static final double TOLERANCE = 0.01;
    /** Beyond a wish that is met the search goes up to this multiple of it. */
    private static final double BEYOND = 1.6;

    /**
     * Searches up to a wish; quick where the wish is met.
     *
     * @param build the build
     * @param wish what is asked
     * @return the reach; its power is the wish itself where that is met
     */
    public static Reach of(Build build, Wish wish) {
        return new Planner(build, wish).reach();
    }

    /**
     * Searches beyond a wish for the next limit to bite, the boost chosen anew at every power.
     *
     * @param build the build
     * @param wish what is asked
     * @return the reach, searched up to 1.6 times the wish
     */
    public static Reach beyond(Build build, Wish wish) {
        Planner planner = new Planner(build, wish);
        return search(planner, wish.wheelPower(), BEYOND * wish.wheelPower());
    }

    /**
     * Whether a wish is within reach, without the search for what is when it is not.
     *
     * @param build the build
     * @param wish what is asked
     * @return the reach; its power is the wish where that is met, else what boost alone gives
     */
    public static Reach atOnce(Build build, Wish wish) {
        Planner planner = new Planner(build, wish);
        double asked = wish.wheelPower();
        Optional<SplitCandidate> best = planner.best(asked);
        boolean kept = asked <= planner.boostAlone() || kept(best);
        return new Reach(
                asked,
                kept,
                kept ? asked : planner.boostAlone(),
                best.map(SplitCandidate::leastMargin).orElse(Double.NaN),
                best.map(SplitCandidate::firstLimit).orElse(NO_JETS));
    }

    private static boolean kept(Optional<SplitCandidate> best) {
        return best.filter(c -> c.leastMargin() >= 0).isPresent();
    }

    static Reach search(Planner planner, double asked, double highest) {
        Optional<SplitCandidate> atAsked = planner.best(asked);
        boolean kept = asked <= planner.boostAlone() || kept(atAsked);
        double low = kept ? Math.max(asked, planner.boostAlone()) : planner.boostAlone();
        double high = kept ? highest : asked;
        String limit = atAsked.map(SplitCandidate::firstLimit).orElse(NO_JETS);
        while (high - low > TOLERANCE * low) {
            double middle = (low + high) / 2;
            Optional<SplitCandidate> best = planner.best(middle);
            if (kept(best)) {
                low = middle;
            } else {
                high = middle;
                limit = best.map(SplitCandidate::firstLimit).orElse(NO_JETS);
            }
        }
        return new Reach(
                asked, kept, low, atAsked.map(SplitCandidate::leastMargin).orElse(Double.NaN), limit);
    }
}
