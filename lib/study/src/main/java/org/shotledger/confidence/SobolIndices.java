package org.shotledger.confidence;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * How much of a result's variance each input answers for, alone and together with the others.
 *
 * <p>First order after Saltelli et al., Computer Physics Communications 181 (2010) 259, {@code S_i = mean f(B) (f(A_B^i) - f(A))
 * / V}; total after Jansen, Computer Physics Communications 117 (1999) 35, {@code T_i = mean (f(A) - f(A_B^i))^2 / 2 V}.
 *
 * @param first share of the variance that goes when the input is known, by input
 * @param total share that stays when all others are known, by input
 * @param variance variance of the result
 */
public record SobolIndices(List<Double> first, List<Double> total, double variance) {
    public SobolIndices {
        first = List.copyOf(first);
        total = List.copyOf(total);
    }

    /**
     * Estimates the indices.
     *
     * @param model the model; it gets the inputs in the order of the distributions and must not keep the array
     * @param inputs distributions of independent inputs, at least one
     * @param rows number of base points; the model is called rows x (inputs + 2) times
     * @param seed seed
     * @return the indices
     */
    public static SobolIndices of(ToDoubleFunction<double[]> model, List<Distribution> inputs, int rows, long seed) {
        int d = inputs.size();
        ShiftedSobol points = new ShiftedSobol(2 * d, seed);
        double[] u = new double[2 * d];
        double[] a = new double[d];
        double[] b = new double[d];
        double[] fa = new double[rows];
        double[] fb = new double[rows];
        double[][] mixed = new double[d][rows];
        for (int n = 0; n < rows; n++) {
            points.next(u);
            for (int i = 0; i < d; i++) {
                a[i] = inputs.get(i).quantile(u[i]);
                b[i] = inputs.get(i).quantile(u[d + i]);
            }
            fa[n] = model.applyAsDouble(a.clone());
            fb[n] = model.applyAsDouble(b.clone());
            for (int i = 0; i < d; i++) {
                double kept = a[i];
                a[i] = b[i];
                mixed[i][n] = model.applyAsDouble(a.clone());
                a[i] = kept;
            }
        }
        return estimate(fa, fb, mixed);
    }

    private static SobolIndices estimate(double[] fa, double[] fb, double[][] mixed) {
        int rows = fa.length;
        double mean = IntStream.range(0, rows).mapToDouble(n -> fa[n] + fb[n]).sum() / (2.0 * rows);
        double variance = IntStream.range(0, rows)
                        .mapToDouble(n -> square(fa[n] - mean) + square(fb[n] - mean))
                        .sum()
                / (2.0 * rows - 1);
        double scale = variance > 0 ? 1 / (variance * rows) : 0;
        List<Double> first = IntStream.range(0, mixed.length)
                .mapToObj(i -> scale
                        * IntStream.range(0, rows)
                                .mapToDouble(n -> (fb[n] - mean) * (mixed[i][n] - fa[n]))
                                .sum())
                .toList();
        List<Double> total = IntStream.range(0, mixed.length)
                .mapToObj(i -> 0.5
                        * scale
                        * IntStream.range(0, rows)
                                .mapToDouble(n -> square(fa[n] - mixed[i][n]))
                                .sum())
                .toList();
        return new SobolIndices(first, total, variance);
    }

    private static double square(double x) {
        return x * x;
    }
}
