package org.shotledger.confidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Evaluation;
import org.shotledger.build.Build;

/** The plan of the invented demo build under what its sheet does not know. */
class ConfidenceStudyTest {
    private static final int DRAWS = 1 << 14;
    private static Plan plan;
    private static List<Unknown> unknowns;
    private static Confidence confidence;

    @BeforeAll
    static void study() {
        Build build = Build.load(Path.of("../../data/heron/build.yaml"));
        plan = Plan.of(Budget.plan(build));
        unknowns = new ArrayList<>(Unknown.stated(build));
        unknowns.removeIf(u -> u.path().startsWith("engine.") || u.path().startsWith("injection."));
        unknowns.add(Unknown.field(build, "bottle.start-temperature", Distribution.normal(32, 1)));
        unknowns.add(Unknown.own(Unknown.BOOST, Distribution.normal(0, 0.02)));
        unknowns.add(Unknown.own(Unknown.FUEL_JET, Distribution.normal(1, 0.005)));
        confidence = ConfidenceStudy.of(plan, unknowns, DRAWS, 5);
    }

    @Test
    void the_quadratic_forms_lie_within_a_tenth_of_a_percent_of_the_exact_evaluation() {
        assertTrue(confidence.powerDifference() < 1e-3, "power " + confidence.powerDifference());
        assertTrue(confidence.lambdaDifference() < 1e-3, "lambda " + confidence.lambdaDifference());
    }

    @Test
    void the_chances_are_those_of_drawing_the_exact_evaluation() {
        int draws = 200;
        ShiftedSobol points = new ShiftedSobol(unknowns.size(), 12);
        double[] u = new double[unknowns.size()];
        int reached = 0;
        int counted = 0;
        for (int n = 0; n < draws; n++) {
            points.next(u);
            double[] x = new double[u.length];
            for (int i = 0; i < u.length; i++) {
                x[i] = unknowns.get(i).distribution().quantile(u[i]);
            }
            try {
                double power = plan.at(unknowns, x).stream()
                        .mapToDouble(Evaluation::wheelPower)
                        .max()
                        .orElseThrow();
                counted++;
                reached += power >= 0.995 * plan.wish().wheelPower() ? 1 : 0;
            } catch (IllegalArgumentException beyondTheMap) {
                // such a draw says nothing about the power
            }
        }
        Chance exact = Chance.wilson(reached, counted);
        double wanted = 0.995 * plan.wish().wheelPower();
        double least = shareAbove(wanted * (1 + confidence.powerDifference()));
        double most = shareAbove(wanted * (1 - confidence.powerDifference()));
        assertTrue(
                least <= exact.high() && most >= exact.low(),
                confidence.reach() + ", from " + least + " to " + most + " within the stated difference, exactly "
                        + exact + " of " + counted);
    }

    private static double shareAbove(double power) {
        double[] sorted = confidence.power().sorted();
        return (double) java.util.Arrays.stream(sorted).filter(p -> p >= power).count() / sorted.length;
    }

    @Test
    void chances_hang_together() {
        assertTrue(confidence.both().probability() <= confidence.reach().probability());
        assertTrue(confidence.both().probability() <= confidence.keep().probability());
        confidence
                .limits()
                .values()
                .forEach(c -> assertTrue(c.probability() >= confidence.keep().probability()));
        assertEquals(confidence.power().quantile(0.5), confidence.powerAt(0.5), 0.02 * confidence.powerAt(0.5));
        assertTrue(confidence.powerAt(0.9) < confidence.powerAt(0.5));
        double first =
                confidence.influences().stream().mapToDouble(Influence::first).sum();
        assertEquals(1, first, 0.05);
    }

    @Test
    void the_same_seed_gives_the_same_answer() {
        Confidence again = ConfidenceStudy.of(plan, unknowns, DRAWS, 5);
        assertEquals(confidence.both(), again.both());
        assertEquals(confidence.power().mean(), again.power().mean());
    }

    @Test
    void what_to_measure_next_weighs_the_effort() {
        String strongest = confidence.measureNext().unknown().path();
        List<Unknown> dear = unknowns.stream()
                .map(u -> u.path().equals(strongest) ? u.withEffort(1000) : u)
                .toList();
        assertTrue(!ConfidenceStudy.of(plan, dear, DRAWS, 5)
                .measureNext()
                .unknown()
                .path()
                .equals(strongest));
    }

    @Test
    void bad_input_is_told_in_one_sentence() {
        assertSays(
                "Did you mean \"bottle.start-temperature\"",
                () -> Unknown.field(plan.build(), "bottle.start-temprature", Distribution.normal(32, 1)));
        assertSays("only a number", () -> Unknown.field(plan.build(), "driveline.layout", Distribution.normal(1, 1)));
        assertSays("none of", () -> Unknown.own("bottle", Distribution.normal(1, 1)));
        assertSays("nothing unknown", () -> ConfidenceStudy.of(plan, List.of(), DRAWS, 1));
        assertSays("draws", () -> ConfidenceStudy.of(plan, unknowns, 10, 1));
        assertSays("effort", () -> unknowns.get(0).withEffort(Double.NaN));
    }

    private static void assertSays(String words, org.junit.jupiter.api.function.Executable attempt) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, attempt);
        assertTrue(e.getMessage().contains(words), e.getMessage());
    }

    /** Wilson's interval: 81 of 263 gives 0.2553 to 0.3662 (Newcombe, Statistics in Medicine 17 (1998) 857, table I, method 3; from memory). */
    @Test
    void wilsons_interval_is_the_published_one() {
        Chance chance = Chance.wilson(81, 263);
        assertEquals(0.2553, chance.low(), 5e-5);
        assertEquals(0.3662, chance.high(), 5e-5);
    }
}
