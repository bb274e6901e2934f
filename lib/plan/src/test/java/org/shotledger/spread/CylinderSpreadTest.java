package org.shotledger.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;

/** The exact distribution of lambda against a seeded simulation of the whole set of cylinders, and against laws. */
class CylinderSpreadTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final JetPair JETS = new JetPair(1.1e-3, 0.62e-3);
    private static final Outcome OUTCOME = Evaluate.of(
            JOB.car(), JOB.setup().withBoost(BoostTarget.constant(1.42e5)).withJets(JETS), JOB.stated());
    private static final OperatingPoint POINT = OUTCOME.at(7000).orElseThrow();
    private static final Supply RUNNERS =
            Supply.runners(JETS.nitrousBore(), JETS.fuelBore(), Supply.USUAL_BORE_TOLERANCE);

    @Test
    void without_tolerance_every_cylinder_is_nominal() {
        CylinderSpread none = CylinderSpread.of(OUTCOME, POINT, Supply.matchedRunners(0), 0.95);
        assertEquals(POINT.lambda(), none.leanest(), 1e-12);
        assertEquals(POINT.lambda(), none.richest(), 1e-12);
        assertEquals(POINT.lambda(), none.allTogetherLean(), 1e-12);
        assertEquals(1, none.insideLimits(), 1e-12);
    }

    @Test
    void the_bounds_hold_for_every_corner_of_the_tolerances() {
        LambdaScatter scatter = CylinderSpread.scatter(OUTCOME, POINT, RUNNERS);
        double n = RUNNERS.nitrous().halfWidth();
        double f = RUNNERS.fuel().halfWidth();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int corner = 0; corner < 1 << 12; corner++) {
            double[] nitrous = new double[6];
            double[] fuel = new double[6];
            for (int i = 0; i < 6; i++) {
                nitrous[i] = (corner >> i & 1) == 0 ? -n : n;
                fuel[i] = (corner >> (i + 6) & 1) == 0 ? -f : f;
            }
            double[] lambdas = scatter.lambdas(nitrous, fuel);
            least = Math.min(least, Arrays.stream(lambdas).min().orElseThrow());
            most = Math.max(most, Arrays.stream(lambdas).max().orElseThrow());
        }
        assertEquals(most, scatter.leanest(), 1e-12);
        assertEquals(least, scatter.richest(), 1e-12);
    }

    /**
     * All cylinders drawn together, so that shared pressure couples them; the distribution holds the others at nominal. With
     * N draws the 95 % point of a share is known to sqrt(p (1 - p) / N) in probability: three of that, and the coupling's own
     * thousandth of probability.
     */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void the_likely_bound_is_met_as_often_as_it_says(boolean runners) {
        int draws = 40_000;
        Supply supply = runners ? RUNNERS : Supply.shared(3, 0.06, 0.12);
        LambdaScatter scatter = CylinderSpread.scatter(OUTCOME, POINT, supply);
        double bound = scatter.leanestOf(6, 0.95);
        SplittableRandom random = new SplittableRandom(20261125);
        int inside = 0;
        for (int i = 0; i < draws; i++) {
            double[] lambdas =
                    scatter.lambdas(draw(supply.nitrous(), random, runners), draw(supply.fuel(), random, runners));
            inside += Arrays.stream(lambdas).max().orElseThrow() <= bound ? 1 : 0;
        }
        double allowed = 3 * Math.sqrt(0.95 * 0.05 / draws);
        // shares of one spray sum up to a whole, so that the cylinders are not quite independent
        double coupling = runners ? 0.001 : 0.008;
        assertEquals(0.95, (double) inside / draws, allowed + coupling);
    }

    /** Shares of a spray sum up to a whole; drawn about their mean, widened so that each keeps its own scatter. */
    private static double[] draw(Scatter scatter, SplittableRandom random, boolean independent) {
        double[] values = new double[6];
        Arrays.setAll(values, i -> scatter.quantile(random.nextDouble()));
        if (!independent) {
            double mean = Arrays.stream(values).average().orElseThrow();
            Arrays.setAll(values, i -> (values[i] - mean) * Math.sqrt(6 / 5.0));
        }
        return values;
    }

    @Test
    void probability_and_quantile_are_inverse() {
        LambdaScatter scatter = CylinderSpread.scatter(OUTCOME, POINT, RUNNERS);
        for (double p : new double[] {0.001, 0.05, 0.5, 0.95, 0.999}) {
            assertEquals(p, scatter.probability(scatter.quantile(p)), 1e-9);
        }
        assertEquals(0, scatter.probability(scatter.richest()), 1e-6);
        assertEquals(1, scatter.probability(scatter.leanest()), 1e-6);
    }

    /** The area of a hole goes with the square of its diameter: for +-5 % the bound is not the linear one. */
    @Test
    void a_wide_tolerance_is_propagated_through_the_square_and_the_quotient() {
        Supply wide = new Supply("wide", true, Scatter.uniform(0.05), Scatter.uniform(0.05));
        LambdaScatter scatter = CylinderSpread.scatter(OUTCOME, POINT, wide);
        double up = scatter.leanest() - POINT.lambda();
        double down = POINT.lambda() - scatter.richest();
        assertTrue(up > 1.02 * down, up + " against " + down);
    }

    @Test
    void matching_the_jets_buys_a_narrower_spread_and_less_peak_pressure() {
        CylinderSpread drilled = CylinderSpread.of(OUTCOME, POINT, RUNNERS, 0.95);
        CylinderSpread matched =
                CylinderSpread.of(OUTCOME, POINT, Supply.matchedRunners(Supply.USUAL_FLOW_MATCH), 0.95);
        assertTrue(matched.leanestLikely() < drilled.leanestLikely());
        assertTrue(matched.worstPeakPressure() < drilled.worstPeakPressure());
        assertTrue(matched.peakPressure() <= matched.worstPeakPressure());
    }

    @Test
    void a_point_without_nitrous_is_refused() {
        OperatingPoint off = OUTCOME.off().get(0);
        var refused =
                assertThrows(IllegalArgumentException.class, () -> CylinderSpread.of(OUTCOME, off, RUNNERS, 0.95));
        assertTrue(refused.getMessage().contains("nitrous off"), refused.getMessage());
    }
}
