package org.shotledger.study;

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

    /** The lattice that holds all four nodes of every value from low to high. */
    static Lattice over(double step, double low, double high) {
        int first = start(low / step);
        return new Lattice(step, first, start(high / step) + ORDER - first);
    }

    private static int start(double x) {
        return Math.max(0, (int) x - 1);
    }

    double value(int node) {
        return step * (first + node);
    }

    /** First of the four nodes around a value, counted from those that are held. */
    int node(double value) {
        return start(value / step) - first;
    }

    /** Lagrange's weights of the four nodes. */
    void weights(double value, double[] w) {
        double u = value / step - start(value / step);
        w[0] = -(u - 1) * (u - 2) * (u - 3) / 6;
        w[1] = u * (u - 2) * (u - 3) / 2;
        w[2] = -u * (u - 1) * (u - 3) / 2;
        w[3] = u * (u - 1) * (u - 2) / 6;
    }
}
