package org.shotledger.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.job.Job;
import org.shotledger.limits.Limits;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.Pulsing;
import org.shotledger.nitrous.Pulsing.Pulse;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/**
 * Duties that may be used, by hand at 15 Hz: a valve that opens after 12.3 ms and closes after 10.3 ms needs more than 0.1845 of a period to
 * open and more than 0.1545 to close, and between these it delivers its duty less 0.03.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PulseCheckTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Car CAR = JOB.car();
    private static final Setup SETUP =
            JOB.setup().withBoost(BoostTarget.constant(1.3e5)).withJets(new JetPair(1.1e-3, 0.62e-3));
    private static final Case AT = JOB.stated().withBottle(BottleState.at(298));
    private static final PointModel MODEL = Evaluate.model(CAR, SETUP, AT);
    private static final OperatingPoint FULL = MODEL.at(7000, AT.air().pressure() + 1.3e5, Mode.NITROUS);
    private static final Outcome OUTCOME =
            new Outcome(CAR, SETUP, AT, List.of(), List.of(FULL), List.of(), Optional.empty(), new Limits(List.of()));
    private static final Solenoid SLOW = new Solenoid(4e-3, 0.65, 0.0123, 0.0103);
    /** Opens after 0.1245 of a period, closes after 0.1395: it delivers its duty and 0.015. */
    private static final Solenoid QUICK = new Solenoid(3e-3, 0.65, 0.0083, 0.0093);

    private static PulseCheck check(Solenoid fuel, boolean separate, double spread, double error) {
        return PulseCheck.of(OUTCOME, FULL, new Pulsing(SLOW, fuel, 15), separate, spread, error);
    }

    private static OperatingPoint mixed(double nitrous, double fuel) {
        return MODEL.at(
                FULL.rpm(),
                FULL.plenumPressure(),
                Mode.NITROUS,
                FULL.nitrous().times(nitrous),
                FULL.nitrousFuel().times(fuel));
    }

    private static PulsePoint atDuty(PulseCheck check, double duty) {
        return check.points().stream()
                .filter(p -> Math.abs(p.pulse().nitrousDuty() - duty) < 1e-9)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"-0.001, 0.02", "0.1, 0.02", "NaN, 0.02", "0.001, 0", "0.001, 0.5", "0.001, NaN"})
    void a_spread_or_an_error_outside_is_refused(double spread, double error) {
        assertThrows(IllegalArgumentException.class, () -> check(SLOW, false, spread, error));
    }

    @Test
    void the_errors_are_relative_to_the_mixture_with_equal_shares_and_the_worse_side_counts() {
        Pulse any = new Pulse(0.5, 0.5, 0.5, 0.5);
        PulsePoint lean = new PulsePoint(any, 0.84, 0.80, 0.88, 0.74, 0, 0);
        assertEquals(0.05, lean.error(), 1e-12);
        assertEquals(0.1, lean.worstError(), 1e-12);
        assertEquals(0.1, new PulsePoint(any, 0.80, 0.80, 0.84, 0.72, 0, 0).worstError(), 1e-12);
    }

    /** Duty 0.5 delivers 0.47 of the nitrous and 0.515 of the fuel; 1 ms of spread, shared by both ends, is 0.015 of a period. */
    @Test
    void a_duty_is_what_both_valves_deliver_with_their_delays_and_their_spread() {
        PulsePoint p = atDuty(check(QUICK, false, 0.001, 0.4), 0.5);
        assertEquals(0.47, p.pulse().nitrousShare(), 1e-12);
        assertEquals(0.515, p.pulse().fuelShare(), 1e-12);
        OperatingPoint average = mixed(0.47, 0.515);
        assertEquals(average.lambda(), p.lambda(), 1e-9);
        assertEquals(average.wheelPower(), p.wheelPower(), 1e-6 * average.wheelPower());
        assertEquals(average.crankTorque(), p.crankTorque(), 1e-6 * average.crankTorque());
        assertEquals(mixed(0.47, 0.47).lambda(), p.wanted(), 1e-9);
        assertEquals(mixed(0.485, 0.5).lambda(), p.leanest(), 1e-9);
        assertEquals(mixed(0.455, 0.53).lambda(), p.richest(), 1e-9);
    }

    /** On one output: duties 0.19 to 0.84 pulse, from 0.85 the valve stands open; below 0.19 it never opens and is no point at all. */
    @Test
    void on_one_output_the_delays_leave_the_duties_between_opening_and_closing() {
        PulseCheck check = check(SLOW, false, 0.0005, 0.4);
        assertEquals(82, check.points().size(), "0.19 to 1.00");
        assertEquals(0.19, check.leastDuty(), 1e-12);
        assertEquals(0.84, check.mostDuty(), 1e-12);
        assertEquals(0.16, check.leastShare(), 1e-12);
        assertEquals(0.81, check.mostShare(), 1e-12);
        assertEquals("delays", check.boundBy());
    }

    /** A fuel valve that opens from 0.13 on sprays alone up to 0.18: a point to see, but no shot to use. */
    @Test
    void a_pulse_that_opens_one_valve_only_is_not_usable() {
        PulseCheck check = check(QUICK, false, 0, 0.49);
        assertEquals(88, check.points().size(), "0.13 to 1.00");
        assertEquals(0, check.points().get(0).pulse().nitrousShare());
        assertTrue(check.points().get(0).error() > -0.49, "the mixture alone would allow it");
        assertEquals(0.19, check.leastDuty(), 1e-12);
        // the fuel stands open from 1 - 0.1395, the nitrous from 1 - 0.1545
        assertEquals(0.84, check.mostDuty(), 1e-12);
        assertEquals("delays", check.boundBy());
    }

    /** On two outputs both deliver the same share, 0.16 to 0.81 and the shot in full, each with its own duty. */
    @Test
    void on_two_outputs_the_share_is_moved_into_what_both_can_deliver() {
        PulseCheck check = check(QUICK, true, 0.0005, 0.4);
        assertEquals(67, check.points().size());
        assertEquals(0.16, check.leastShare(), 1e-12);
        assertEquals(0.19, check.leastDuty(), 1e-12);
        assertEquals(0.81, check.mostShare(), 1e-12);
        assertEquals(0.84, check.mostDuty(), 1e-12);
        PulsePoint half = atDuty(check, 0.53);
        assertEquals(0.5, half.pulse().nitrousShare(), 1e-12);
        assertEquals(0.5, half.pulse().fuelShare(), 1e-12);
        assertEquals(0.485, half.pulse().fuelDuty(), 1e-12);
    }

    /** The usable range ends at the first duty that breaks the rule, and the reason is what breaks it there. */
    @Test
    void the_mixture_or_the_spread_bounds_the_duty_where_they_are_worse_than_the_delays() {
        PulseCheck mixture = check(QUICK, false, 0, 0.0230);
        assertBound(mixture, "mixture");
        PulseCheck spread = check(SLOW, false, 0.002, 0.0290);
        assertBound(spread, "spread of the delays");
        // valves that are alike never err without spread
        assertEquals(0, atDuty(spread, spread.leastDuty()).error(), 1e-12);
    }

    private static void assertBound(PulseCheck check, String by) {
        assertEquals(by, check.boundBy());
        assertTrue(check.leastDuty() > 0.195, "tighter than the delays: " + check.leastDuty());
        assertTrue(atDuty(check, check.leastDuty()).worstError() <= check.allowedError());
        assertTrue(atDuty(check, check.leastDuty() - 0.01).worstError() > check.allowedError());
    }

    /** At 46 Hz the two delays are longer than a period. */
    @Test
    void where_no_pulse_fits_there_is_no_usable_duty() {
        PulseCheck none = PulseCheck.of(OUTCOME, FULL, new Pulsing(SLOW, SLOW, 46), false, 0, 0.3);
        assertTrue(Double.isNaN(none.leastDuty()) && Double.isNaN(none.mostDuty()));
        assertTrue(Double.isNaN(none.leastShare()) && Double.isNaN(none.mostShare()));
    }
}
