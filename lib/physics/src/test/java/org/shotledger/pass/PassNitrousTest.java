package org.shotledger.pass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.drive.Driveline;

@DisplayNameGeneration(ReplaceUnderscores.class)
class PassNitrousTest {

    @Test
    void nitrous_flows_only_while_every_condition_holds() {
        PassResult result = PassExample.pass(PassExample.arming()).run();
        assertTrue(result.nitrousSeconds() > 1);
        for (PassRow row : result.trace()) {
            if (row.nitrous() > 0) {
                assertTrue(
                        row.gear() >= 2 && row.turbo() > 0.5 && row.rpm() >= 3_200 - 1 && row.rpm() <= 7_150 + 1,
                        row.toString());
            }
        }
        assertTrue(result.finish().time()
                < PassExample.pass(Arming.NEVER).run().finish().time());
        assertEquals(0, PassExample.pass(Arming.NEVER).run().nitrousUsed());
    }

    /** The clutch holds 4500 rpm while it slips; a shot armed from just that speed is the one armed from a hair below, hysteresis or none. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 300})
    void a_launch_at_the_very_edge_of_the_arming_opens_at_once(double back) {
        PassResult edge = assertTimeoutPreemptively(
                Duration.ofSeconds(10), () -> launched(from(4_500, back)).run());
        PassResult below = launched(from(4_499.999, back)).run();
        assertEquals(below.finish().time(), edge.finish().time(), 1e-4);
        assertEquals(below.nitrousSeconds(), edge.nitrousSeconds(), 1e-2);
    }

    private static DrivenPass launched(Arming arming) {
        DrivenPass pass = PassExample.pass(arming);
        Transmission t = pass.transmission();
        Transmission higher = new Transmission(
                t.gears(), t.finalDrive(), t.shiftRpm(), t.shiftTime(), t.driveline(), t.engineInertia(), 4_500);
        return new DrivenPass(
                pass.vehicle(),
                higher,
                pass.engine(),
                arming,
                pass.nitrous(),
                pass.strip(),
                pass.startSpeed(),
                pass.traceStep());
    }

    private static Arming from(double rpm, double back) {
        return new Arming(rpm, rpm - back, 7_150 - back, 7_150, 0, -1, -1, 1, 0.1, 1, 0, true);
    }

    /** Constant speed ratio, no resistance, constant torque: every time follows from {@code v = a t}. */
    @Test
    void edges_delay_and_ramp_come_at_the_times_of_the_closed_form() {
        double a = 200 * 4 / 0.32 / 1_000;
        double metresPerRpm = Math.PI / 30 * 0.32 / 4;
        Arming arming = new Arming(2_000, 1_900, 3_000, 3_500, 0, -1, -1, 1, 0.5, 0.2, 1.5, true);
        PassResult result = uniform(arming).run();
        double on = 2_000 * metresPerRpm / a + 0.5;
        double off = 3_500 * metresPerRpm / a;
        assertEquals(off - on, result.nitrousSeconds(), 1e-8);
        PassRow half = row(result, on + 0.75);
        assertEquals(0.6, half.nitrous(), 0.4 / 1.5 * 0.02);
        double ramp = 1.5 * 0.6;
        assertEquals(0.03 * (ramp + (off - on - 1.5)), result.nitrousUsed(), 1e-8);
    }

    @Test
    void a_ramp_goes_on_after_a_shift_or_begins_anew_as_asked() {
        Arming anew = PassExample.arming();
        Arming on = new Arming(3_500, 3_200, 7_000, 7_150, 5, 0.7, 0.5, 2, 0.1, 0.4, 0.6, false);
        double again = PassExample.pass(anew).run().nitrousUsed();
        double further = PassExample.pass(on).run().nitrousUsed();
        assertTrue(further > again, further + " " + again);
        assertEquals(0.4, anew.share(0.1));
        assertEquals(0, anew.share(0.05));
        assertEquals(0.7, anew.share(0.4), 1e-12);
        assertEquals(1, anew.share(5));
    }

    /** {@code s = 1 - (1 - s0) exp(-t/tau)}. */
    @Test
    void a_first_order_lag_is_an_exponential() {
        PassEngine engine = new PassEngine() {
            @Override
            public double torque(double rpm, double throttleSeconds, double turbo, double nitrous) {
                return 200;
            }

            @Override
            public double turboRate(double rpm, double throttleSeconds, double turbo, double nitrous) {
                return TurboLag.firstOrder(turbo, 1, 0.8);
            }
        };
        PassResult result = uniform(engine, Arming.NEVER).run();
        for (PassRow row : result.trace()) {
            assertEquals(1 - Math.exp(-row.time() / 0.8), row.turbo(), 1e-7);
        }
    }

    /** Constant surplus power: {@code w^2 = w0^2 + 2 P t/I}. */
    @Test
    void a_shaft_gains_energy_at_the_rate_of_its_surplus() {
        PassEngine engine = new PassEngine() {
            @Override
            public double torque(double rpm, double throttleSeconds, double turbo, double nitrous) {
                return 200;
            }

            @Override
            public double turboAtStart() {
                return 3_000;
            }

            @Override
            public double turboRate(double rpm, double throttleSeconds, double turbo, double nitrous) {
                return TurboLag.shaft(turbo, 6e-5, 800);
            }
        };
        for (PassRow row : uniform(engine, Arming.NEVER).run().trace()) {
            assertEquals(Math.sqrt(9e6 + 2 * 800 * row.time() / 6e-5), row.turbo(), 1e-4);
        }
    }

    @Test
    void the_clock_starts_with_the_roll_out_and_a_shift_coasts() {
        PassResult result = PassExample.pass(Arming.NEVER).run();
        assertEquals(6, result.marks().size());
        for (double at : result.shifts()) {
            PassRow row = row(result, at + 0.15);
            assertTrue(row.power() == 0 && row.acceleration() < 0, row.toString());
        }
        PassResult whole = uniform(Arming.NEVER).run();
        double a = 200 * 4 / 0.32 / 1_000;
        assertEquals(
                Math.sqrt(2 * 200.3 / a) - Math.sqrt(2 * 0.3 / a),
                whole.finish().time(),
                1e-8);
        assertFalse(result.trace().get(0).power() == 0);
    }

    private static DrivenPass uniform(Arming arming) {
        return uniform((rpm, s, turbo, n) -> 200, arming);
    }

    private static DrivenPass uniform(PassEngine engine, Arming arming) {
        RollingCar car = new RollingCar(1_000, 0, 0, RollingCar.Axle.ALL, 1, 2.6, 0, 0.32, 6, 0, 0);
        Transmission gear =
                new Transmission(List.of(1.0), 4, List.of(29_000.0), 0, new Driveline("lossless", 0, 0), 0, 500);
        NitrousSupply bottle = new NitrousSupply() {
            @Override
            public double massFlow(double used) {
                return 0.03;
            }

            @Override
            public double strength(double used) {
                return 1;
            }
        };
        return new DrivenPass(car, gear, engine, arming, bottle, new Strip(0, 0, 0.3, List.of(200.0)), 0, 0.02);
    }

    private static PassRow row(PassResult result, double time) {
        return result.trace().stream()
                .filter(row -> row.time() >= time - 1e-9)
                .findFirst()
                .orElseThrow();
    }
}
