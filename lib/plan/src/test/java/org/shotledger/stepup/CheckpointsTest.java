package org.shotledger.stepup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.car.Car;
import org.shotledger.car.OnMainRail;
import org.shotledger.car.OtherLimits;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.job.Job;
import org.shotledger.limits.Limits;
import org.shotledger.limits.Provenance;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;
import org.shotledger.stepup.Checkpoint.Figure;
import org.shotledger.units.QuantityKind;

/**
 * The bounds at which a step goes on or stops, on the demonstration car at 1.3 bar: each is where the builder sets it, or where the mixture
 * worked out once more meets the lean limit. Nothing is worked out once for all tests.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CheckpointsTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Car CAR = JOB.car();
    private static final Setup SETUP =
            JOB.setup().withBoost(BoostTarget.constant(1.3e5)).withJets(new JetPair(1.0e-3, 0.56e-3));
    private static final Case GIVEN = JOB.stated().withBottle(BottleState.at(298));
    private static final Case CHARGED = JOB.stated().withBottle(BottleState.FULL);
    /** Fuel pressure over the plenum that the sheet's regulator holds. */
    private static final double SET = 3.5e5;

    /** A car whose lean limit, and nothing else, is another. */
    private static Car lean(Car car, double lambda) {
        return with(car, car.limits().lambdaLow(), lambda, car.limits().bottlePressureHigh());
    }

    private static Car with(Car car, double lambdaLow, double lambdaHigh, double bottleHigh) {
        return OtherLimits.of(
                car, Map.of("lambdaLow", lambdaLow, "lambdaHigh", lambdaHigh, "bottlePressureHigh", bottleHigh));
    }

    private static Checkpoint checkpoint(Car car, Setup setup, Case at, Figure figure) {
        return one(all(car, setup, at), figure);
    }

    private static List<Checkpoint> all(Car car, Setup setup, Case at) {
        OperatingPoint shot = shot(car, setup, at);
        Limits none = new Limits(List.of());
        return new Checkpoints(
                        new Outcome(car, setup, at, List.of(), List.of(shot), List.of(), Optional.empty(), none), shot)
                .all(4e5, 5e5);
    }

    /** The one point that the checkpoints are asked for; no other speed is worked out. */
    private static OperatingPoint shot(Car car, Setup setup, Case at) {
        return Evaluate.model(car, setup, at).at(7000, at.air().pressure() + 1.3e5, Mode.NITROUS);
    }

    private static Checkpoint one(List<Checkpoint> all, Figure figure) {
        return all.stream().filter(c -> c.figure() == figure).findFirst().orElseThrow();
    }

    @Test
    void both_ends_of_a_bound_still_go_on_and_nothing_beyond_does() {
        Checkpoint both =
                new Checkpoint(Figure.LAMBDA, "", QuantityKind.RATIO, 0.8, 0.76, 0.82, "", Provenance.COMMON_PRACTICE);
        assertTrue(both.go(0.76) && both.go(0.82));
        assertFalse(both.go(Math.nextDown(0.76)) || both.go(Math.nextUp(0.82)));
    }

    @Test
    void every_figure_is_read_once_and_bounded_as_the_builder_and_the_trade_have_it() {
        OperatingPoint shot = shot(CAR, SETUP, GIVEN);
        List<Checkpoint> all = all(CAR, SETUP, GIVEN);
        assertEquals(
                List.of(Figure.values()).stream().sorted().toList(),
                all.stream().map(Checkpoint::figure).sorted().toList());
        assertBounds(one(all, Figure.WHEEL_POWER), shot.wheelPower(), 4e5, 5e5);
        // sheet: torque 900 N m at most
        assertBounds(one(all, Figure.CRANK_TORQUE), shot.crankTorque(), Double.NEGATIVE_INFINITY, 900);
        assertBounds(
                one(all, Figure.INJECTOR_DUTY),
                shot.main().duty(),
                Double.NEGATIVE_INFINITY,
                CAR.limits().injectorDuty());
        assertBounds(one(all, Figure.EXHAUST_SPREAD), Double.NaN, 0, 50);
    }

    private static void assertBounds(Checkpoint checkpoint, double expected, double low, double high) {
        assertEquals(expected, checkpoint.expected(), checkpoint.what());
        assertEquals(low, checkpoint.low(), checkpoint.what());
        assertEquals(high, checkpoint.high(), checkpoint.what());
    }

    /** Twice the sensor's 0.02 to the rich side, once to the lean side, and never past what the builder allows. */
    @Test
    void lambda_may_be_a_little_rich_and_less_lean() {
        double lambda = shot(CAR, SETUP, GIVEN).lambda();
        Checkpoint wide = checkpoint(with(CAR, 0.5, 1.2, 7e6), SETUP, GIVEN, Figure.LAMBDA);
        assertEquals(lambda, wide.expected(), 1e-9);
        assertEquals(lambda - 0.04, wide.low(), 1e-9);
        assertEquals(lambda + 0.02, wide.high(), 1e-9);
        Checkpoint tight = checkpoint(with(CAR, lambda - 0.01, lambda + 0.005, 7e6), SETUP, GIVEN, Figure.LAMBDA);
        assertEquals(lambda - 0.01, tight.low(), 1e-9);
        assertEquals(lambda + 0.005, tight.high(), 1e-9);
    }

    /**
     * A lean limit so near that little fuel may be missing: flow goes with the root of the pressure over the plenum, so at the bound the
     * share {@code sqrt(low / set)} of the fuel makes just that mixture. A limit further off leaves the trade's nine tenths.
     */
    @Test
    void the_nitrous_is_cut_where_sagging_fuel_meets_the_lean_limit_or_at_nine_tenths() {
        OperatingPoint shot = shot(CAR, SETUP, GIVEN);
        double limit = shot.lambda() + 0.001;
        Checkpoint near = checkpoint(lean(CAR, limit), SETUP, GIVEN, Figure.NITROUS_FUEL_PRESSURE);
        assertEquals(SET, near.expected(), 1);
        assertEquals(Double.POSITIVE_INFINITY, near.high());
        assertEquals("nitrous fuel pressure above the plenum", near.what());
        assertTrue(near.low() < SET && near.low() > 0.9 * SET, "low " + near.low());
        double reached = Evaluate.model(CAR, SETUP, GIVEN)
                .at(
                        shot.rpm(),
                        shot.plenumPressure(),
                        Mode.NITROUS,
                        shot.nitrous(),
                        shot.nitrousFuel().times(Math.sqrt(near.low() / SET)))
                .lambda();
        assertEquals(limit, reached, 1e-8);
        assertTrue(
                near.otherwise().contains(String.format("%.2f bar", near.low() / 1e5)),
                near.otherwise() + " for " + near.low());

        Checkpoint far = checkpoint(lean(CAR, shot.lambda() + 0.03), SETUP, GIVEN, Figure.NITROUS_FUEL_PRESSURE);
        assertEquals(0.9 * SET, far.low(), 1);
        assertFalse(far.go(0.899 * SET));

        // beyond the limit already: no fuel pressure is low enough to be allowed but the set one
        Checkpoint past = checkpoint(lean(CAR, shot.lambda() - 0.01), SETUP, GIVEN, Figure.NITROUS_FUEL_PRESSURE);
        assertEquals(SET, past.low(), 1);
    }

    /** On the main rail all fuel falls with the root of the pressure, so the mixture is leaner by its inverse: 0.97 of it is 0.9409 of the set. */
    @Test
    void on_the_main_rail_both_fuels_fall_together() {
        Car rail = OnMainRail.car(CAR, 8e-4);
        Setup setup = OnMainRail.setup(SETUP);
        double lambda = shot(rail, setup, GIVEN).lambda();
        Checkpoint checkpoint = checkpoint(lean(rail, lambda / 0.97), setup, GIVEN, Figure.NITROUS_FUEL_PRESSURE);
        assertEquals("main rail pressure above the plenum", checkpoint.what());
        assertEquals(3e5, checkpoint.expected(), 1);
        assertEquals(0.9409 * 3e5, checkpoint.low(), 0.004 * 3e5);
    }

    /** A warmer bottle gives more nitrous oxide and a leaner mixture; at the pressure of the bound it just meets the limit. */
    @Test
    void a_bottle_so_warm_that_the_mixture_is_lean_is_not_opened() {
        double limit = shot(CAR, SETUP, GIVEN).lambda() + 0.001;
        Checkpoint near = checkpoint(with(CAR, 0.5, limit, 9e6), SETUP, GIVEN, Figure.BOTTLE_PRESSURE);
        double now = NitrousOxide.saturatedLiquid(298).pressure();
        assertEquals(now, near.expected(), 1e-9 * now);
        assertEquals(CAR.limits().bottlePressureLow(), near.low());
        assertTrue(near.high() > now && near.high() < CAR.limits().bottlePressureHigh(), "high " + near.high());
        assertEquals(limit, lambdaAt(GIVEN, NitrousOxide.saturatedLiquid(temperature(near.high()))), 1e-7);

        Checkpoint wide = checkpoint(with(CAR, 0.5, 1.2, 6e6), SETUP, GIVEN, Figure.BOTTLE_PRESSURE);
        assertEquals(6e6, wide.high(), "the builder's bound is nearer than a lean mixture");
        Checkpoint open = checkpoint(with(CAR, 0.5, 1.2, 9e6), SETUP, GIVEN, Figure.BOTTLE_PRESSURE);
        double hottest = NitrousOxide.saturatedLiquid(308.5).pressure();
        assertEquals(hottest, open.high(), 1e-9 * hottest, "no warmer than liquid lasts");
    }

    /** The same of a bottle as it was charged, whose pressure at a temperature is that of its charge. */
    @Test
    void a_charged_bottle_is_warmed_as_it_was_charged() {
        OperatingPoint shot = shot(CAR, SETUP, CHARGED);
        double limit = shot.lambda() + 0.001;
        Checkpoint near = checkpoint(with(CAR, 0.5, limit, 9e6), SETUP, CHARGED, Figure.BOTTLE_PRESSURE);
        Checkpoint open = checkpoint(with(CAR, 0.5, 1.2, 9e6), SETUP, CHARGED, Figure.BOTTLE_PRESSURE);
        FluidState hottest = charged(308.5);
        assertEquals(hottest.pressure(), open.high(), 1e-9 * hottest.pressure());
        double low = shot.bottle().temperature();
        double high = 308.5;
        while (high - low > 1e-7) {
            double middle = (low + high) / 2;
            if (charged(middle).pressure() < near.high()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertEquals(limit, lambdaAt(CHARGED, charged(low)), 1e-7);
    }

    private static FluidState charged(double temperature) {
        return CAR.bottle()
                .vessel()
                .charged(SETUP.bottle().charge(), temperature)
                .outlet();
    }

    private static double lambdaAt(Case at, FluidState bottle) {
        OperatingPoint shot = shot(CAR, SETUP, at);
        return Evaluate.model(CAR, SETUP, at)
                .withBottle(bottle)
                .at(shot.rpm(), shot.plenumPressure(), Mode.NITROUS)
                .lambda();
    }

    private static double temperature(double pressure) {
        double low = 280;
        double high = 309;
        while (high - low > 1e-7) {
            double middle = (low + high) / 2;
            if (NitrousOxide.saturatedLiquid(middle).pressure() < pressure) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
