package org.shotledger.confidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The propagation against the examples of JCGM 101:2008, clause 9, whose printed values stand here from memory. */
class PropagationTest {
    private static final int DRAWS = 1 << 18;
    private static final double ROOT_3 = Math.sqrt(3);

    private static Propagation run(ToDoubleFunction<double[]> model, Distribution... inputs) {
        return Propagation.of(model, List.of(inputs), new ShiftedSobol(inputs.length, 101), DRAWS);
    }

    private static double sum(double[] x) {
        double sum = 0;
        for (double v : x) {
            sum += v;
        }
        return sum;
    }

    /** 9.2.2: printed 2.00 and [-3.92, 3.92]; exact as well, a sum of normals. */
    @Test
    void four_normal_inputs() {
        Propagation y = run(
                PropagationTest::sum,
                Collections.nCopies(4, Distribution.normal(0, 1)).toArray(Distribution[]::new));
        assertEquals(0, y.mean(), 0.005);
        assertEquals(2, y.deviation(), 0.005);
        assertEquals(-3.92, y.quantile(0.025), 0.015);
        assertEquals(3.92, y.quantile(0.975), 0.015);
    }

    /** 9.2.3: printed 2.00 and [-3.88, 3.88]. */
    @Test
    void four_rectangular_inputs_of_the_same_width() {
        Propagation y = run(
                PropagationTest::sum,
                Collections.nCopies(4, Distribution.uniform(-ROOT_3, ROOT_3)).toArray(Distribution[]::new));
        assertEquals(2, y.deviation(), 0.005);
        assertEquals(-3.88, y.quantile(0.025), 0.015);
        assertEquals(3.88, y.quantile(0.975), 0.015);
    }

    /** 9.2.4: the fourth is ten times as wide; printed 10.1 and [-17.0, 17.0]. */
    @Test
    void one_rectangular_input_rules() {
        Distribution narrow = Distribution.uniform(-ROOT_3, ROOT_3);
        Propagation y =
                run(PropagationTest::sum, narrow, narrow, narrow, Distribution.uniform(-10 * ROOT_3, 10 * ROOT_3));
        assertEquals(Math.sqrt(103), y.deviation(), 0.02);
        assertEquals(-17.0, y.quantile(0.025), 0.05);
        assertEquals(17.0, y.quantile(0.975), 0.05);
    }

    /** 9.3, table 3: printed 1.2341 mg, 0.0754 mg and [1.0834, 1.3825] mg. */
    @Test
    void mass_calibration() {
        Propagation y = run(
                x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000,
                Distribution.normal(100_000, 0.050),
                Distribution.normal(1.234, 0.020),
                Distribution.uniform(1.10, 1.30),
                Distribution.uniform(7000, 9000),
                Distribution.uniform(7950, 8050));
        assertEquals(1.2341, y.mean(), 0.0005);
        assertEquals(0.0754, y.deviation(), 0.0005);
        assertEquals(1.0834, y.quantile(0.025), 0.002);
        assertEquals(1.3825, y.quantile(0.975), 0.002);
    }

    /**
     * 9.4, uncorrelated: Y = X1^2 + X2^2 with u = 0.005; mean and deviation exact by the moments of the normal distribution, in
     * 1e-6. The first is exact as well: an exponential distribution of mean 50e-6.
     */
    @ParameterizedTest
    @CsvSource({"0, 50, 50", "0.010, 150, 112", "0.050, 2550, 502"})
    void comparison_loss(double x1, double mean, double deviation) {
        Propagation y =
                run(x -> x[0] * x[0] + x[1] * x[1], Distribution.normal(x1, 0.005), Distribution.normal(0, 0.005));
        assertEquals(mean, 1e6 * y.mean(), 1);
        assertEquals(deviation, 1e6 * y.deviation(), 1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-12, 1e-6, 0.01, 0.074, 0.3, 0.5, 0.7, 0.93, 0.999, 1 - 1e-9})
    void quantiles_are_those_of_a_general_library(double p) {
        double normal = new NormalDistribution(3, 2).inverseCumulativeProbability(p);
        assertEquals(normal, Distribution.normal(3, 2).quantile(p), 1e-6 * Math.max(1, Math.abs(normal)));
    }

    /** Ishigami and Homma (1990) with a = 7, b = 0.1; the indices are known in closed form. */
    @Test
    void the_indices_of_the_ishigami_function_are_the_analytic_ones() {
        double a = 7;
        double b = 0.1;
        Distribution angle = Distribution.uniform(-Math.PI, Math.PI);
        SobolIndices indices = SobolIndices.of(
                x -> Math.sin(x[0]) + a * Math.pow(Math.sin(x[1]), 2) + b * Math.pow(x[2], 4) * Math.sin(x[0]),
                List.of(angle, angle, angle),
                1 << 15,
                1990);
        double pi4 = Math.pow(Math.PI, 4);
        double v1 = 0.5 * Math.pow(1 + b * pi4 / 5, 2);
        double v2 = a * a / 8;
        double v13 = b * b * pi4 * pi4 * (1.0 / 18 - 1.0 / 50);
        double variance = v1 + v2 + v13;
        assertEquals(variance, indices.variance(), 0.01 * variance);
        assertEquals(v1 / variance, indices.first().get(0), 0.01);
        assertEquals(v2 / variance, indices.first().get(1), 0.01);
        assertEquals(0, indices.first().get(2), 0.01);
        assertEquals((v1 + v13) / variance, indices.total().get(0), 0.01);
        assertEquals(v2 / variance, indices.total().get(1), 0.01);
        assertEquals(v13 / variance, indices.total().get(2), 0.01);
    }

    @Test
    void a_linear_model_has_the_indices_of_its_squared_weights() {
        SobolIndices indices = SobolIndices.of(
                x -> 3 * x[0] + x[1], List.of(Distribution.normal(0, 1), Distribution.normal(0, 2)), 1 << 14, 1);
        assertEquals(9.0 / 13, indices.first().get(0), 0.01);
        assertEquals(4.0 / 13, indices.first().get(1), 0.01);
        assertEquals(9.0 / 13, indices.total().get(0), 0.01);
        assertEquals(13, indices.variance(), 0.1);
    }

    /** Error of a mean that is known, with as many plain random points: it would be near 1/sqrt(n). */
    @Test
    void even_points_are_even() {
        int n = 1 << 12;
        for (ShiftedSobol points : List.of(new ShiftedSobol(5, 3), new ShiftedSobol(5, 4))) {
            double[] x = new double[5];
            double mean = 0;
            for (int i = 0; i < n; i++) {
                points.next(x);
                for (double v : x) {
                    assertTrue(v > 0 && v < 1);
                    mean += v / (5 * n);
                }
            }
            assertEquals(0.5, mean, 0.05 / Math.sqrt(n));
        }
    }

    @Test
    void what_is_no_distribution_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> Distribution.normal(0, 0));
        assertThrows(IllegalArgumentException.class, () -> Distribution.uniform(1, 1));
        assertThrows(IllegalArgumentException.class, () -> Distribution.uniform(Double.NaN, 1));
    }
}
