package org.shotledger.study;

import java.util.Arrays;

/**
 * Evenly spaced nodes from zero upwards, between which a value is found by the cubic through the four nodes around it. The nodes do
 * not depend on what is varied: so a verdict does not depend on the other values of an axis.
 *
 * @param step distance of two nodes
 * @param first number of the first node that is held
 * @param count how many are held
 */
record Lattice(double step, int first, int count) {
    /** Nodes of one cubic. */
    static final int ORDER = 4;

    /**
     * A cubic through four nodes leaves their range by no more than this share of it: its weights below zero sum to at most 5/16 where it
     * is taken between its first two nodes (at zero), 1/8 between its middle ones.
     */
    static final double OVERSHOOT = 5.0 / 16;

    /** The lattice that holds all four nodes of every value from low to high. */
    static Lattice over(double step, double low, double high) {
        return over(step, low, high, Integer.MAX_VALUE);
    }

    /** The same without nodes beyond a last one: up to it the cubic of the last four nodes is used. */
    static Lattice over(double step, double low, double high, int last) {
        int end = Math.min(start((int) (high / step)) + ORDER - 1, last);
        int first = Math.min(start((int) (low / step)), end + 1 - ORDER);
        return new Lattice(step, first, end + 1 - first);
    }

    /** First of the four nodes for what lies between a node and the next. */
    private static int start(int node) {
        return Math.max(0, node - 1);
    }

    double value(int node) {
        return step * (first + node);
    }

    /** Where a value lies, in steps from the first node that is held: its whole part is the node below. */
    double place(double value) {
        return Math.max(0, Math.min(value / step - first, Math.nextDown(count - 1.0)));
    }

    /** First of the four nodes for a place, counted from those that are held. */
    int start(double place) {
        return Math.min(start((int) place), count - ORDER);
    }

    /** Lagrange's weights of the four nodes. */
    double[] weights(double place) {
        double u = place - start(place);
        return new double[] {
            -(u - 1) * (u - 2) * (u - 3) / 6,
            u * (u - 2) * (u - 3) / 2,
            -u * (u - 1) * (u - 3) / 2,
            u * (u - 1) * (u - 2) / 6
        };
    }

    /** The value that weights make of four nodes. */
    static double at(double[] values, int from, double[] w) {
        return w[0] * values[from] + w[1] * values[from + 1] + w[2] * values[from + 2] + w[3] * values[from + 3];
    }

    /**
     * The cubics from node to node: between node {@code j} and the next a value is {@code c0 + t (c1 + t (c2 + t c3))} with {@code t} from
     * 0 to 1. Where only the two nodes at its ends have a value it is the straight line between them, where they have none it is absent.
     *
     * @param values at the nodes, from an offset on; NaN where there is none
     * @param absent what stands where there is no value
     * @param cubics four coefficients for each interval
     */
    void cubics(double[] values, int offset, double absent, double[] cubics) {
        for (int j = 0; j < count - 1; j++) {
            int start = start((double) j);
            int at = offset + start;
            double y0 = values[at];
            double d1 = values[at + 1] - y0;
            double d2 = (values[at + 2] - 2 * values[at + 1] + y0) / 2;
            double d3 = (values[at + 3] - 3 * values[at + 2] + 3 * values[at + 1] - y0) / 6;
            // Newton's form from the first node, moved to begin at node j
            double u = j - start;
            double c1 = d1 - d2 + 2 * d3;
            double c2 = d2 - 3 * d3;
            int to4 = ORDER * j;
            cubics[to4] = y0 + u * (c1 + u * (c2 + u * d3));
            cubics[to4 + 1] = c1 + u * (2 * c2 + u * 3 * d3);
            cubics[to4 + 2] = c2 + u * 3 * d3;
            cubics[to4 + 3] = d3;
            if (Double.isNaN(cubics[to4])) {
                line(values, offset + j, absent, cubics, to4);
            }
        }
    }

    private static void line(double[] values, int at, double absent, double[] cubics, int to) {
        Arrays.fill(cubics, to, to + ORDER, 0);
        boolean answered = answered(values, at);
        cubics[to] = answered ? values[at] : absent;
        cubics[to + 1] = answered ? values[at + 1] - values[at] : 0;
    }

    /** The value of the cubic at a place; NaN where there is none. */
    double value(double[] values, int offset, double place) {
        double[] cubics = new double[ORDER * (count - 1)];
        cubics(values, offset, Double.NaN, cubics);
        int node = (int) place;
        double t = place - node;
        int i = ORDER * node;
        return cubics[i] + t * (cubics[i + 1] + t * (cubics[i + 2] + t * cubics[i + 3]));
    }

    /** Whether what lies between a node and the next has a value. */
    static boolean answered(double[] values, int at) {
        return !Double.isNaN(values[at] + values[at + 1]);
    }
}
