package org.shotledger.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TransportTest {

    static Stream<double[]> esdu() {
        return Table.read("nitrous-oxide-esdu91022.csv").stream();
    }

    /** The same correlations evaluated elsewhere: guards the transcription, five printed digits. */
    @ParameterizedTest
    @MethodSource("esdu")
    void saturation_correlations_agree_with_their_table(double[] row) {
        double t = row[0];
        assertEquals(row[10] * 1e-3, Transport.liquidViscosity(t), 1e-4 * row[10] * 1e-3);
        assertEquals(row[11] * 1e-6, Transport.vapourViscosity(t), 1e-4 * row[11] * 1e-6);
        if (t <= 283.15) {
            assertEquals(row[12] * 1e-3, Transport.liquidConductivity(t), 1e-4 * row[12] * 1e-3);
        }
        if (t <= 303.15) {
            assertEquals(row[13] * 1e-3, Transport.vapourConductivity(t), 1e-4 * row[13] * 1e-3);
        }
    }

    static Stream<double[]> saturation() {
        return Table.read("saturation-same-equation.csv").stream();
    }

    /** The correlation of Mulero et al. (2012) as evaluated by CoolProp 8.0. */
    @ParameterizedTest
    @MethodSource("saturation")
    void surface_tension_agrees_with_its_table(double[] row) {
        assertEquals(row[15], Transport.surfaceTension(row[0]), 1e-9 * row[15]);
    }

    /** Another correlation, ESDU 91022: 69.31 (1 - T/309.57)^1.19346 mN/m; they differ by up to 1.2 % there. */
    @ParameterizedTest
    @CsvSource({"253.15", "263.15", "273.15", "283.15", "293.15"})
    void surface_tension_agrees_with_a_second_source(double t) {
        double esdu = 69.31e-3 * Math.pow(1 - t / 309.57, 1.19346);
        assertEquals(esdu, Transport.surfaceTension(t), 0.013 * esdu);
    }

    /** CRC Handbook of Chemistry and Physics, viscosity of gases at 1 bar or below (values from memory). */
    @ParameterizedTest
    @CsvSource({"200, 10.0", "300, 15.0", "400, 19.4", "500, 23.6"})
    void thin_gas_viscosity_agrees_with_the_handbook(double t, double microPascalSecond) {
        assertEquals(microPascalSecond * 1e-6, Transport.thinGasViscosity(t), 0.02 * microPascalSecond * 1e-6);
    }

    /** Thin gas and cold saturated vapour, two unrelated formulas, must meet where the vapour is thin. */
    @Test
    void saturated_vapour_meets_thin_gas_when_cold() {
        assertEquals(Transport.thinGasViscosity(190), Transport.vapourViscosity(190), 0.05 * 10e-6);
    }

    @Test
    void outside_its_range_a_correlation_says_so() {
        var error = assertThrows(IllegalArgumentException.class, () -> Transport.vapourConductivity(306));
        assertTrue(error.getMessage().contains("182.33 to 303.15 K"), error.getMessage());
        assertTrue(error.getMessage().contains("306.0 K"), error.getMessage());
    }
}
