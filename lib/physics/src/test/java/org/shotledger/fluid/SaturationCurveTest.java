package org.shotledger.fluid;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.DataInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import java.util.function.BiFunction;
import org.hipparchus.dfp.Dfp;
import org.junit.jupiter.api.Test;

class SaturationCurveTest {

    private static final double SPAN = NitrousOxide.CRITICAL_TEMPERATURE - 182.33;

    private static double[] curve(double t) {
        SaturationPoint s = new SaturationPoint().atTemperature(t);
        return new double[] {
            s.pressure(),
            s.liquidDensity(),
            s.vapourDensity(),
            s.liquidEnthalpy(),
            s.vapourEnthalpy(),
            s.liquidEntropy(),
            s.vapourEntropy()
        };
    }

    // enthalpy and entropy pass through zero: their error is measured against 1e5 J/kg and 500 J/(kg K) there
    private static final double[] FLOOR = {0, 0, 0, 1e5, 1e5, 500, 500};

    @Test
    void expansions_meet_the_phase_equilibrium_in_fifty_digits() {
        Random random = new Random(20060501);
        for (int i = 0; i < 60; i++) {
            // half of the states crowd the critical point, down to 1e-6 K
            double t = i % 2 == 0
                    ? 182.33 + SPAN * random.nextDouble()
                    : NitrousOxide.CRITICAL_TEMPERATURE - Math.pow(10, -6 + 7 * random.nextDouble());
            Dfp[] exact = ExactEquilibrium.atTemperature(t).properties();
            double theta = Math.sqrt(1 - t / NitrousOxide.CRITICAL_TEMPERATURE);
            double[] fast = curve(t);
            for (int q = 0; q < exact.length; q++) {
                double value = exact[q].toDouble();
                double error = Math.abs(fast[q] - value) / Math.max(Math.abs(value), FLOOR[q]);
                // a double fixes T to 1e-16, hence theta to 1e-16/theta
                double bound = 5e-14 + 3e-16 / theta;
                assertTrue(error < bound, "property " + q + " at " + t + " K: error " + error);
            }
        }
    }

    @Test
    void boiling_temperature_meets_the_phase_equilibrium_in_fifty_digits() {
        Random random = new Random(91022);
        for (int i = 0; i < 10; i++) {
            double t = i % 2 == 0
                    ? 182.33 + SPAN * random.nextDouble()
                    : NitrousOxide.CRITICAL_TEMPERATURE - Math.pow(10, -6 + 7 * random.nextDouble());
            double p = ExactEquilibrium.atTemperature(t).properties()[0].toDouble();
            assertEquals(t, SaturationCurve.temperature(p), 2e-13 * t);
        }
    }

    @Test
    void expansions_meet_the_double_precision_solver_within_one_part_in_a_thousand_million() {
        Random random = new Random(310);
        PhaseEquilibrium exact = new PhaseEquilibrium();
        for (int i = 0; i < 2000; i++) {
            double t = 182.33 + (SPAN - 0.05) * random.nextDouble();
            exact.solve(t);
            double[] fast = curve(t);
            near(exact.pressure(), fast[0], t);
            near(exact.liquid().density(), fast[1], t);
            near(exact.vapour().density(), fast[2], t);
        }
    }

    private static void near(double expected, double actual, double t) {
        assertEquals(expected, actual, 1e-9 * expected, "at " + t + " K");
    }

    /** The first interval and every tenth after it; making the whole takes half a minute. */
    @Test
    void the_shipped_resource_is_what_the_generator_makes() throws IOException {
        try (DataInputStream in = new DataInputStream(SaturationCurve.class.getResourceAsStream("saturation.bin"))) {
            assertEquals(SaturationCurve.CELLS, in.readInt());
            assertEquals(SaturationCurve.TERMS, in.readInt());
            compare(in, 7, SaturationGenerator::rows);
            compare(in, 1, SaturationGenerator::boilingRows);
            assertEquals(-1, in.read());
        }
    }

    private static void compare(DataInputStream in, int properties, BiFunction<Integer, Integer, double[][]> maker)
            throws IOException {
        int intervals = in.readInt();
        for (int i = 0; i < intervals; i++) {
            int first = in.readInt();
            int count = in.readInt();
            double[][] made = i % 10 == 0 ? maker.apply(first, count) : null;
            for (int q = 0; q < properties; q++) {
                double[] stored = row(in);
                if (made != null) {
                    assertArrayEquals(Arrays.copyOf(made[q], SaturationCurve.TERMS), stored, 0);
                }
            }
        }
    }

    private static double[] row(DataInputStream in) throws IOException {
        double[] row = new double[SaturationCurve.TERMS];
        for (int k = 0; k < row.length; k++) {
            row[k] = in.readDouble();
        }
        return row;
    }

    @Test
    void critical_constants_are_those_of_the_equation() {
        assertEquals(ExactEquilibrium.CRITICAL_TEMPERATURE.toDouble(), NitrousOxide.CRITICAL_TEMPERATURE, 1e-13);
        assertEquals(ExactEquilibrium.CRITICAL_DENSITY.toDouble(), NitrousOxide.CRITICAL_DENSITY, 1e-12);
    }
}
