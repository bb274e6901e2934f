package org.shotledger.stepup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
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
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.car.BuilderLimits;
import org.shotledger.car.Car;
import org.shotledger.car.OtherLimits;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.limits.Limits;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/** The figures of each step and its spark, worked out again from the points with and without nitrous; anew in every test. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class StepFiguresTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Car CAR = JOB.car();
    private static final Setup SETUP =
            JOB.setup().withBoost(BoostTarget.constant(1.3e5)).withJets(new JetPair(1.1e-3, 0.62e-3));
    private static final Case AT = JOB.stated().withBottle(BottleState.at(298));
    private static final Plan PLAN = Plan.of(JOB.withCases(List.of(JOB.stated())), SETUP);
    /** Fifty mechanical horsepower of 550 ft lbf/s each. */
    private static final double FIFTY = 50 * 745.6998715822702;

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.2, 1.3, Double.NaN})
    void a_share_that_is_no_part_of_the_shot_is_refused(double share) {
        String said = assertThrows(IllegalArgumentException.class, () -> StepUp.of(PLAN, List.of(0.5, share)))
                .getMessage();
        assertTrue(said.contains("is " + share + "; allowed is above 0 and below 1"), said);
    }

    @Test
    void without_nitrous_there_is_no_ladder() {
        Plan alone = Plan.of(PLAN.job(), SETUP.withoutJets());
        StepUp none = StepUp.of(alone);
        assertEquals(List.of(), none.shots());
        assertTrue(none.fullShot().isEmpty());
        assertEquals(alone.stated().power(), none.offPower());
    }

    /**
     * Steps rise, each with its share of what the full shot adds; the rung of the jet ladder nearest to a share misses it by less than a
     * tenth of the shot. The band is two of {@code sqrt((u0 P_off)^2 + P_N^2 (u_m^2 + u_k^2))}, JCGM 100, 5.1.2, with the sheet's figures.
     */
    @Test
    void each_step_adds_its_share_and_the_band_is_two_standard_uncertainties() {
        StepUp ladder = StepUp.of(PLAN);
        OperatingPoint full = PLAN.stated().strongest().orElseThrow();
        double off = Evaluate.model(CAR, SETUP, JOB.stated())
                .at(full.rpm(), full.plenumPressure(), Mode.ARMED)
                .wheelPower();
        assertEquals(off, ladder.offPower(), 1e-9 * off);
        assertEquals(4, ladder.shots().size());
        assertSame(PLAN, ladder.fullShot().orElseThrow().plan());
        List<Double> asked = List.of(0.4, 0.6, 0.8, 1.0);
        for (int i = 0; i < 4; i++) {
            Shot shot = ladder.shots().get(i);
            double power = shot.plan().stated().power();
            assertEquals(i + 1, shot.step());
            assertEquals(power, shot.wheelPower(), 1e-9 * power);
            assertEquals(power - off, shot.added(), 1e-6);
            assertEquals((power - off) / (full.wheelPower() - off), shot.share(), 1e-9);
            assertEquals(asked.get(i), shot.share(), 0.1);
            double base = CAR.basePull().uncertainty() * off;
            double flow = shot.point().nitrous().band().logarithmicDeviation();
            var k = CAR.model().nitrous();
            double work = (k.high() - k.low()) / Math.sqrt(12) / k.value();
            double band = 2 * Math.sqrt(base * base + (power - off) * (power - off) * (flow * flow + work * work));
            assertEquals(power - band, shot.lowPower(), 1e-6 * power);
            assertEquals(power + band, shot.highPower(), 1e-6 * power);
            Checkpoint wheels = shot.checkpoints().get(0);
            assertEquals(shot.lowPower(), wheels.low());
            assertEquals(shot.highPower(), wheels.high());
        }
    }

    /** The same share asked for again and again must still bring a higher step each time, and none at or above the full shot. */
    @Test
    void a_share_asked_for_twice_brings_no_step_twice_and_none_beyond_the_shot() {
        List<Shot> shots = StepUp.of(PLAN, List.of(0.9, 0.9)).shots();
        assertTrue(shots.size() > 1, "a step near nine tenths");
        for (int i = 1; i < shots.size(); i++) {
            assertTrue(shots.get(i).wheelPower() > shots.get(i - 1).wheelPower());
        }
        assertSame(PLAN, shots.get(shots.size() - 1).plan());
    }

    /**
     * Smaller shots are sized at the target's mixture; a full shot with a small fuel jet is leaner than that. A rich limit half a per cent
     * below the full shot's mixture is then closer to every smaller shot, and none may be a step; a far one leaves them all. Torque and
     * pressure have room here.
     */
    @Test
    void a_smaller_shot_closer_to_a_limit_is_no_step() {
        double richest = withRichLimit(0.5).parts().all().stream()
                .filter(limit -> limit.key().equals("lambda-rich"))
                .findFirst()
                .orElseThrow()
                .value();
        assertEquals(4, StepUp.of(withRichLimit(0.5)).shots().size());
        assertEquals(1, StepUp.of(withRichLimit(0.995 * richest)).shots().size());
    }

    private static Plan withRichLimit(double lambda) {
        BuilderLimits l = CAR.limits();
        Car car = OtherLimits.of(
                CAR,
                Map.of(
                        "peakPressure", 1.2 * l.peakPressure(),
                        "crankTorque", 1.2 * l.crankTorque(),
                        "lambdaLow", lambda));
        return Plan.of(PLAN.job().with(car), SETUP.withJets(new JetPair(1.1e-3, 0.57e-3)));
    }

    @ParameterizedTest
    @CsvSource({"6, NaN, 8, 8", "6, 9, 8, 9", "6, 7, 8, 8", "10, 9, 8, 10", "10, NaN, 8, 10"})
    void the_most_retard_is_the_largest_that_anything_asks_for(
            double habit, double computed, double planned, double most) {
        assertEquals(most, new Spark(habit / 2, habit, computed, planned, 1.5e7, 1).most());
    }

    /** One to two degrees for each fifty horsepower that the nitrous adds at the crankshaft. */
    @Test
    void habit_goes_with_the_horsepower_added_and_the_ratio_is_over_the_same_boost_without_nitrous() {
        OperatingPoint on = point(SETUP.retard(), Mode.NITROUS);
        OperatingPoint off = point(SETUP.retard(), Mode.ARMED);
        double fifties = (on.power().brake() - off.power().brake()) / FIFTY;
        assertTrue(fifties > 1 && fifties < 6, "added " + fifties + " times 50 hp");
        Spark spark = SparkAdvice.of(outcome(CAR, on), on);
        assertEquals(fifties, spark.habitLow(), 1e-9);
        assertEquals(2 * fifties, spark.habitHigh(), 1e-9);
        assertEquals(SETUP.retard(), spark.planned());
        assertEquals(on.cylinder().peakPressure(), spark.peakPressure());
        assertEquals(on.cylinder().knock() / off.cylinder().knock(), spark.knockRatio(), 1e-12);
    }

    /** The whole degree at which peak pressure and knock are kept, while at the degree before one of both is not. */
    @Test
    void the_computed_retard_is_the_least_that_keeps_both_bounds() {
        double off = point(0, Mode.ARMED).cylinder().knock();
        double late = point(9, Mode.NITROUS).cylinder().peakPressure();
        double later = point(10, Mode.NITROUS).cylinder().peakPressure();
        // knock alone binds
        double byKnock = computed(1e9);
        assertTrue(point(byKnock, Mode.NITROUS).cylinder().knock() <= off);
        assertTrue(byKnock == 0 || point(byKnock - 1, Mode.NITROUS).cylinder().knock() > off, "retard " + byKnock);
        // peak pressure binds between 9 and 10 degrees, past what knock asks for
        assertTrue(byKnock < 9 && late > later, byKnock + ": " + late + " and " + later);
        assertEquals(10, computed((late + later) / 2));
        assertEquals(10, computed(later), "reached and not passed is kept");
        assertTrue(Double.isNaN(computed(1e6)), "no retard keeps 10 bar");
        // 25 degrees are still tried, 26 are not
        double most = point(25, Mode.NITROUS).cylinder().peakPressure();
        assertEquals(25, computed(most));
        assertTrue(Double.isNaN(computed(0.9999 * most)));
    }

    private static OperatingPoint point(double retard, Mode mode) {
        return Evaluate.model(CAR, SETUP.withRetard(retard), AT)
                .at(7000, AT.air().pressure() + 1.3e5, mode);
    }

    private static Outcome outcome(Car car, OperatingPoint on) {
        Limits none = new Limits(List.of());
        return new Outcome(car, SETUP, AT, List.of(), List.of(on), List.of(), Optional.empty(), none);
    }

    private static double computed(double allowed) {
        Car car = OtherLimits.of(CAR, Map.of("peakPressure", allowed));
        OperatingPoint on = point(SETUP.retard(), Mode.NITROUS);
        return SparkAdvice.of(outcome(car, on), on).computed();
    }
}
