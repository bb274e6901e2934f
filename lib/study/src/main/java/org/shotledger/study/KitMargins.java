package org.shotledger.study;

import java.util.Arrays;

/**
 * The closest of the limits that the fuel settings of a row answer for, pump, solenoid, passage and cell, at a row of plenum
 * pressures and in a straight line between them: pump curves and orifices bend little over one step. With one of the lowest and
 * the highest plenum pressure of a combination the circuit works hardest, whichever way its regulator is referenced.
 */
final class KitMargins {
    static final int NODES = 24;

    private final Scale plenum;
    private final double[][] margins;
    private final int[][] keys;
    private final boolean[][] limited;
    /** Smallest margin by node and stretch. */
    private final double[][] lowest;

    /**
     * Takes the margins over.
     *
     * @param plenum the plenum pressures of the first and the last node, Pa absolute
     * @param margins smallest margin by node and setting
     * @param keys number of that limit
     * @param limited whether the pump cannot hold the regulated pressure
     */
    KitMargins(Scale plenum, double[][] margins, int[][] keys, boolean[][] limited) {
        this.plenum = plenum;
        this.margins = margins;
        this.keys = keys;
        this.limited = limited;
        this.lowest = new double[NODES][(margins[0].length + Stretch.LONGEST - 1) / Stretch.LONGEST];
        for (int node = 0; node < NODES; node++) {
            Arrays.fill(lowest[node], Double.POSITIVE_INFINITY);
            for (int i = 0; i < margins[node].length; i++) {
                int stretch = i / Stretch.LONGEST;
                lowest[node][stretch] = Math.min(lowest[node][stretch], margins[node][i]);
            }
        }
    }

    /** The plenum pressure of a node. */
    static double pressure(Scale plenum, int node) {
        return plenum.low() + (plenum.high() - plenum.low()) * node / (NODES - 1);
    }

    /** The plenum pressure of a node of these margins. */
    double pressure(int node) {
        return pressure(plenum, node);
    }

    /** Where a pressure lies, in steps from the first node. */
    private double steps(double pressure) {
        double steps = 0.5 * (plenum.to(pressure) + 1) * (NODES - 1);
        return Math.max(0, Math.min(NODES - 1, steps));
    }

    private static int below(double steps) {
        return Math.min(NODES - 2, (int) steps);
    }

    /** Margin of one setting. */
    double at(int setting, double pressure) {
        double steps = steps(pressure);
        int node = below(steps);
        double beyond = steps - node;
        return (1 - beyond) * margins[node][setting] + beyond * margins[node + 1][setting];
    }

    /** Lowers margins of a stretch to those at one plenum pressure. */
    void lower(double[] least, Stretch at, double pressure) {
        double steps = steps(pressure);
        int node = below(steps);
        double beyond = steps - node;
        double[] before = margins[node];
        double[] after = margins[node + 1];
        for (int j = 0; j < at.n; j++) {
            int setting = at.from + j;
            least[j] = Math.min(least[j], (1 - beyond) * before[setting] + beyond * after[setting]);
        }
    }

    /** The same with a plenum pressure for each setting. */
    void lower(double[] least, Stretch at, double[] pressures) {
        for (int j = 0; j < at.n; j++) {
            least[j] = Math.min(least[j], at(at.from + j, pressures[j]));
        }
    }

    /** Number of the limit that is closest at one of two pressures. */
    int key(int setting, double low, double high) {
        double pressure = at(setting, low) < at(setting, high) ? low : high;
        return keys[nearest(pressure)][setting];
    }

    /** Whether the pump cannot hold the regulated pressure at one of two plenum pressures. */
    boolean limited(int setting, double low, double high) {
        return limited[nearest(low)][setting] || limited[nearest(high)][setting];
    }

    private int nearest(double pressure) {
        return (int) Math.round(steps(pressure));
    }

    /** What the margins of a stretch can be at least, between two plenum pressures. */
    double lowest(Stretch at, double low, double high) {
        int from = below(steps(low));
        int to = below(steps(high)) + 1;
        double bound = Double.POSITIVE_INFINITY;
        for (int node = from; node <= to; node++) {
            bound = Math.min(bound, lowest[node][at.from / Stretch.LONGEST]);
        }
        return bound;
    }

    /** Whether the pump cannot hold the pressure with any setting of a stretch, at any pressure. */
    boolean anyLimited(Stretch at) {
        for (boolean[] node : limited) {
            for (int j = 0; j < at.n; j++) {
                if (node[at.from + j]) {
                    return true;
                }
            }
        }
        return false;
    }
}
