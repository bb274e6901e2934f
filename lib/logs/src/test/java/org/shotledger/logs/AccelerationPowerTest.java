package org.shotledger.logs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shotledger.units.UnitSystem;

/** Power from acceleration, against motions whose power is known. */
class AccelerationPowerTest {
    private static final List<Double> GEARS = List.of(2.9, 1.9, 1.4, 1.0);
    private static final RunningCar CAR = RunningCar.usual(1500, 0.7, 0.015, 1.2, GEARS, 3.5, 0.32);
    private static final double POWER = 300e3;

    private static RunningCar exact(double dragArea, double rolling, double spin) {
        Measured none = new Measured(0, 0);
        return new RunningCar(
                new Measured(1500, 0),
                none,
                new Measured(spin, 0),
                new Measured(dragArea, 0),
                new Measured(1.2, 0),
                none,
                new Measured(rolling, 0),
                none,
                new Measured(1, 0),
                GEARS,
                3.5,
                0.32);
    }

    private static double rpm(double v, int gear) {
        return v / 0.32 * 30 / Math.PI * GEARS.get(gear - 1) * 3.5;
    }

    /** Motion at constant wheel power in third gear by Heun steps a thousandth of a second long, logged with scatter. */
    private static LogFindings run(RunningCar car, double scatter, long seed, int hertz) {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder("time [s],engine speed [rpm],vehicle speed [km/h]\n");
        double v = 25;
        double dt = 1e-3;
        for (int k = 0; k < 6000; k++) {
            if (k % (1000 / hertz) == 0) {
                text.append(String.format(
                        Locale.ROOT,
                        "%.3f,%.2f,%.5f%n",
                        k * dt,
                        rpm(v, 3),
                        3.6 * (v + scatter * random.nextGaussian())));
            }
            double a = acceleration(car, v);
            v += dt / 2 * (a + acceleration(car, v + dt * a));
        }
        return EngineLog.read(new StringReader(text.toString()), "track.csv", LogMapping.NONE)
                .findings();
    }

    private static double acceleration(RunningCar car, double v) {
        double turns = GEARS.get(2) * 3.5;
        double resist = 0.6 * car.dragArea().value() * v * v
                + 1500 * 9.80665 * car.rolling().value();
        double spin = 1 + car.wheels().value() + car.drivetrain().value() * turns * turns;
        return (POWER / v - resist) / (1500 * spin);
    }

    private static AccelerationPower power(LogFindings findings, RunningCar car) {
        return AccelerationPower.of(
                findings, car, Pulls.in(findings, PullRule.USUAL).widest());
    }

    @Test
    void constant_power_on_a_free_mass_is_the_root_law() {
        // v^2 = v0^2 + 2 P t / m, so that a = P / (m v): elementary mechanics; drag and rolling are all that stands
        // beside it
        RunningCar car = exact(0.1, 0, 0);
        double v = 40;
        double drag = 0.6 * 0.1 * v * v * v;
        assertEquals(POWER + drag, AccelerationPower.power(car, v, POWER / (1500 * v), rpm(v, 3)), 1e-6 * POWER);
    }

    @Test
    void at_steady_speed_only_drag_rolling_and_grade_take_power() {
        double expected = (0.6 * 0.7 * 50 * 50 + 1500 * 9.80665 * 0.015) * 50;
        assertEquals(expected, AccelerationPower.power(CAR, 50, 0, rpm(50, 3)), 1e-9 * expected);
    }

    @Test
    void the_power_of_a_motion_is_found_again_without_scatter() {
        RunningCar car = exact(0.7, 0.015, 0.0025);
        AccelerationPower found = power(run(car, 0, 1, 50), car);
        int n = 0;
        for (double p : found.wheelPower()) {
            if (!Double.isNaN(p)) {
                assertEquals(POWER, p, 0.005 * POWER);
                n++;
            }
        }
        assertTrue(n > 100, "only " + n);
    }

    @Test
    void with_scatter_the_band_of_two_standard_uncertainties_holds_the_power() {
        RunningCar car = exact(0.7, 0.015, 0.0025);
        int held = 0;
        int all = 0;
        for (int seed = 0; seed < 20; seed++) {
            AccelerationPower found = power(run(car, 0.05, seed, 50), car);
            for (int i = 0; i < found.wheelPower().length; i++) {
                if (!Double.isNaN(found.wheelPower()[i])) {
                    held += Math.abs(found.wheelPower()[i] - POWER) <= 2 * found.standard()[i] ? 1 : 0;
                    all++;
                }
            }
        }
        double share = held / (double) all;
        assertTrue(share > 0.9 && share < 0.99, "share " + share + " of " + all);
    }

    @Test
    void every_doubt_of_the_car_is_in_the_band_and_the_sentence_names_the_largest() {
        AccelerationPower found = power(run(CAR, 0.02, 4, 50), CAR);
        assertEquals(10, found.doubts().size());
        double sum =
                found.doubts().stream().mapToDouble(d -> d.watts() * d.watts()).sum();
        double most = java.util.Arrays.stream(found.standard())
                .filter(s -> !Double.isNaN(s))
                .max()
                .orElseThrow();
        assertTrue(Math.sqrt(sum) <= most * (1 + 1e-12));
        assertTrue(found.sentence(UnitSystem.SI).contains(found.doubts().get(0).what()));
    }

    @Test
    void gears_are_told_from_engine_and_vehicle_speed_though_the_radius_is_off() {
        double[] v = new double[300];
        double[] n = new double[300];
        for (int i = 0; i < 300; i++) {
            v[i] = 15 + 0.1 * i;
            n[i] = 1.04 * (i < 140 ? rpm(v[i], 2) : i < 150 ? 0.8 * rpm(v[i], 2) : rpm(v[i], 3));
        }
        GearFinder found = GearFinder.of(n, v, CAR);
        assertEquals(2, found.gears()[100]);
        assertEquals(0, found.gears()[145]);
        assertEquals(3, found.gears()[200]);
        assertEquals(1.04, found.factor(), 0.006);
    }

    @Test
    void beside_a_shift_there_is_no_power() {
        StringBuilder text = new StringBuilder("time [s],engine speed [rpm],vehicle speed [m/s]\n");
        for (int i = 0; i < 300; i++) {
            double v = 20 + 0.1 * i;
            text.append(String.format(Locale.ROOT, "%.2f,%.1f,%.3f%n", 0.02 * i, rpm(v, i < 150 ? 2 : 3), v));
        }
        LogFindings findings = EngineLog.read(new StringReader(text.toString()), "t.csv", LogMapping.NONE)
                .findings();
        AccelerationPower found = AccelerationPower.of(findings, CAR, new Pull(0, 5.98, 3000, 6000, ""));
        assertTrue(Double.isNaN(found.wheelPower()[149]) && Double.isNaN(found.wheelPower()[155]));
        assertTrue(found.wheelPower()[100] > 0 && found.wheelPower()[200] > 0);
    }

    @Test
    void without_vehicle_speed_or_samples_it_says_what_is_missing() {
        LogFindings findings = EngineLog.read(
                        new StringReader("time [s],engine speed [rpm],vehicle speed [m/s]\n0,3000,20\n0.1,3100,21\n"),
                        "t.csv",
                        LogMapping.NONE)
                .findings();
        String message = assertThrows(
                        IllegalArgumentException.class,
                        () -> AccelerationPower.of(findings, CAR, new Pull(0, 1, 3000, 3100, "")))
                .getMessage();
        assertTrue(message.contains("2 samples of vehicle speed"), message);
    }
}
