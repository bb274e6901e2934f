package org.shotledger.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SaturationTest {

    static Stream<double[]> saturation() {
        return Table.read("saturation-same-equation.csv").stream();
    }

    /** Same equation, ten printed digits. Within 0.5 K of critical, cp and w follow tiny density differences. */
    @ParameterizedTest
    @MethodSource("saturation")
    void agrees_with_an_independent_implementation(double[] row) {
        FluidState liquid = NitrousOxide.saturatedLiquid(row[0]);
        FluidState vapour = NitrousOxide.saturatedVapour(row[0]);
        double tight = row[0] < 309 ? 1e-8 : 1e-6;
        near(row[1], NitrousOxide.saturationPressure(row[0]), 1e-8);
        near(row[2], liquid.density(), tight);
        near(row[3], vapour.density(), tight);
        assertEquals(row[4], liquid.enthalpy(), 1e-3 + tight * Math.abs(row[4]));
        near(row[5], vapour.enthalpy(), tight);
        assertEquals(row[7], liquid.entropy(), 1e-5 + tight * Math.abs(row[7]));
        near(row[8], vapour.entropy(), tight);
        near(row[9], liquid.cp(), 10 * tight);
        near(row[10], vapour.cp(), 10 * tight);
        near(row[11], liquid.cv(), tight);
        near(row[12], vapour.cv(), tight);
        near(row[13], liquid.soundSpeed(), tight);
        near(row[14], vapour.soundSpeed(), tight);
    }

    @ParameterizedTest
    @MethodSource("saturation")
    void boiling_temperature_undoes_vapour_pressure(double[] row) {
        near(row[0], NitrousOxide.saturationTemperature(NitrousOxide.saturationPressure(row[0])), 1e-11);
    }

    @ParameterizedTest
    @MethodSource("saturation")
    void a_mixture_is_found_again_by_every_flash(double[] row) {
        FluidState m = NitrousOxide.mixture(row[0], 0.37);
        assertTrue(m.isTwoPhase());
        double loose = row[0] < 309 ? 1e-9 : 1e-5;
        assertEquals(
                0.37,
                NitrousOxide.atPressureEnthalpy(m.pressure(), m.enthalpy()).quality(),
                loose);
        assertEquals(
                0.37, NitrousOxide.atPressureEntropy(m.pressure(), m.entropy()).quality(), loose);
        assertEquals(
                0.37, NitrousOxide.atTemperatureDensity(row[0], m.density()).quality(), loose);
        assertEquals(
                0.37,
                NitrousOxide.atDensityEnergy(m.density(), m.internalEnergy()).quality(),
                loose);
    }

    private static void near(double expected, double actual, double relative) {
        assertEquals(expected, actual, relative * Math.abs(expected));
    }
}
