package org.shotledger.reconcile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fit against certified values and against data made with known parameters. */
class WeightedFitTest {
    /**
     * NIST/ITL Statistical Reference Datasets, nonlinear regression, Misra1a (D. Misra, Dental Research Monomolecular Adsorption
     * Study, NIST, 1978; public domain): y = b1 (1 - exp(-b2 x)), from both certified starts.
     */
    @ParameterizedTest
    @CsvSource({"500, 0.0001", "250, 0.0005"})
    void the_certified_values_of_misra1a_are_met(double b1, double b2) {
        double[] y = {10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78};
        double[] x = {77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0};
        WeightedFit fit = WeightedFit.of(
                p -> Arrays.stream(x).map(v -> p[0] * (1 - Math.exp(-p[1] * v))).toArray(),
                y,
                ones(y.length),
                new double[] {b1, b2});
        assertEquals(2.3894212918E+02, fit.parameters()[0], 1e-7 * 2.3894212918E+02);
        assertEquals(5.5015643181E-04, fit.parameters()[1], 1e-7 * 5.5015643181E-04);
        assertEquals(2.7070075241E+00, fit.scaledUncertainty(0), 1e-6 * 2.7070075241E+00);
        assertEquals(7.2668688436E-06, fit.scaledUncertainty(1), 1e-6 * 7.2668688436E-06);
        assertEquals(1.2455138894E-01, fit.chiSquare(), 1e-9 * 1.2455138894E-01);
        assertEquals(12, fit.freedom());
    }

    /** The mean of n values of one deviation has the uncertainty s / sqrt(n) (JCGM 100:2008, 4.2.3). */
    @Test
    void the_mean_has_the_uncertainty_of_the_guide() {
        double[] values = {3, 4, 5, 8};
        WeightedFit fit = WeightedFit.of(
                p -> new double[] {p[0], p[0], p[0], p[0]}, values, new double[] {2, 2, 2, 2}, new double[] {1});
        assertEquals(5, fit.parameters()[0], 1e-9);
        assertEquals(1, fit.uncertainty(0), 1e-9);
        assertEquals(Math.sqrt(14.0 / 3 / 4), fit.scaledUncertainty(0), 1e-9);
    }

    /** Of many fits of made data, the true parameter lies within one uncertainty about 68 times in a hundred. */
    @Test
    void uncertainties_cover_the_truth_as_often_as_they_say() {
        Random random = new Random(20);
        int inside = 0;
        int fits = 400;
        for (int k = 0; k < fits; k++) {
            double[] y = new double[20];
            double[] s = new double[20];
            for (int i = 0; i < 20; i++) {
                s[i] = 0.05 + 0.01 * i;
                y[i] = 2 * Math.exp(-0.15 * i) + 0.5 + s[i] * random.nextGaussian();
            }
            WeightedFit fit = WeightedFit.of(WeightedFitTest::decay, y, s, new double[] {1, 0.1, 0});
            inside += Math.abs(fit.parameters()[1] - 0.15) <= fit.uncertainty(1) ? 1 : 0;
        }
        // 68.3 % with a standard deviation of 2.3 % for 400 fits
        assertEquals(0.683, inside / (double) fits, 0.07);
    }

    private static double[] decay(double[] p) {
        double[] out = new double[20];
        Arrays.setAll(out, i -> p[0] * Math.exp(-p[1] * i) + p[2]);
        return out;
    }

    @Test
    void what_the_data_cannot_tell_is_refused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> WeightedFit.of(
                        p -> new double[] {p[0] + p[1], p[0] + p[1], p[0] + p[1]},
                        new double[] {1, 2, 3},
                        ones(3),
                        new double[] {1, 1}));
        assertThrows(
                IllegalArgumentException.class,
                () -> WeightedFit.of(p -> p, new double[] {1}, ones(1), new double[] {1}));
    }

    private static double[] ones(int n) {
        double[] ones = new double[n];
        Arrays.fill(ones, 1);
        return ones;
    }
}
