package org.shotledger.logs;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Common step, smoothing and alignment, against published weights and signals with a known lag. */
class SeriesTest {

    @Test
    void between_samples_lies_a_straight_line_and_across_gaps_nothing() {
        Series series = new Series(new double[] {0, 1, 2, 5, 6}, new double[] {0, 10, Double.NaN, 50, 60});
        double[] at = series.at(new double[] {-1, 0, 0.25, 1, 1.5, 2, 3, 5, 5.5, 6, 7}, 1.5);
        assertArrayEquals(
                new double[] {Double.NaN, 0, 2.5, 10, Double.NaN, Double.NaN, Double.NaN, 50, 55, 60, Double.NaN}, at);
        assertEquals(7, series.every(1, 1.5).size());
        assertEquals(1, series.step());
        assertThrows(IllegalArgumentException.class, () -> new Series(new double[] {0, 0}, new double[2]));
        Series absurd = new Series(new double[] {0, 1e-6, 1e7}, new double[3]);
        assertTrue(assertThrows(IllegalArgumentException.class, () -> absurd.every(1e-6, 1))
                .getMessage()
                .contains("check its times"));
    }

    /**
     * Savitzky and Golay, Anal. Chem. 36 (1964), Table I (quadratic and cubic) and II (quartic), first derivative Table III
     * (quadratic), from memory; the rows of 5, 7, 9, 11 and 13 points agree with those printed in the open sources of several
     * programs, the 5-point rows with the examples in the documentation of SciPy's savgol_coeffs.
     */
    @ParameterizedTest
    @CsvSource({
        "5, 2, 35, '-3 12 17 12 -3'",
        "5, 3, 35, '-3 12 17 12 -3'",
        "7, 2, 21, '-2 3 6 7 6 3 -2'",
        "9, 3, 231, '-21 14 39 54 59 54 39 14 -21'",
        "11, 2, 429, '-36 9 44 69 84 89 84 69 44 9 -36'",
        "13, 2, 143, '-11 0 9 16 21 24 25 24 21 16 9 0 -11'",
        "7, 4, 231, '5 -30 75 131 75 -30 5'",
    })
    void the_weights_are_the_published_ones(int width, int degree, double norm, String printed) {
        double[] expected = numbers(printed, norm);
        assertArrayEquals(expected, SavitzkyGolay.of(width, degree).weights(), 1e-13);
    }

    @ParameterizedTest
    @CsvSource({"5, 10, '-2 -1 0 1 2'", "7, 28, '-3 -2 -1 0 1 2 3'"})
    void the_weights_of_the_slope_are_the_published_ones(int width, double norm, String printed) {
        assertArrayEquals(numbers(printed, norm), SavitzkyGolay.of(width, 2).slopeWeights(), 1e-13);
    }

    /** The off-centre row printed in the documentation of SciPy's savgol_coeffs for 5 points, degree 2, one before the end. */
    @Test
    void ends_are_read_off_centre() {
        double[] impulse = new double[5];
        impulse[4] = 1;
        assertEquals(0.25714286, SavitzkyGolay.of(5, 2).smooth(impulse)[3], 5e-9);
        assertEquals(-0.14285714, SavitzkyGolay.of(5, 2).smooth(new double[] {1, 0, 0, 0, 0})[3], 5e-9);
    }

    @Test
    void a_polynomial_of_its_degree_passes_unchanged_and_gives_its_slope() {
        double[] cubic = steps(40, x -> 2 - 3 * x + 0.5 * x * x - 0.01 * x * x * x);
        double[] slope = steps(40, x -> -3 + x - 0.03 * x * x);
        assertArrayEquals(cubic, SavitzkyGolay.of(9, 3).smooth(cubic), 1e-9);
        assertArrayEquals(slope, SavitzkyGolay.of(9, 3).slope(cubic, 1), 1e-9);
    }

    @Test
    void a_missing_value_takes_its_windows_with_it() {
        double[] values = steps(30, x -> x);
        values[10] = Double.NaN;
        double[] smooth = SavitzkyGolay.of(5, 2).smooth(values);
        for (int i = 0; i < 30; i++) {
            assertEquals(i >= 8 && i <= 12, Double.isNaN(smooth[i]), "at " + i);
        }
    }

    /** White noise of variance 1 comes out with the sum of squared weights; 17/35 for 5 points (the middle weight). */
    @Test
    void noise_falls_by_the_sum_of_squared_weights() {
        assertEquals(17.0 / 35, SavitzkyGolay.of(5, 2).noise(), 1e-13);
        Random random = new Random(5);
        double[] noise =
                random.doubles(200_000).map(u -> (u - 0.5) * Math.sqrt(12)).toArray();
        double variance = Arrays.stream(SavitzkyGolay.of(5, 2).smooth(noise))
                .map(v -> v * v)
                .average()
                .orElseThrow();
        assertEquals(17.0 / 35, variance, 0.01);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.137, -0.06, -0.005, 0, 0.013, 0.06, 0.111})
    void a_known_lag_is_found_between_the_steps(double lag) {
        double step = 0.02;
        DoubleUnaryOperator signal = t -> Math.tanh(3 * (t - 2)) + 0.3 * Math.sin(5 * t) + 0.1 * Math.cos(11 * t);
        double[] reference = steps(250, i -> signal.applyAsDouble(i * step));
        double[] late = steps(250, i -> 4 + 2 * signal.applyAsDouble(i * step - lag));
        Lag found = Lag.of(reference, late, step, 0.3);
        assertEquals(lag, found.seconds(), 0.02 * step);
        assertTrue(found.correlation() > 0.99);
    }

    @Test
    void noise_and_lost_samples_blur_a_lag_little() {
        Random random = new Random(17);
        DoubleUnaryOperator signal = t -> Math.tanh(3 * (t - 2)) + 0.3 * Math.sin(5 * t);
        double[] reference = steps(250, i -> signal.applyAsDouble(i * 0.02));
        double[] late = steps(250, i -> signal.applyAsDouble(i * 0.02 - 0.06) + 0.05 * random.nextGaussian());
        Arrays.fill(late, 60, 70, Double.NaN);
        assertEquals(0.06, Lag.of(reference, late, 0.02, 0.3).seconds(), 0.004);
    }

    @Test
    void signals_that_do_not_follow_each_other_have_no_lag() {
        Random random = new Random(23);
        double[] a = random.doubles(200).toArray();
        double[] b = random.doubles(200).toArray();
        Lag lag = Lag.of(a, b, 0.02, 0.3);
        assertFalse(lag.clear());
        assertTrue(lag.sentence().contains("do not follow"), lag.sentence());
        double[] ramp = steps(200, i -> Math.tanh(0.05 * (i - 100)));
        double[] later = steps(200, i -> Math.tanh(0.05 * (i - 140)));
        assertTrue(Lag.of(ramp, later, 0.02, 0.3).sentence().contains("look further"));
    }

    private static double[] numbers(String printed, double norm) {
        return Arrays.stream(printed.split(" "))
                .mapToDouble(n -> Double.parseDouble(n) / norm)
                .toArray();
    }

    private static double[] steps(int n, DoubleUnaryOperator f) {
        double[] out = new double[n];
        for (int i = 0; i < n; i++) {
            out[i] = f.applyAsDouble(i);
        }
        return out;
    }
}
