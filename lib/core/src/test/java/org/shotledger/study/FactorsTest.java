package org.shotledger.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.shotledger.budget.Budget;

/** The tables against the evaluation they are made from. */
class FactorsTest {
    /** Raise with {@code -Dshotledger.combinations=10000} for the full comparison, about a minute on a quiet core. */
    private static final int COMBINATIONS = Integer.getInteger("shotledger.combinations", 300);

    private static final double BOUND = 1e-3;
    /** Where both margins lie below this the limit is broken anyhow, and only the verdict counts. */
    private static final double DEEP = -0.02;

    /** A margin may differ by this much before the closest limit may be another one. */
    private static final double NEAR = 4e-3;

    @Test
    void an_exact_combination_is_the_budget_of_the_same_jets() {
        Budget plan = Budget.plan(Heron.BUILD);
        Space space = Space.around(plan);
        Figures outcome = new ExactStudy(space).outcome(0);
        assertEquals(1, space.size());
        assertEquals(plan.peak().wheelPower(), outcome.wheelPower(), 1e-4 * outcome.wheelPower());
        assertEquals(plan.limits().leastMargin(), outcome.leastMargin(), 1e-4);
        assertEquals(plan.limits().first().orElseThrow().key(), outcome.first());
    }

    @Test
    void power_and_lambda_of_random_combinations_lie_within_a_tenth_of_a_percent() {
        compare(Heron.wide(), 20261125);
    }

    @Test
    void a_regulator_without_boost_reference_is_told_as_well() {
        compare(Heron.small("0", "0.5"), 7);
    }

    private static void compare(Space space, long seed) {
        Courses courses = new Courses(space);
        long[] indices =
                new SplittableRandom(seed).longs(COMBINATIONS, 0, space.size()).toArray();
        List<Figures> tables = new Factors(space, courses).outcomes(indices, SweepTask.of(space));
        ExactStudy exact = new ExactStudy(space, courses);
        int figures = 0;
        double power = 0;
        double lambda = 0;
        int otherLimit = 0;
        for (int i = 0; i < indices.length; i++) {
            Figures is = exact.outcome(indices[i]);
            Figures table = tables.get(i);
            boolean counted = hasFigures(is) && hasFigures(table);
            if (counted) {
                figures++;
                power = Math.max(power, Math.abs(table.wheelPower() / is.wheelPower() - 1));
                lambda = Math.max(lambda, Math.abs(table.lambda() / is.lambda() - 1));
                double room = NEAR + 0.05 * Math.abs(is.leastMargin());
                // the pump's margin is taken at the boost that is held, where it works hardest: lower, never higher
                double below = table.first().equals(Figures.PUMP) ? 3 * room : room;
                boolean close =
                        table.leastMargin() < is.leastMargin() + room && table.leastMargin() > is.leastMargin() - below;
                boolean bothBroken = Math.max(table.leastMargin(), is.leastMargin()) < DEEP;
                assertTrue(close || bothBroken, () -> is + " " + table);
            }
            boolean near = Math.abs(is.leastMargin() - table.leastMargin()) < NEAR;
            otherLimit += is.first().equals(table.first()) || near ? 0 : 1;
        }
        assertTrue(figures > indices.length / 10, figures + " with figures");
        assertTrue(power < BOUND, "power differs by " + power);
        assertTrue(lambda < BOUND, "lambda differs by " + lambda);
        assertTrue(otherLimit <= indices.length / 100, otherLimit + " combinations name another limit");
    }

    /** Those far beyond mixture, temperature, pump or map get none in either way. */
    private static boolean hasFigures(Figures outcome) {
        boolean far =
                List.of(Figures.LEAN, Figures.RICH, Figures.COLD, Figures.PUMP).contains(outcome.first());
        return Double.isFinite(outcome.leastMargin()) && !(far && outcome.leastMargin() < -0.05);
    }
}
