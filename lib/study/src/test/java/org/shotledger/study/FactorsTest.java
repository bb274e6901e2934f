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
                lambda = Math.max(lambda, lambdaDifference(space, courses, is, table));
                double room = NEAR + 0.05 * Math.abs(is.leastMargin());
                assertEquals(is.leastMargin(), table.leastMargin(), room, () -> is + " " + table);
                assertEquals(is.peakPressure(), table.peakPressure(), 3e-3 * is.peakPressure(), () -> is + " " + table);
            }
            boolean near = Math.abs(is.leastMargin() - table.leastMargin()) < NEAR;
            otherLimit += is.first().equals(table.first()) || near ? 0 : 1;
        }
        assertTrue(figures > indices.length / 10, figures + " with figures");
        assertTrue(power < BOUND, "power differs by " + power);
        assertTrue(lambda < BOUND, "lambda differs by " + lambda);
        assertTrue(otherLimit <= indices.length / 100, otherLimit + " combinations name another limit");
    }

    /** Lambda belongs to the speed of most power; where two speeds make the same within the bound, to either of them. */
    private static double lambdaDifference(Space space, Courses courses, Figures is, Figures table) {
        double difference = Math.abs(table.lambda() / is.lambda() - 1);
        if (difference < BOUND) {
            return difference;
        }
        Combination combination = space.at(is.index());
        return courses.of(combination).points(combination.gaugePressure(), combination.jets()).stream()
                .filter(p -> p.wheelPower() > (1 - BOUND) * is.wheelPower())
                .mapToDouble(p -> Math.abs(table.lambda() / p.lambda() - 1))
                .min()
                .orElseThrow();
    }

    /** Those far beyond mixture, temperature, pump or map get none in either way. */
    private static boolean hasFigures(Figures outcome) {
        boolean far =
                List.of(Figures.LEAN, Figures.RICH, Figures.COLD, Figures.PUMP).contains(outcome.first());
        return Double.isFinite(outcome.leastMargin()) && !(far && outcome.leastMargin() < -0.05);
    }
}
