package org.shotledger.study;

import java.util.Arrays;

/** Some curves over the nitrous fuel flow, and between which values each of them is in a tile of circuits. */
final class Curves {
    private final Lattice fuel;
    int count;
    /** By curve: mouth that its fuel comes out of, number of its limit, cubics from node to node. */
    final int[] mouth;

    final int[] number;
    final double[][] cubics;
    /** By curve: bounds in the tile looked at. */
    final double[] low;

    final double[] high;

    Curves(int most, Lattice fuel) {
        this.fuel = fuel;
        this.mouth = new int[most];
        this.number = new int[most];
        this.cubics = new double[most][];
        this.low = new double[most];
        this.high = new double[most];
    }

    void clear() {
        count = 0;
    }

    /** Adds the curve through the values of a channel; where they are not answered it is absent. */
    void add(int itsMouth, int itsNumber, double[] values, int offset, double absent) {
        fuel.cubics(values, offset, absent, next(itsMouth, itsNumber));
    }

    /** Adds the curve that is far off where values are answered, and broken where they are not. */
    void addUnanswered(int itsMouth, int itsNumber, double[] values) {
        double[] steps = next(itsMouth, itsNumber);
        Arrays.fill(steps, 0);
        for (int j = 0; j < fuel.count() - 1; j++) {
            steps[Lattice.ORDER * j] = Lattice.answered(values, j) ? Engine.FAR : Double.NEGATIVE_INFINITY;
        }
    }

    private double[] next(int itsMouth, int itsNumber) {
        mouth[count] = itsMouth;
        number[count] = itsNumber;
        if (cubics[count] == null) {
            cubics[count] = new double[Lattice.ORDER * (fuel.count() - 1)];
        }
        return cubics[count++];
    }

    /** Bounds every curve in a tile: between its ends there, a cubic stays among its four Bernstein coefficients. */
    void look(Circuits circuits, int tile) {
        for (int i = 0; i < count; i++) {
            double first = circuits.first(mouth[i], tile);
            double last = circuits.last(mouth[i], tile);
            low[i] = Double.POSITIVE_INFINITY;
            high[i] = Double.NEGATIVE_INFINITY;
            for (int j = (int) first; j <= (int) last; j++) {
                double from = Math.max(first - j, 0);
                double over = Math.min(last - j, 1) - from;
                bound(i, cubics[i], Lattice.ORDER * j, from, over);
            }
        }
    }

    private void bound(int i, double[] c, int at, double t, double over) {
        double b0 = c[at] + t * (c[at + 1] + t * (c[at + 2] + t * c[at + 3]));
        double e1 = over * (c[at + 1] + t * (2 * c[at + 2] + t * 3 * c[at + 3]));
        double e2 = over * over * (c[at + 2] + 3 * t * c[at + 3]);
        double b1 = b0 + e1 / 3;
        double b2 = b1 + (e1 + e2) / 3;
        double b3 = b0 + e1 + e2 + over * over * over * c[at + 3];
        low[i] = Math.min(low[i], Math.min(Math.min(b0, b1), Math.min(b2, b3)));
        high[i] = Math.max(high[i], Math.max(Math.max(b0, b1), Math.max(b2, b3)));
    }

    /** What the lowest curve is nowhere above. */
    double leastHigh() {
        return Arrays.stream(high, 0, count).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** What the highest curve is nowhere below. */
    double mostLow() {
        return Arrays.stream(low, 0, count).max().orElse(Double.NEGATIVE_INFINITY);
    }
}
