package org.shotledger.confidence;

import java.util.stream.IntStream;

/**
 * Which speeds can decide an output while every unknown stays within a box: the others are left out, since their quadratic form
 * lies above, or below, that of another speed everywhere in the box. A limit that no speed can break there needs none at all.
 */
final class DecidingSpeeds {
    /** The box holds each unknown but for this probability on either side; draws outside of it are evaluated at every speed. */
    private static final double OUTSIDE = 1e-6;

    /** Speeds at which power can be the greatest. */
    final int[] power;
    /** Speeds at which each limit can be the closest; none where it cannot be broken. */
    final int[][] margins;

    private final PlanSurface surface;
    private final double[] low;
    private final double[] high;

    private DecidingSpeeds(PlanSurface surface, double[] low, double[] high, int[] power, int[][] margins) {
        this.surface = surface;
        this.low = low;
        this.high = high;
        this.power = power;
        this.margins = margins;
    }

    /** Every speed for every output: what holds anywhere. */
    static DecidingSpeeds all(PlanSurface surface) {
        int[] every = IntStream.range(0, surface.speeds).toArray();
        int[][] margins =
                IntStream.range(0, surface.keys.size()).mapToObj(k -> every).toArray(int[][]::new);
        return new DecidingSpeeds(surface, new double[0], new double[0], every, margins);
    }

    /** Those of a box around nearly all draws. */
    static DecidingSpeeds of(PlanSurface surface) {
        double[] low = surface.coordinates(OUTSIDE);
        double[] high = surface.coordinates(1 - OUTSIDE);
        DecidingSpeeds box = new DecidingSpeeds(surface, low, high, new int[0], new int[0][]);
        int[][] margins = IntStream.range(0, surface.keys.size())
                .mapToObj(k -> box.breakable(k) ? box.speeds(PlanSurface.MARGINS + k, 1) : new int[0])
                .toArray(int[][]::new);
        return new DecidingSpeeds(surface, low, high, box.speeds(PlanSurface.POWER, -1), margins);
    }

    /** Whether places lie in the box; each term's coordinate of the first unknowns is compared. */
    boolean holds(double[][] terms, int n) {
        for (int i = 0; i < low.length; i++) {
            for (int j = 0; j < n; j++) {
                if (terms[i][j] < low[i] || terms[i][j] > high[i]) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean breakable(int limit) {
        return IntStream.range(0, surface.speeds)
                .anyMatch(r -> lowest(surface.weights(r, PlanSurface.MARGINS + limit)) < 0);
    }

    /** Speeds whose output no other speed's stays below, times a sign. */
    private int[] speeds(int output, int sign) {
        return IntStream.range(0, surface.speeds)
                .filter(r -> IntStream.range(0, surface.speeds)
                        .noneMatch(s -> s != r && lowest(difference(output, sign, r, s)) > 0))
                .toArray();
    }

    private double[] difference(int output, int sign, int r, int s) {
        double[] one = surface.weights(r, output);
        double[] other = surface.weights(s, output);
        return IntStream.range(0, one.length)
                .mapToDouble(t -> sign * (one[t] - other[t]))
                .toArray();
    }

    /** A bound below a quadratic form in the box: constant, linear terms, squares, mixed terms. */
    private double lowest(double[] weights) {
        int d = low.length;
        double sum = weights[0];
        for (int i = 0; i < d; i++) {
            double linear = weights[1 + i];
            double square = weights[1 + d + i];
            double least = Math.min(low[i] * (linear + low[i] * square), high[i] * (linear + high[i] * square));
            double vertex = square > 0 ? -0.5 * linear / square : low[i];
            sum += vertex > low[i] && vertex < high[i] ? -0.25 * linear * linear / square : least;
        }
        for (int m = 0; m < surface.pairs.length; m++) {
            double weight = weights[1 + 2 * d + m];
            int a = surface.pairs[m][0];
            int b = surface.pairs[m][1];
            sum += Math.min(
                    Math.min(weight * low[a] * low[b], weight * low[a] * high[b]),
                    Math.min(weight * high[a] * low[b], weight * high[a] * high[b]));
        }
        return sum;
    }
}
