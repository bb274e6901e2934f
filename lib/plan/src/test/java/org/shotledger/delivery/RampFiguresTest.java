package org.shotledger.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.car.Car;
import org.shotledger.car.Vehicle;
import org.shotledger.drive.Driveline;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.job.Job;
import org.shotledger.limits.Limits;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.Pulsing;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/**
 * Steps of a ramp against the model asked directly, and the motion of the car against its closed solution. The demonstration car at 6000,
 * 6500 and 7000 rpm with a boost that rises with the speed; alike valves that pulse from 0.16 to 0.81 of the shot at 15 Hz.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class RampFiguresTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Car CAR = JOB.car();
    private static final BoostTable RISING = BoostTable.of(new double[] {5500, 7500}, new double[] {0.9e5, 1.3e5});
    private static final Setup SETUP =
            JOB.setup().withBoost(new BoostTarget(RISING, RISING, 5_000)).withJets(new JetPair(1.1e-3, 0.62e-3));
    private static final Case AT = JOB.stated().withBottle(BottleState.at(298));
    private static final PointModel MODEL = Evaluate.model(CAR, SETUP, AT);
    private static final List<Double> SPEEDS = List.of(6000.0, 6500.0, 7000.0);
    private static final Outcome OUTCOME =
            outcome(SPEEDS.stream().map(rpm -> full(rpm)).toList());
    private static final Solenoid VALVE = new Solenoid(4e-3, 0.65, 0.0123, 0.0103);
    /** So much friction that grip never binds. */
    private static final Grip STICKY = new Grip(1540, 3, 0.9, 0, 0.315);

    private static Outcome outcome(List<OperatingPoint> armed) {
        return new Outcome(CAR, SETUP, AT, List.of(), armed, List.of(), Optional.empty(), new Limits(List.of()));
    }

    private static double plenum(double rpm) {
        return AT.air().pressure() + RISING.at(rpm);
    }

    private static OperatingPoint full(double rpm) {
        return MODEL.at(rpm, plenum(rpm), Mode.NITROUS);
    }

    private static OperatingPoint shared(double rpm, double share) {
        return share == 0
                ? MODEL.at(rpm, plenum(rpm), Mode.ARMED)
                : MODEL.at(
                        rpm,
                        plenum(rpm),
                        Mode.NITROUS,
                        MODEL.feed(plenum(rpm)).times(share),
                        MODEL.nitrousFuel(plenum(rpm)).times(share));
    }

    private static double torque(double rpm, double share) {
        return shared(rpm, share).crankTorque();
    }

    private static RampPlan plan(double torque, Grip grip) {
        PulseCheck pulse = PulseCheck.of(OUTCOME, full(6500), new Pulsing(VALVE, VALVE, 15), false, 0.0005, 0.4);
        return RampPlan.of(OUTCOME, pulse, torque, grip);
    }

    private static RampStep first(double torque) {
        return plan(torque, STICKY).overRpm(3).steps().get(0);
    }

    @Test
    void where_nothing_binds_every_step_is_the_shot_in_full() {
        Ramp ramp = plan(2000, STICKY).overRpm(6);
        assertEquals(Ramp.Axis.RPM, ramp.axis());
        assertEquals(6, ramp.gear());
        assertEquals(15, ramp.frequency());
        assertEquals(2, ramp.steps().size());
        for (int i = 0; i < 2; i++) {
            RampStep step = ramp.steps().get(i);
            double low = SPEEDS.get(i);
            double high = SPEEDS.get(i + 1);
            assertEquals(low, step.from());
            assertEquals(high, step.to());
            assertEquals(1, step.share());
            assertEquals(1, step.nitrousDuty());
            assertEquals(1, step.fuelDuty());
            assertEquals(Math.max(torque(low, 1), torque(high, 1)), step.crankTorque(), 1e-6);
            assertEquals(Math.max(full(low).lambda(), full(high).lambda()), step.lambda(), 1e-9);
            assertEquals("nothing: the shot in full", step.reason());
        }
    }

    /** The largest whole per cent whose torque both ends of the step allow; a per cent more would break it at one of them. */
    @Test
    void a_torque_between_off_and_on_takes_the_largest_usable_share_below_it() {
        double allowed = torque(6500, 0.503);
        RampStep step = first(allowed);
        assertTrue(torque(6000, 0.503) < allowed, "the torque rises with the speed, so the upper end binds");
        assertEquals(0.50, step.share(), 1e-9);
        assertEquals(0.53, step.nitrousDuty(), 1e-9);
        assertEquals(0.53, step.fuelDuty(), 1e-9);
        assertEquals(torque(6500, 0.50), step.crankTorque(), 1e-6);
        assertEquals(Math.max(shared(6000, 0.5).lambda(), shared(6500, 0.5).lambda()), step.lambda(), 1e-9);
        assertEquals(allowed, step.allowedTorque());
        assertEquals("torque", step.reason());
    }

    @Test
    void what_the_valves_cannot_pulse_is_said_on_both_ends() {
        RampStep brief = first(torque(6500, 0.12));
        assertEquals(0, brief.share());
        assertEquals(0, brief.nitrousDuty());
        assertEquals(torque(6500, 0), brief.crankTorque(), 1e-6);
        assertEquals("torque; the valves make no pulse so short", brief.reason());
        RampStep lengthy = first(torque(6500, 0.95));
        assertEquals(0.81, lengthy.share(), 1e-9);
        assertEquals(0.84, lengthy.nitrousDuty(), 1e-9);
        assertEquals("torque; the valves make no longer pulse short of open", lengthy.reason());
        assertEquals(0.16, first(torque(6500, 0.165)).share(), 1e-9);
    }

    @Test
    void a_torque_that_boost_alone_breaks_leaves_no_nitrous_and_says_so() {
        RampStep step = first(torque(6500, 0) - 1);
        assertEquals(0, step.share());
        assertEquals("torque, broken without nitrous already: take boost back", step.reason());
        assertEquals("torque", first(torque(6500, 0)).reason(), "just kept");
    }

    /** 0.3 of 1540 kg on half the weight: 2265.3 N at 0.315 m; ratios 3.71 and 0.81 on 3.38, and 14 % loss. */
    @Test
    void grip_binds_in_the_low_gears_and_torque_in_the_high_ones() {
        Grip slippery = new Grip(1540, 0.3, 0.5, 0, 0.315);
        double force = 0.3 * 1540 * 9.80665 * 0.5;
        double limit = torque(6500, 0.503);
        Ramp gears = plan(limit, slippery).overGears();
        assertEquals(Ramp.Axis.GEAR, gears.axis());
        double[] ratios = {3.71, 2.24, 1.58, 1.21, 1.00, 0.81};
        assertEquals(6, gears.steps().size());
        for (int i = 0; i < 6; i++) {
            RampStep step = gears.steps().get(i);
            double grip = force * 0.315 / (ratios[i] * 3.38 * 0.86);
            assertEquals(i + 1, step.from());
            assertEquals(i + 1, step.to());
            assertEquals(Math.min(limit, grip), step.allowedTorque(), 1e-9 * limit);
            assertTrue(step.reason().startsWith("grip in gear " + (i + 1)), step.reason());
        }
        RampStep held = plan(limit, STICKY).overGears().steps().get(5);
        double upper = 0;
        for (double share = 0.16; share < 0.815; share += 0.01) {
            double reached = Math.max(Math.max(torque(6000, share), torque(6500, share)), torque(7000, share));
            upper = reached <= limit ? share : upper;
        }
        assertEquals(upper, held.share(), 1e-6, "the speed of most torque binds in the whole gear");
        assertEquals("torque", held.reason());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 7})
    void a_gear_that_the_car_has_not_is_refused(int gear) {
        String said = assertThrows(
                        IllegalArgumentException.class, () -> plan(700, STICKY).overRpm(gear))
                .getMessage();
        assertTrue(said.contains("gears 1 to 6"), said);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.049, 5.01, Double.NaN})
    void a_step_too_short_or_too_long_is_refused(double width) {
        RampPlan plan = plan(700, STICKY);
        assertThrows(IllegalArgumentException.class, () -> plan.overTime(3, width));
    }

    @Test
    void without_a_usable_pulse_or_a_second_speed_there_is_no_ramp() {
        PulseCheck none = PulseCheck.of(OUTCOME, full(6500), new Pulsing(VALVE, VALVE, 46), false, 0, 0.4);
        String said = assertThrows(IllegalArgumentException.class, () -> RampPlan.of(OUTCOME, none, 700, STICKY))
                .getMessage();
        assertTrue(said.contains("usable at 46.0 Hz"), said);
        PulseCheck some = PulseCheck.of(OUTCOME, full(6500), new Pulsing(VALVE, VALVE, 15), false, 0, 0.4);
        Outcome one = outcome(List.of(full(6500)));
        assertThrows(IllegalArgumentException.class, () -> RampPlan.of(one, some, 700, STICKY));
        Outcome two = outcome(List.of(full(6500), full(7000)));
        assertEquals(1, RampPlan.of(two, some, 700, STICKY).overRpm(3).steps().size());
    }

    /** The plenum pressure of a speed between two points lies on the straight line between theirs, which here is the boost asked for. */
    @Test
    void a_step_over_time_holds_its_limit_to_the_speed_that_it_reaches() {
        double allowed = torque(6700, 0.6);
        Ramp ramp = plan(allowed, STICKY).overTime(3, 0.2);
        assertEquals(Ramp.Axis.TIME, ramp.axis());
        Vehicle car = CAR.vehicle().orElseThrow();
        GearMotion motion = new GearMotion(
                car, 3, CAR.driveline(), STICKY.tyreRadius(), AT.air().density());
        double rpm = 6000;
        int i = 0;
        for (RampStep step : ramp.steps()) {
            assertEquals(0.2 * i, step.from(), 1e-9);
            assertEquals(0.2 * (i + 1), step.to(), 1e-9);
            double ahead = Math.min(7000, motion.after(rpm, Math.min(torque(rpm, 1), allowed), 0.2));
            double most = Math.max(torque(rpm, step.share()), torque(ahead, step.share()));
            assertEquals(most, step.crankTorque(), 1e-6 * most, "step " + i);
            assertTrue(most <= allowed * (1 + 1e-9));
            rpm = motion.after(rpm, torque(rpm, step.share()), 0.2);
            i++;
        }
        assertTrue(rpm >= 7000 && i > 3, i + " steps to " + rpm);
        assertEquals(1, plan(2000, STICKY).overTime(1, 5).steps().size(), "5 s are far more than first gear takes");
    }

    /** Time in a gear is the integral of {@code m / F dv}, taken here by 200 trapezoids over the shot in full. */
    @Test
    void a_ramp_over_time_lasts_as_long_as_the_car_takes() {
        Vehicle car = CAR.vehicle().orElseThrow();
        double ratio = 1.58 * 3.38;
        double time = 0;
        List<Double> slowness = new ArrayList<>();
        for (int i = 0; i <= 200; i++) {
            double rpm = 6000 + 5.0 * i;
            double v = rpm * Math.PI / 30 * 0.315 / ratio;
            double drive = torque(rpm, 1) * 0.86 * ratio / 0.315;
            double drag = AT.air().density() / 2 * 0.70 * v * v;
            double roll = car.rollingResistance() * 1540 * 9.80665;
            slowness.add(1540 / (drive - drag - roll));
        }
        double dv = 5 * Math.PI / 30 * 0.315 / ratio;
        for (int i = 0; i < 200; i++) {
            time += dv * (slowness.get(i) + slowness.get(i + 1)) / 2;
        }
        List<RampStep> steps = plan(2000, STICKY).overTime(3, 0.05).steps();
        assertEquals(time, steps.get(steps.size() - 1).to(), 0.05 + 0.01 * time);
    }

    private static GearMotion motion(double mass, double dragArea, double rolling, Driveline losses) {
        Vehicle own = CAR.vehicle().orElseThrow();
        Vehicle car = new Vehicle(mass, dragArea, List.of(4.0, 1.0), 3.0, own.tyres(), rolling, own.chassis());
        return new GearMotion(car, 2, losses, 0.3, 1.2);
    }

    /**
     * A constant force against drag that grows with the square: {@code v = V tanh(atanh(v0 / V) + sqrt(F k) t / m)} with the end speed
     * {@code V = sqrt(F / k)}. 300 N m less 20 of drag torque and a tenth make 2520 N at ratio 3 and 0.3 m; 1000 kg roll with 147.1 N; k is
     * 0.48 kg/m. From 6000 rpm, 62.83 m/s, the end speed is 70.3 m/s.
     */
    @Test
    void a_car_nears_its_end_speed_as_the_closed_solution_has_it() {
        GearMotion motion = motion(1000, 0.8, 0.015, new Driveline("any", 20, 0.1));
        double force = 280 * 0.9 * 3 / 0.3 - 0.015 * 1000 * 9.80665;
        double end = Math.sqrt(force / 0.48);
        double before = 6000 * Math.PI / 30 * 0.1;
        double after =
                end * Math.tanh(0.5 * Math.log((end + before) / (end - before)) + Math.sqrt(force * 0.48) / 1000 * 5);
        double gained = after - before;
        assertTrue(gained > 1 && after < end);
        assertEquals(after / (Math.PI / 30 * 0.1), motion.after(6000, 300, 5), 0.01 * gained / (Math.PI / 30 * 0.1));
    }

    @Test
    void a_car_that_is_not_pushed_keeps_its_speed_and_does_not_fall_back() {
        GearMotion motion = motion(1000, 0.8, 0.015, new Driveline("any", 20, 0.1));
        assertEquals(6000, motion.after(6000, 20, 3), 1e-9);
        assertEquals(6000, motion.after(6000, 300, 0), 1e-9);
    }

    /** 1500 kg, friction 1 on half of the weight: 7354.99 N; at 0.3 m over ratio 4 and 0.9, and 20 N m of drag: 632.9 N m. */
    @Test
    void the_torque_that_uses_the_grip_up_covers_the_losses_of_the_driveline() {
        Grip grip = new Grip(1500, 1, 0.5, 0, 0.3);
        assertEquals(7354.9875, grip.force(), 1e-9);
        assertEquals(632.915625, grip.crankTorque(4, new Driveline("any", 20, 0.1)), 1e-9);
    }

    @Test
    void axes_are_named_for_a_reader() {
        assertEquals(
                List.of("time", "engine speed", "gear"),
                List.of(Ramp.Axis.values()).stream().map(Ramp.Axis::words).toList());
    }
}
