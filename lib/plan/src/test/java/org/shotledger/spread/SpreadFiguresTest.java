package org.shotledger.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.car.Car;
import org.shotledger.car.OtherLimits;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.job.Job;
import org.shotledger.limits.Limits;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/** What the spread does to the six cylinders of the demonstration car, asked of the model with other jets or other flows. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SpreadFiguresTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final JetPair JETS = new JetPair(1.1e-3, 0.62e-3);
    private static final Setup SETUP =
            JOB.setup().withBoost(BoostTarget.constant(1.3e5)).withJets(JETS);
    private static final Case AT = JOB.stated().withBottle(BottleState.at(298));
    private static final PointModel MODEL = Evaluate.model(JOB.car(), SETUP, AT);
    private static final double PLENUM = AT.air().pressure() + 1.3e5;
    private static final OperatingPoint POINT = MODEL.at(7000, PLENUM, Mode.NITROUS);
    /** 2 % and 3 % of the diameter. */
    private static final Supply SUPPLY = new Supply("", true, Scatter.uniform(0.02), Scatter.uniform(0.03));

    private static Outcome outcome(Car car) {
        return new Outcome(
                car, SETUP, AT, List.of(), List.of(POINT), List.of(), Optional.empty(), new Limits(List.of()));
    }

    private static CylinderSpread spread(Supply supply) {
        return CylinderSpread.of(outcome(JOB.car()), POINT, supply, 0.95);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, Double.NaN})
    void a_confidence_that_says_nothing_is_refused(double confidence) {
        Outcome outcome = outcome(JOB.car());
        assertThrows(IllegalArgumentException.class, () -> CylinderSpread.of(outcome, POINT, SUPPLY, confidence));
    }

    /** Nitrous oxide is 15.999 / 44.013 oxygen by mass; without both nitrous streams the mixture is that of air and main fuel. */
    @Test
    void the_oxygen_of_each_stream_is_that_of_its_flow() {
        var m = POINT.charge().mixture();
        OxygenShares shares = OxygenShares.of(POINT);
        assertEquals(15.999 / 44.013 * m.nitrous() / m.oxygenDemanded(), shares.nitrous(), 1e-4);
        assertEquals(POINT.lambda(), shares.air() + shares.nitrous(), 1e-12);
        assertEquals(1, shares.main() + shares.fuel(), 1e-12);
        assertEquals(m.lambdaWithoutNitrous(), shares.lambda(0, 0), 1e-9);
        assertTrue(shares.fuel() > 0.05 && shares.fuel() < shares.main());
    }

    /** All holes at their worst are other jets: the feed path answers for nitrous holes 2 % wider and fuel holes 3 % narrower. */
    @Test
    void all_cylinders_together_are_what_other_jets_would_give() {
        CylinderSpread spread = spread(SUPPLY);
        assertEquals(POINT.lambda(), spread.lambda());
        assertEquals(6, spread.cylinders());
        double oxide = MODEL.feed(PLENUM, 1.02 * JETS.nitrousBore()).massFlow()
                / MODEL.feed(PLENUM, JETS.nitrousBore()).massFlow();
        double fuel = MODEL.nitrousFuel(PLENUM, 0.97 * JETS.fuelBore()).massFlow()
                / MODEL.nitrousFuel(PLENUM, JETS.fuelBore()).massFlow();
        double expected = OxygenShares.of(POINT).lambda(oxide, fuel);
        assertTrue(expected > POINT.lambda() + 0.005, "lean by " + (expected - POINT.lambda()));
        assertEquals(expected, spread.allTogetherLean(), 2e-4);
        assertTrue(spread.leanest() > spread.allTogetherLean(), "one alone takes from the others as well");
        assertEquals(POINT.lambda(), spread(Supply.shared(1, 0.06, 0.12)).allTogetherLean());
    }

    private static Car within(double low, double high) {
        return OtherLimits.of(JOB.car(), Map.of("lambdaLow", low, "lambdaHigh", high));
    }

    private static double inside(double low, double high) {
        return CylinderSpread.of(outcome(within(low, high)), POINT, SUPPLY, 0.95)
                .insideLimits();
    }

    /** About half of all cylinders lie on either side of nominal, so six lie on one side with about one in 64. */
    @Test
    void every_cylinder_must_lie_inside_for_the_engine_to() {
        CylinderSpread spread = spread(SUPPLY);
        double below = spread.probability(POINT.lambda());
        assertEquals(0.5, below, 0.02);
        assertEquals(Math.pow(below, 6), inside(0.5, POINT.lambda()), 1e-9);
        assertEquals(Math.pow(1 - below, 6), inside(POINT.lambda(), 1.2), 1e-9);
        assertEquals(1, inside(0.5, 1.2), 1e-9);
        assertEquals(0, inside(1.1, 1.2), 1e-9);
    }

    private static double peak(double nitrous, double fuel) {
        return MODEL.at(
                        7000,
                        PLENUM,
                        Mode.NITROUS,
                        POINT.nitrous().times(nitrous),
                        POINT.nitrousFuel().times(fuel))
                .cylinder()
                .peakPressure();
    }

    /**
     * The widest nitrous hole among narrow ones takes {@code 1.0404 / mean^(1-e)} with the mean of its own 1.0404 and five times 0.9604; its
     * fuel hole is at either end against the others. Likely is the hole at 0.98297 of its tolerance, as {@code 2 * 0.95^(1/6) - 1}.
     */
    @Test
    void peak_pressure_follows_the_nitrous_of_the_richest_fed_cylinder() {
        CylinderSpread spread = spread(SUPPLY);
        LambdaScatter scatter = CylinderSpread.scatter(outcome(JOB.car()), POINT, SUPPLY);
        double e = scatter.nitrous().exponent();
        double g = scatter.fuel().exponent();
        assertTrue(e > 0.3 && e < 1 && g > 0.3 && g <= 1, e + " and " + g);
        double most = 1.0404 * Math.pow((1.0404 + 5 * 0.9604) / 6, e - 1);
        double little = 0.9409 * Math.pow((0.9409 + 5 * 1.0609) / 6, g - 1);
        double much = 1.0609 * Math.pow((1.0609 + 5 * 0.9409) / 6, g - 1);
        double worst = Math.max(peak(most, little), peak(most, much));
        assertEquals(worst, spread.worstPeakPressure(), 1e-6 * worst);
        double hole = 1 + 0.02 * (2 * Math.pow(0.95, 1 / 6.0) - 1);
        double likely = peak(hole * hole * Math.pow((hole * hole + 5) / 6, e - 1), 1);
        assertEquals(likely, spread.likelyPeakPressure(), 1e-6 * likely);
        assertEquals(peak(1, 1), spread.peakPressure(), 1e-6 * worst);
        assertTrue(spread.peakPressure() < likely && likely < worst);
    }
}
