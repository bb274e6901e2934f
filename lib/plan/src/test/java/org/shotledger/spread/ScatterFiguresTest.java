package org.shotledger.spread;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tolerances, branches and the mixture of one cylinder with figures worked out by hand; no car is needed. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ScatterFiguresTest {
    /** Oxygen from air 0.55 and nitrous oxide 0.25 of the demand, of which the main fuel has 0.7: lambda 0.8. */
    private static final OxygenShares SHARES = new OxygenShares(0.55, 0.25, 0.7, 0.3);

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 0.5, Double.NaN})
    void a_tolerance_that_leaves_no_hole_is_refused(double halfWidth) {
        assertThrows(IllegalArgumentException.class, () -> Scatter.uniform(halfWidth));
    }

    @ParameterizedTest
    @CsvSource({"-0.2, 0", "-0.1, 0", "-0.05, 0.25", "0, 0.5", "0.05, 0.75", "0.1, 1", "0.2, 1"})
    void equally_likely_values_fill_their_tolerance(double deviation, double probability) {
        Scatter tenth = Scatter.uniform(0.1);
        assertEquals(0.1, tenth.reach());
        assertEquals(probability, tenth.probability(deviation), 1e-12);
        if (Math.abs(deviation) <= 0.1) {
            assertEquals(deviation, tenth.quantile(probability), 1e-12);
        }
    }

    /** A tolerance of 0.1 is two standard deviations: one of them, 0.05, is not exceeded by 0.84134 of all (tables of the normal distribution). */
    @Test
    void normal_values_have_half_the_tolerance_as_standard_deviation_and_end_at_four() {
        Scatter normal = Scatter.normal(0.1);
        assertEquals(0.2, normal.reach(), 1e-12);
        // cut at four: (0.8413447 - 0.0000317) / (1 - 2 * 0.0000317)
        assertEquals(0.841366, normal.probability(0.05), 1e-6);
        assertEquals(0.158634, normal.probability(-0.05), 1e-6);
        assertEquals(0.5, normal.probability(0), 1e-12);
        assertEquals(1, normal.probability(0.2), 1e-12);
        assertEquals(0, normal.probability(-0.2), 1e-12);
        assertEquals(0.05, normal.quantile(0.8413664), 1e-6);
    }

    @Test
    void without_tolerance_a_value_is_nominal() {
        Scatter none = Scatter.uniform(0);
        assertEquals(1, none.probability(0));
        assertEquals(0, none.probability(-1e-9));
        assertEquals(1, none.probability(1e-9));
    }

    /** A hole 10 % larger has 21 % more area; the mean of it and three others is 1.0525, whose root the pressure falls by. */
    @Test
    void a_branch_takes_its_share_of_the_area_at_the_pressure_of_the_whole() {
        Stream holes = new Stream(4, 0.5, Scatter.uniform(0.1), true);
        assertEquals(1.21, holes.factor(0.1), 1e-12);
        assertEquals(1.21 / Math.sqrt(1.0525), holes.flow(0.1, 0), 1e-12);
        // the others at the lower end: (1.21 + 3 * 0.81) / 4 = 0.91
        assertEquals(1.21 / Math.sqrt(0.91), holes.flow(0.1, -0.1), 1e-12);
        assertArrayEquals(
                new double[] {
                    1.21 / Math.sqrt(1.0525), 1 / Math.sqrt(1.0525), 1 / Math.sqrt(1.0525), 1 / Math.sqrt(1.0525)
                },
                holes.flows(new double[] {0.1, 0, 0, 0}),
                1e-12);
        Stream division = new Stream(4, 1, Scatter.uniform(0.1), false);
        assertEquals(1.1, division.flow(0.1, -0.1), 1e-12, "a share of a spray is the share itself");
    }

    @Test
    void a_flow_tells_its_deviation_and_how_likely_no_more_is() {
        Stream holes = new Stream(4, 0.5, Scatter.uniform(0.1), true);
        assertEquals(0.05, holes.deviation(holes.flow(0.05, 0)), 1e-9);
        assertEquals(0.1, holes.deviation(1.5));
        assertEquals(-0.1, holes.deviation(0.5));
        assertEquals(0.75, holes.probability(holes.flow(0.05, 0)), 1e-9);
        assertEquals(0.5, holes.probability(1), 1e-9);
        assertEquals(1, holes.probability(1.5));
        assertEquals(0, holes.probability(0.5));
    }

    @Test
    void lambda_is_oxygen_over_demand() {
        assertEquals(0.8, SHARES.lambda(1, 1), 1e-12);
        // (0.55 + 0.275) / (0.7 + 0.27)
        assertEquals(0.825 / 0.97, SHARES.lambda(1.1, 0.9), 1e-12);
        assertEquals(1.1, SHARES.nitrousFlow(0.825 / 0.97, 0.9), 1e-12);
    }

    /**
     * Both factors equally likely: for a fuel factor f the nitrous factor may be {@code (L (0.7 + 0.3 f) - 0.55) / 0.25}, which reaches
     * {@code u(f)} of its tolerance; the mean of u, held between 0 and 1, is {@code (G(u2) - G(u1)) / (u2 - u1)} with G the integral of the
     * held figure: 0, u u / 2, or u - 1/2.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.770, 0.778, 0.785, 0.79, 0.80, 0.81, 0.815, 0.822, 0.83})
    void the_probability_of_a_mixture_is_the_area_below_a_line(double lambda) {
        LambdaScatter scatter = scatter();
        double u1 = held(lambda, 0.9);
        double u2 = held(lambda, 1.1);
        double area = (integral(u2) - integral(u1)) / (u2 - u1);
        assertEquals(area, scatter.probability(lambda), 1e-12);
    }

    private static double held(double lambda, double fuel) {
        return ((lambda * (0.7 + 0.3 * fuel) - 0.55) / 0.25 - 0.96) / 0.08;
    }

    private static double integral(double u) {
        return u <= 0 ? 0 : u >= 1 ? u - 0.5 : u * u / 2;
    }

    private static LambdaScatter scatter() {
        return new LambdaScatter(
                SHARES, new Stream(1, 1, Scatter.uniform(0.04), false), new Stream(1, 1, Scatter.uniform(0.1), false));
    }

    /** The ends: (0.55 + 0.25 * 1.04) / (0.7 + 0.27) and (0.55 + 0.25 * 0.96) / (0.7 + 0.33). */
    @Test
    void the_ends_are_all_tolerances_at_their_worst() {
        assertEquals(0.81 / 0.97, scatter().leanest(), 1e-12);
        assertEquals(0.79 / 1.03, scatter().richest(), 1e-12);
    }

    /** No one of six is leaner with 0.95: each with the sixth root, 0.99149; no one richer: each below with 0.00851 only. */
    @Test
    void the_worst_of_several_cylinders_is_bounded_by_the_root_of_the_confidence() {
        LambdaScatter scatter = scatter();
        double lean = scatter.leanestOf(6, 0.95);
        double rich = scatter.richestOf(6, 0.95);
        assertEquals(0.991487, scatter.probability(lean), 1e-6);
        assertEquals(0.008513, scatter.probability(rich), 1e-6);
        assertTrue(rich > scatter.richest() && rich < 0.79 && lean > 0.81 && lean < scatter.leanest());
    }

    /** 12.7 um of 1.1 mm and of 0.62 mm; half of a flow's tolerance is that of the diameter; four nozzles halve what one divides badly. */
    @Test
    void a_supply_scatters_as_its_holes_or_its_spray_do() {
        Supply drilled = Supply.runners(1.1e-3, 0.62e-3, 12.7e-6);
        assertTrue(drilled.runner());
        assertEquals(Scatter.Shape.UNIFORM, drilled.nitrous().shape());
        assertEquals(0.0115454545, drilled.nitrous().halfWidth(), 1e-9);
        assertEquals(0.0204838710, drilled.fuel().halfWidth(), 1e-9);
        Supply matched = Supply.matchedRunners(0.01);
        assertEquals(0.005, matched.nitrous().halfWidth(), 1e-12);
        assertEquals(0.005, matched.fuel().halfWidth(), 1e-12);
        Supply four = Supply.shared(4, 0.06, 0.12);
        assertFalse(four.runner());
        assertEquals(Scatter.Shape.NORMAL, four.nitrous().shape());
        assertEquals(0.03, four.nitrous().halfWidth(), 1e-12);
        assertEquals(0.06, four.fuel().halfWidth(), 1e-12);
        assertEquals("4 nozzles before the runners", four.words());
        assertEquals(
                "one nozzle before the runners", Supply.shared(1, 0.06, 0.12).words());
    }
}
