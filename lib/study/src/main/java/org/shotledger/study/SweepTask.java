package org.shotledger.study;

import java.util.List;

/**
 * What a sweep is to look for.
 *
 * @param wanted wheel power that must be reached by the best, W
 * @param rankBy what the best are ranked by among those that keep every limit with 0.2 % in hand and reach the power; equal
 *     ones, margins within half a percent among them, by forgiveness
 * @param best how many of the best are kept, 1 to 1000
 * @param objectives what the trade-off front is spanned by, two to four different ones
 */
public record SweepTask(double wanted, Objective rankBy, int best, List<Objective> objectives) {
    /** A wish is met within half a percent, as in the budget. */
    private static final double MET = 0.995;

    /** Checks the numbers. */
    public SweepTask {
        objectives = List.copyOf(objectives);
        if (!(wanted > 0 && Double.isFinite(wanted))) {
            throw new StudyException(
                    "The power wanted of a sweep is " + wanted + " W; give a finite number above zero.");
        }
        if (best < 1 || best > 1000) {
            throw new StudyException("A sweep keeps " + best + " of the best; allowed are 1 to 1000.");
        }
        if (objectives.size() < 2
                || objectives.size() > 4
                || objectives.stream().distinct().count() < objectives.size()) {
            throw new StudyException(
                    "The trade-off front is spanned by " + objectives + "; name two to four different objectives.");
        }
    }

    /**
     * The usual task: reach the space's wish with the largest margin; front of power, margin and nitrous used.
     *
     * @param space the space
     * @return the task
     */
    public static SweepTask of(Space space) {
        return new SweepTask(
                MET * space.wish().wheelPower(),
                Objective.MARGIN,
                10,
                List.of(Objective.POWER, Objective.MARGIN, Objective.NITROUS));
    }

    /**
     * The same with other objectives for the front.
     *
     * @param others two to four different ones
     * @return the changed task
     */
    public SweepTask front(Objective... others) {
        return new SweepTask(wanted, rankBy, best, List.of(others));
    }

    /**
     * The same ranked otherwise.
     *
     * @param objective what the best are ranked by
     * @param count how many are kept
     * @return the changed task
     */
    public SweepTask best(Objective objective, int count) {
        return new SweepTask(wanted, objective, count, objectives);
    }
}
