package org.shotledger.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.Pulsing;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.setup.BoostTarget;

/** Pulsed delivery and ramps on the invented demonstration car: laws that hold whatever its figures are. */
class DeliveryTest {
    private static final Solenoid SLOW = new Solenoid(4e-3, 0.65, 0.012, 0.010);
    private static final Solenoid QUICK = new Solenoid(3e-3, 0.65, 0.008, 0.009);
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Outcome OUTCOME = Evaluate.of(
            JOB.car(),
            JOB.setup().withBoost(BoostTarget.constant(1.5e5)).withJets(new JetPair(1.1e-3, 0.62e-3)),
            JOB.stated());
    private static final OperatingPoint STRONGEST = OUTCOME.strongest().orElseThrow();

    private static PulseCheck check(Pulsing pulsing, boolean separate, double error) {
        return PulseCheck.of(OUTCOME, STRONGEST, pulsing, separate, 0.0005, error);
    }

    @Test
    void valves_with_equal_delays_keep_the_mixture_on_one_output() {
        PulseCheck same = check(new Pulsing(SLOW, SLOW, 15), false, 0.02);
        for (PulsePoint p : same.points()) {
            assertEquals(0, p.error(), 1e-12);
        }
    }

    @Test
    void a_quicker_fuel_valve_makes_short_pulses_rich_and_its_own_duty_mends_it() {
        Pulsing unlike = new Pulsing(SLOW, QUICK, 15);
        PulseCheck together = check(unlike, false, 0.03);
        PulseCheck separate = check(unlike, true, 0.03);
        PulsePoint shortest = together.points().stream()
                .filter(p -> p.pulse().nitrousShare() > 0)
                .findFirst()
                .orElseThrow();
        assertTrue(shortest.error() < -0.01, "error " + shortest.error());
        assertTrue(separate.points().stream().allMatch(p -> Math.abs(p.error()) < 1e-12));
    }

    @Test
    void the_shot_in_full_is_the_operating_point_itself() {
        PulseCheck check = check(new Pulsing(SLOW, QUICK, 15), true, 0.03);
        PulsePoint full = check.points().get(check.points().size() - 1);
        assertEquals(STRONGEST.lambda(), full.lambda(), 1e-12);
        assertEquals(STRONGEST.wheelPower(), full.wheelPower(), 1e-6);
    }

    @Test
    void delays_bound_the_usable_duty_at_a_frequency() {
        PulseCheck check = check(new Pulsing(SLOW, SLOW, 15), false, 0.3);
        // opening 12 ms and closing 10 ms of a period of 66.7 ms
        assertEquals(0.18, check.leastDuty(), 0.0101);
        assertEquals(0.85, check.mostDuty(), 0.0101);
        assertTrue(Double.isNaN(check(new Pulsing(SLOW, SLOW, 46), false, 0.3).leastDuty()), "no room for a pulse");
    }

    @Test
    void a_tighter_mixture_narrows_the_usable_duty() {
        Pulsing pulsing = new Pulsing(SLOW, QUICK, 8);
        PulseCheck loose = check(pulsing, false, 0.03);
        PulseCheck tight = check(pulsing, false, 0.0145);
        assertTrue(tight.leastDuty() > loose.leastDuty(), tight.leastDuty() + " against " + loose.leastDuty());
        assertTrue(!tight.boundBy().equals("delays"), tight.boundBy());
    }

    @Test
    void every_step_of_a_ramp_holds_the_torque_it_was_given() {
        PulseCheck check = check(new Pulsing(SLOW, SLOW, 12), true, 0.03);
        double torque = 0.95 * STRONGEST.crankTorque();
        RampPlan plan =
                RampPlan.of(OUTCOME, check, torque, Grip.of(JOB.car().vehicle().orElseThrow(), 1.1));
        for (Ramp ramp : new Ramp[] {plan.overRpm(3), plan.overRpm(5), plan.overGears(), plan.overTime(3, 0.25)}) {
            assertTrue(ramp.steps().size() > 3, ramp.axis().words());
            for (RampStep step : ramp.steps()) {
                boolean kept = step.crankTorque() <= step.allowedTorque() * (1 + 1e-6);
                assertTrue(kept || step.share() == 0, ramp.axis() + " " + step);
            }
        }
        assertTrue(plan.overRpm(5).steps().stream().anyMatch(s -> s.share() > 0));
    }

    /** Printed size: rim 18 in, wall 0.35 of 275 mm; the free radius is 324.85 mm, and a loaded tyre rolls on a little less. */
    @Test
    void a_tyre_size_gives_the_rolling_radius() {
        double free = 18 * 0.0254 / 2 + 0.275 * 0.35;
        assertTrue(Grip.radius("275/35R18") < free && Grip.radius("275/35R18") > 0.95 * free);
        var refused = assertThrows(IllegalArgumentException.class, () -> Grip.radius("wide"));
        assertTrue(refused.getMessage().contains("275/35R18"));
    }

    /** {@code F = mu m g s / (1 - mu h/L)}: the force moves load, the load makes force; solved by iteration as the check. */
    @ParameterizedTest
    @CsvSource({"0.8, 0.2", "1.1, 0.2", "1.5, 0.15"})
    void the_grip_carries_the_load_its_own_acceleration_moves(double friction, double height) {
        Grip grip = new Grip(1500, friction, 0.52, height, 0.315);
        double force = 0;
        for (int i = 0; i < 200; i++) {
            force = friction * (1500 * 9.80665 * 0.52 + force * height);
        }
        assertEquals(force, grip.force(), 1e-6 * force);
    }
}
