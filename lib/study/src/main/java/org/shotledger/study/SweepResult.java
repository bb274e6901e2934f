package org.shotledger.study;

import java.util.List;
import java.util.Map;

/**
 * What a sweep found.
 *
 * @param space the space
 * @param task what was looked for
 * @param evaluated combinations evaluated; fewer than the space has when the sweep was stopped
 * @param accepted how many keep every limit
 * @param reached how many of those reach the wanted power
 * @param brokeFirst how many were rejected by each limit, by the limit's name, most first
 * @param best the best that keep every limit and reach the power, worked out again by the exact evaluation
 * @param front the trade-off front of all that keep every limit, likewise
 * @param power wheel power of those that keep every limit
 * @param margin their least margin
 * @param powerDifference largest relative difference of wheel power between the tables and the exact evaluation, over random
 *     points of every table and the combinations listed here
 * @param lambdaDifference the same for lambda
 */
public record SweepResult(
        Space space,
        SweepTask task,
        long evaluated,
        long accepted,
        long reached,
        Map<String, Long> brokeFirst,
        List<Candidate> best,
        List<Candidate> front,
        Histogram power,
        Histogram margin,
        double powerDifference,
        double lambdaDifference) {

    /** Copies the lists. */
    public SweepResult {
        best = List.copyOf(best);
        front = List.copyOf(front);
    }

    /**
     * Whether every combination was evaluated.
     *
     * @return false when the sweep was stopped; everything here then speaks of a part of the space
     */
    public boolean complete() {
        return evaluated == space.size();
    }

    /**
     * What was found in one sentence.
     *
     * @return counts, and that the sweep was stopped where it was
     */
    public String summary() {
        String part = complete()
                ? String.format(java.util.Locale.ROOT, "All %,d combinations", evaluated)
                : String.format(
                        java.util.Locale.ROOT, "STOPPED: only %,d of %,d combinations", evaluated, space.size());
        return part
                + String.format(
                        java.util.Locale.ROOT,
                        " were held against every limit: %,d keep them all, %,d of those reach the wanted power. The tables"
                                + " lie within %.3f %% in power and %.3f %% in lambda of the exact evaluation; what is listed was"
                                + " worked out exactly. An estimate, to be proven in small steps.",
                        accepted,
                        reached,
                        100 * powerDifference,
                        100 * lambdaDifference);
    }

    /**
     * The recommended combination.
     *
     * @return the first of the best
     * @throws StudyException when no combination keeps every limit and reaches the power; the message says what broke most
     */
    public Candidate recommended() {
        if (best.isEmpty()) {
            String most = brokeFirst.isEmpty()
                    ? "none"
                    : brokeFirst.keySet().iterator().next();
            throw new StudyException("No combination keeps every limit and reaches the wanted power ("
                    + accepted + " keep every limit); most were refused by \"" + most
                    + "\". Ask for less, relieve that limit, or widen the axes.");
        }
        return best.get(0);
    }
}
