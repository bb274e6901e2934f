package org.shotledger.study;

import java.util.Arrays;

/** Some curves over the nitrous fuel flow, of which the lowest is asked for, circuit by circuit. */
final class Curves {
    private static final double THIRD = 1.0 / 3;

    private final Lattice fuel;
    private int count;
    /** By curve: mouth that its fuel comes out of, what it is called, cubics from node to node. */
    private final int[] mouth;

    private final int[] name;
    private final double[][] cubics;
    /** By curve: the least it can be in the tile looked at. */
    private final double[] low;

    Curves(int most, Lattice fuel) {
        this.fuel = fuel;
        this.mouth = new int[most];
        this.name = new int[most];
        this.cubics = new double[most][Lattice.ORDER * (fuel.count() - 1)];
        this.low = new double[most];
    }

    void clear() {
        count = 0;
    }

    /** Adds the curve through the values of a channel; where they are not answered it is absent. */
    void add(int itsMouth, int itsName, double[] values, int offset, double absent) {
        fuel.cubics(values, offset, absent, next(itsMouth, itsName));
    }

    /** Adds the curve that is far off where values are answered, and broken where they are not. */
    void addUnanswered(int itsMouth, int itsName, double[] values) {
        double[] steps = next(itsMouth, itsName);
        Arrays.fill(steps, 0);
        for (int j = 0; j < fuel.count() - 1; j++) {
            steps[Lattice.ORDER * j] = Lattice.answered(values, j) ? Engine.FAR : Double.NEGATIVE_INFINITY;
        }
    }

    private double[] next(int itsMouth, int itsName) {
        mouth[count] = itsMouth;
        name[count] = itsName;
        return cubics[count++];
    }

    /**
     * Lowers what is known of the circuits of a tile to the lowest curve.
     *
     * @param least what is known, none above a ceiling
     * @param whose the curve that it is of
     */
    void lower(Circuits circuits, int tile, double ceiling, double[] least, int[] whose) {
        double lowest = Math.min(ceiling, look(circuits, tile));
        for (int i = 0; i < count; i++) {
            // the lowest itself is not below where all circuits of the tile pass the same fuel
            if (low[i] <= lowest) {
                lower(i, circuits, tile, least, whose);
            }
        }
    }

    private void lower(int i, Circuits circuits, int tile, double[] least, int[] whose) {
        double[] place = circuits.place()[mouth[i]];
        double[] c = cubics[i];
        int from = tile * Circuits.TILE;
        int size = circuits.size(tile);
        int its = name[i];
        int first = (int) circuits.first(mouth[i], tile);
        if (first == (int) circuits.last(mouth[i], tile)) {
            // nearly always: one cubic for all of the tile
            double c0 = c[Lattice.ORDER * first];
            double c1 = c[Lattice.ORDER * first + 1];
            double c2 = c[Lattice.ORDER * first + 2];
            double c3 = c[Lattice.ORDER * first + 3];
            for (int k = 0; k < size; k++) {
                double t = place[from + k] - first;
                double is = c0 + t * (c1 + t * (c2 + t * c3));
                if (is < least[k]) {
                    least[k] = is;
                    whose[k] = its;
                }
            }
            return;
        }
        for (int k = 0; k < size; k++) {
            int node = (int) place[from + k];
            double t = place[from + k] - node;
            int at = Lattice.ORDER * node;
            double is = c[at] + t * (c[at + 1] + t * (c[at + 2] + t * c[at + 3]));
            if (is < least[k]) {
                least[k] = is;
                whose[k] = its;
            }
        }
    }

    /** Finds the least that every curve can be in a tile; what the lowest curve is nowhere above. */
    private double look(Circuits circuits, int tile) {
        double leastHigh = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            double first = circuits.first(mouth[i], tile);
            double last = circuits.last(mouth[i], tile);
            low[i] = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int j = (int) first; j <= (int) last; j++) {
                double from = j < first ? first - j : 0;
                double to = j + 1 > last ? last - j : 1;
                double most = bound(i, Lattice.ORDER * j, from, to - from);
                high = most > high ? most : high;
            }
            leastHigh = high < leastHigh ? high : leastHigh;
        }
        return leastHigh;
    }

    /** Lowers the least that a curve can be by one of its cubics, which stays among its four Bernstein coefficients; the most it is there. */
    private double bound(int i, int at, double t, double over) {
        double[] c = cubics[i];
        double b0 = c[at] + t * (c[at + 1] + t * (c[at + 2] + t * c[at + 3]));
        double e1 = over * (c[at + 1] + t * (2 * c[at + 2] + t * 3 * c[at + 3]));
        double e2 = over * over * (c[at + 2] + 3 * t * c[at + 3]);
        double b1 = b0 + e1 * THIRD;
        double b2 = b1 + (e1 + e2) * THIRD;
        double b3 = b0 + e1 + e2 + over * over * over * c[at + 3];
        double least = b0 < b3 ? b0 : b3;
        double most = b0 < b3 ? b3 : b0;
        least = b1 < least ? b1 : least;
        most = b1 > most ? b1 : most;
        least = b2 < least ? b2 : least;
        most = b2 > most ? b2 : most;
        low[i] = least < low[i] ? least : low[i];
        return most;
    }
}
