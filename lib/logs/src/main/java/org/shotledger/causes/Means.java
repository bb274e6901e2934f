package org.shotledger.causes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.shotledger.logs.Series;

/** Means of one channel over the pieces, and what their samples' own scatter makes them uncertain by. */
final class Means {
    /** Standard deviation over median size, normal scatter (F. R. Hampel, J. Am. Stat. Assoc. 69 (1974) 383-393). */
    private static final double HAMPEL = 1.4826;
    /** A piece with less than this share of trusted samples has no mean: our own choice. */
    private static final double ENOUGH = 0.5;

    private final Observable what;
    private final Optional<Series> series;
    private final List<Bin> bins;
    private final double late;

    Means(Observable what, Optional<Series> series, List<Bin> bins, double late) {
        this.what = what;
        this.series = series;
        this.bins = bins;
        this.late = late;
    }

    void into(double[] values, double[] scatter) {
        Arrays.fill(values, Double.NaN);
        Arrays.fill(scatter, Double.NaN);
        if (series.isEmpty()) {
            return;
        }
        List<Series> pieces = bins.stream()
                .map(b -> series.get().between(b.from() + late, b.to() + late))
                .toList();
        double one = scatter(pieces);
        for (int i = 0; i < values.length; i++) {
            double[] good = Arrays.stream(pieces.get(i).values())
                    .filter(v -> !Double.isNaN(what.seen(v)))
                    .toArray();
            if (good.length > 0 && good.length >= ENOUGH * pieces.get(i).size()) {
                values[i] = Arrays.stream(good).average().orElseThrow();
                scatter[i] = one / Math.sqrt(good.length);
            }
        }
    }

    /**
     * Scatter of one sample as the fit sees it: second differences, so that neither slope nor step counts; for a channel written with
     * few digits at least what rounding makes.
     */
    private double scatter(List<Series> pieces) {
        List<Double> sizes = new ArrayList<>();
        double digit = Double.POSITIVE_INFINITY;
        for (Series piece : pieces) {
            double[] v = Arrays.stream(piece.values()).map(what::seen).toArray();
            for (int i = 0; i + 2 < v.length; i++) {
                double second = Math.abs(v[i] - 2 * v[i + 1] + v[i + 2]);
                if (!Double.isNaN(second)) {
                    sizes.add(second);
                }
                double first = Math.abs(v[i + 1] - v[i]);
                digit = first > 1e-12 ? Math.min(digit, first) : digit;
            }
        }
        double rounding = Double.isInfinite(digit) ? 0 : digit / Math.sqrt(12);
        if (sizes.isEmpty()) {
            return what.usual();
        }
        double[] sorted = sizes.stream().mapToDouble(d -> d).sorted().toArray();
        return Math.max(HAMPEL * sorted[sorted.length / 2] / Math.sqrt(6), rounding);
    }
}
