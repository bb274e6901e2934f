package org.shotledger.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/**
 * No failure anywhere in the range: every state of a dense seeded grid is found again from each pair. A flash is judged
 * by how well it meets the pair it was given, since near the critical point many temperatures share it.
 */
class FlashGridTest {

    private static final double TC = NitrousOxide.CRITICAL_TEMPERATURE;
    private static final double PC = NitrousOxide.CRITICAL_PRESSURE;

    private final Random random = new Random(182_33_525);
    private final StatePoint made = new StatePoint();
    private final StatePoint found = new StatePoint();

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double power(double low, double high) {
        return Math.pow(10, between(low, high));
    }

    private double sign() {
        return random.nextBoolean() ? 1 : -1;
    }

    @Test
    void whole_range() {
        for (int i = 0; i < 1500; i++) {
            roundTrip(between(182.33, 525), power(-1, Math.log10(50e6)));
            roundTrip(between(182.33, 525), between(1e5, 50e6));
        }
    }

    @Test
    void corners_and_edges() {
        for (double t : new double[] {182.33, Math.nextUp(182.33), 300, Math.nextDown(TC), TC, Math.nextUp(TC), 525}) {
            double line = t < TC ? NitrousOxide.saturationPressure(t) : PC;
            for (double p : new double[] {1e-3, 101325, Math.nextDown(line), line, Math.nextUp(line), PC, 50e6}) {
                roundTrip(t, p);
            }
        }
    }

    @Test
    void around_the_critical_point() {
        for (int i = 0; i < 1500; i++) {
            roundTrip(TC + sign() * power(-9, 1), PC * (1 + sign() * power(-10, -1)));
            roundTrip(TC + sign() * 0.01, PC * (1 + sign() * power(-8, -2)));
        }
    }

    @Test
    void along_the_saturation_line_from_both_sides() {
        for (int i = 0; i < 1500; i++) {
            double t = i % 2 == 0 ? between(182.33, TC) : TC - power(-6, 1);
            roundTrip(t, SaturationCurve.pressure(t) * (1 + sign() * power(-15, -2)));
        }
    }

    @Test
    void under_the_dome() {
        double[] edges = {0, 1e-300, 1e-15, 1e-9, 0.5, 1 - 1e-9, Math.nextDown(1.0), 1};
        for (int i = 0; i < 1500; i++) {
            double t = i % 2 == 0 ? between(182.33, TC) : TC - power(-8, 1);
            double x = i % 3 == 0 ? edges[random.nextInt(edges.length)] : random.nextDouble();
            made.mixture(t, x);
            fromEveryPair("T " + t + " x " + x);
        }
    }

    @Test
    void along_isochores_through_the_dome() {
        for (int i = 0; i < 1500; i++) {
            double rho = i % 2 == 0 ? power(-4, Math.log10(1237)) : 452.93 * (1 + sign() * power(-8, -1));
            double t = i % 4 == 0 ? TC + sign() * power(-9, 0) : between(182.33, 525);
            double p = new HelmholtzPoint().temperature(t).density(rho).pressure();
            if (p <= 50e6) {
                made.temperatureDensity(t, rho);
                fromEveryPair("T " + t + " rho " + rho);
            }
        }
    }

    private void roundTrip(double t, double p) {
        double pressure = Math.min(p, 50e6);
        made.temperaturePressure(t, pressure);
        String where = "T " + t + " p " + pressure;
        double tolerance = 1e-12 * pressure + 2e-15 * made.density() * HelmholtzPoint.GAS_CONSTANT * t;
        // the saturated end of a bracket carries the expansions' own error
        double slope = Math.max(
                new HelmholtzPoint().temperature(t).density(made.density()).pressureByDensity(), 0);
        tolerance += 1e-12 * made.density() * slope;
        assertEquals(
                pressure,
                new HelmholtzPoint().temperature(t).density(made.density()).pressure(),
                tolerance,
                where);
        if (t < TC) {
            boolean liquid = pressure >= SaturationCurve.pressure(t);
            assertTrue(
                    liquid
                            ? made.density() >= SaturationCurve.liquidDensity(t)
                            : made.density() <= SaturationCurve.vapourDensity(t),
                    where);
        }
        fromEveryPair(where);
    }

    private void fromEveryPair(String where) {
        double t = made.temperature();
        double p = made.pressure();
        double rho = made.density();
        double h = made.enthalpy();
        double s = made.entropy();
        double u = made.internalEnergy();
        check("p,h " + where, found.pressureEnthalpy(p, h), p, Double.NaN, h, Double.NaN);
        check("p,s " + where, found.pressureEntropy(p, s), p, Double.NaN, Double.NaN, s);
        check("T,rho " + where, found.temperatureDensity(t, rho), p, rho, h, s);
        check("rho,u " + where, found.densityEnergy(rho, u), Double.NaN, rho, u + p / rho, Double.NaN);
    }

    private void check(String where, StatePoint state, double p, double rho, double h, double s) {
        String text = where + " found " + state.state();
        DoubleStream.of(state.temperature(), state.pressure(), state.density(), state.enthalpy(), state.entropy())
                .forEach(value -> assertTrue(Double.isFinite(value), text));
        near(p, state.pressure(), 1e-9 * p + 1e-14 * state.density() * HelmholtzPoint.GAS_CONSTANT * 300, text);
        near(rho, state.density(), 1e-12 * rho, text);
        near(h, state.enthalpy(), 1e-5 + 1e-9 * Math.abs(h), text);
        near(s, state.entropy(), 1e-7, text);
    }

    private static void near(double expected, double actual, double tolerance, String text) {
        if (!Double.isNaN(expected)) {
            assertEquals(expected, actual, tolerance, text);
        }
    }
}
