package org.shotledger.track;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;

/**
 * A plan whose seconds under nitrous are those of its own pass, instead of guessed ones.
 *
 * @param plan the plan
 * @param pass its pass
 * @param rounds seconds that were counted in each round, s, the guess of the sheet first
 * @param settled whether plan and pass agree to a quarter of a second
 */
public record SettledPlan(Plan plan, TrackPass pass, List<Double> rounds, boolean settled) {
    /** Plan and pass agree when they differ by no more, s: our choice, less than a driver repeats. */
    private static final double AGREES = 0.25;

    /** Rounds until the pass and the plan agree: our choice; what has not settled by then is said. */
    private static final int MOST_ROUNDS = 4;
    /** Shortest time that a plan counts, s. */
    private static final double SHORTEST = 0.5;

    public SettledPlan {
        rounds = List.copyOf(rounds);
    }

    /**
     * Plans, runs the pass, counts its seconds and plans anew until both agree.
     *
     * @param job the job
     * @return the last plan with its pass
     * @throws IllegalArgumentException as {@link TrackPass#of(Plan)}
     */
    public static SettledPlan of(Job job) {
        List<Double> rounds = new ArrayList<>();
        Job asked = job;
        while (true) {
            Plan plan = Plan.find(asked);
            TrackPass pass = TrackPass.of(plan);
            double counted = plan.setup().passes().seconds();
            rounds.add(counted);
            double wanted = Math.max(SHORTEST, pass.nitrousSeconds());
            boolean settled =
                    Math.abs(wanted - counted) <= AGREES || plan.setup().jets().isEmpty();
            if (settled || rounds.size() == MOST_ROUNDS) {
                return new SettledPlan(plan, pass, rounds, settled);
            }
            asked = asked.with(asked.target().withPasses(asked.target().passes(), wanted));
        }
    }
}
