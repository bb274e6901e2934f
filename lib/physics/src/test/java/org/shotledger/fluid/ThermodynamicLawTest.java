package org.shotledger.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Laws that need no table, on hundreds of seeded states: they find slips of sign, unit and derivative. */
class ThermodynamicLawTest {

    private static final int STATES = 400;
    private final Random random = new Random(1824);

    private FluidState anySinglePhase() {
        while (true) {
            double t = 190 + 325 * random.nextDouble();
            double p = Math.pow(10, 4 + 3.6 * random.nextDouble());
            FluidState s = NitrousOxide.atTemperaturePressure(t, p);
            // next to the critical point differences over any finite step are no derivatives
            if (s.cp() < 8000) {
                return s;
            }
        }
    }

    private double anySaturationTemperature() {
        return 183 + 124 * random.nextDouble();
    }

    /** Central difference, once corrected (Richardson). */
    private static double slope(DoubleUnaryOperator f, double x, double step) {
        double wide = (f.applyAsDouble(x + step) - f.applyAsDouble(x - step)) / (2 * step);
        double half = step / 2;
        double narrow = (f.applyAsDouble(x + half) - f.applyAsDouble(x - half)) / step;
        return (4 * narrow - wide) / 3;
    }

    private static void near(double expected, double actual, double relative, Object where) {
        assertEquals(expected, actual, relative * Math.abs(expected), () -> "at " + where);
    }

    private static FluidState at(double t, double rho) {
        return new HelmholtzPoint().temperature(t).density(rho).state(Double.NaN);
    }

    @Test
    void cp_is_the_slope_of_enthalpy_and_of_entropy_at_constant_pressure() {
        for (int i = 0; i < STATES; i++) {
            FluidState s = anySinglePhase();
            double t = s.temperature();
            // the equation continues smoothly past saturation, so no step can fall into the dome
            double dRho = slope(
                            x -> new HelmholtzPoint()
                                    .temperature(x)
                                    .density(s.density())
                                    .pressure(),
                            t,
                            0.05)
                    / slope(x -> at(t, x).pressure(), s.density(), 1e-4 * s.density());
            DoubleUnaryOperator h = x -> at(x, s.density()).enthalpy();
            DoubleUnaryOperator hRho = x -> at(t, x).enthalpy();
            double cp = slope(h, t, 0.05) - dRho * slope(hRho, s.density(), 1e-4 * s.density());
            near(s.cp(), cp, 1e-6, s);
        }
    }

    @Test
    void cv_is_the_slope_of_energy_and_t_times_that_of_entropy_at_constant_volume() {
        for (int i = 0; i < STATES; i++) {
            FluidState s = anySinglePhase();
            double t = s.temperature();
            near(s.cv(), slope(x -> at(x, s.density()).internalEnergy(), t, 0.05), 1e-7, s);
            near(s.cv(), t * slope(x -> at(x, s.density()).entropy(), t, 0.05), 1e-7, s);
        }
    }

    @Test
    void maxwell_relation_of_entropy_and_pressure() {
        for (int i = 0; i < STATES; i++) {
            FluidState s = anySinglePhase();
            double rho = s.density();
            double pT = new HelmholtzPoint()
                    .temperature(s.temperature())
                    .density(rho)
                    .pressureByTemperature();
            near(-pT / (rho * rho), slope(x -> at(s.temperature(), x).entropy(), rho, 1e-4 * rho), 1e-7, s);
            near(pT, slope(x -> at(x, rho).pressure(), s.temperature(), 0.05), 1e-7, s);
        }
    }

    @Test
    void pressure_is_the_slope_of_helmholtz_energy_with_volume() {
        for (int i = 0; i < STATES; i++) {
            FluidState s = anySinglePhase();
            double t = s.temperature();
            DoubleUnaryOperator a = rho -> {
                FluidState x = at(t, rho);
                return x.internalEnergy() - t * x.entropy();
            };
            double rho = s.density();
            double scale = rho * HelmholtzPoint.GAS_CONSTANT * t;
            assertEquals(s.pressure(), rho * rho * slope(a, rho, 1e-3 * rho), 1e-7 * scale, () -> "at " + s);
        }
    }

    @Test
    void sound_speed_is_the_slope_of_pressure_with_density_at_constant_entropy() {
        for (int i = 0; i < STATES; i++) {
            FluidState s = anySinglePhase();
            double step = 1e-3 * s.pressure();
            DoubleUnaryOperator rho =
                    p -> NitrousOxide.atPressureEntropy(p, s.entropy()).density();
            boolean cut = NitrousOxide.atPressureEntropy(s.pressure() - step, s.entropy())
                            .isSaturated()
                    || NitrousOxide.atPressureEntropy(s.pressure() + step, s.entropy())
                            .isSaturated();
            if (!cut && s.pressure() + step < 50e6) {
                near(1 / (s.soundSpeed() * s.soundSpeed()), slope(rho, s.pressure(), step), 3e-6, s);
            }
        }
    }

    @Test
    void sound_speed_of_a_mixture_is_the_homogeneous_equilibrium_one() {
        for (int i = 0; i < STATES; i++) {
            double x = 0.05 + 0.9 * random.nextDouble();
            FluidState s = NitrousOxide.mixture(185 + 120 * random.nextDouble(), x);
            DoubleUnaryOperator rho =
                    p -> NitrousOxide.atPressureEntropy(p, s.entropy()).density();
            near(1 / (s.soundSpeed() * s.soundSpeed()), slope(rho, s.pressure(), 2e-3 * s.pressure()), 1e-6, s);
        }
    }

    @Test
    void cv_of_a_mixture_is_the_slope_of_energy_at_constant_volume() {
        for (int i = 0; i < STATES; i++) {
            FluidState s = NitrousOxide.mixture(185 + 120 * random.nextDouble(), 0.05 + 0.9 * random.nextDouble());
            DoubleUnaryOperator u =
                    t -> NitrousOxide.atTemperatureDensity(t, s.density()).internalEnergy();
            near(s.cv(), slope(u, s.temperature(), 0.02), 1e-6, s);
        }
    }

    @Test
    void clapeyron_joins_the_slope_of_vapour_pressure_to_the_heat_of_vaporisation() {
        SaturationPoint line = new SaturationPoint();
        for (int i = 0; i < STATES; i++) {
            double t = anySaturationTemperature();
            double slope = slope(NitrousOxide::saturationPressure, t, 0.05);
            near(slope, line.atTemperature(t).pressureSlope(), 1e-8, t);
            double volume = 1 / line.vapourDensity() - 1 / line.liquidDensity();
            near(slope, line.heatOfVaporisation() / (t * volume), 1e-8, t);
        }
    }

    @Test
    void heat_of_vaporisation_is_t_times_the_entropy_step() {
        SaturationPoint line = new SaturationPoint();
        for (int i = 0; i < STATES; i++) {
            double t = anySaturationTemperature();
            line.atTemperature(t);
            near(line.heatOfVaporisation(), t * (line.vapourEntropy() - line.liquidEntropy()), 1e-11, t);
        }
    }

    @Test
    void both_phases_have_one_pressure_and_one_gibbs_energy() {
        SaturationPoint line = new SaturationPoint();
        for (int i = 0; i < STATES; i++) {
            double t = anySaturationTemperature();
            line.atTemperature(t);
            HelmholtzPoint l = new HelmholtzPoint().temperature(t).density(line.liquidDensity());
            HelmholtzPoint v = new HelmholtzPoint().temperature(t).density(line.vapourDensity());
            double rounding = 1e-12 * line.liquidDensity() * HelmholtzPoint.GAS_CONSTANT * t;
            assertEquals(line.pressure(), l.pressure(), rounding, "liquid at " + t);
            near(line.pressure(), v.pressure(), 1e-12, t);
            assertEquals(l.gibbsEnergy(), v.gibbsEnergy(), 1e-7, "at " + t);
        }
    }

    @Test
    void thin_gas_obeys_the_ideal_gas_law_and_its_fugacity_is_its_pressure() {
        for (int i = 0; i < STATES; i++) {
            double t = 182.33 + 342 * random.nextDouble();
            HelmholtzPoint gas = new HelmholtzPoint().temperature(t).density(1e-5);
            near(1e-5 * HelmholtzPoint.GAS_CONSTANT * t, gas.pressure(), 1e-6, t);
            assertEquals(0, gas.logFugacityCoefficient(), 1e-6);
        }
    }
}
