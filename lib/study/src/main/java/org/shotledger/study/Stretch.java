package org.shotledger.study;

/**
 * Neighbouring fuel settings of a row that are gone through together. Its coordinate runs from -1 at the least fuel flow to 1 at
 * the most; every polynomial is written anew in it, which tells what it can reach at all before any value is worked out.
 */
final class Stretch {
    static final int LONGEST = 128;

    /** The coordinate of each setting. */
    final double[] t = new double[LONGEST];
    /** Place of the first setting in its row. */
    int from;
    /** How many there are. */
    int n;
    /** Fuel flow in the middle, and from there to either end, kg/s at the reference pressure. */
    double middle;

    double half;

    private final double[] cut = new double[LONGEST];

    /** Lays the stretch over settings whose flows ascend. */
    void set(double[] flow, int first, int length) {
        from = first;
        n = length;
        double low = flow[first];
        double high = flow[first + length - 1];
        middle = 0.5 * (low + high);
        half = 0.5 * (high - low);
        double perHalf = half > 0 ? 1 / half : 0;
        for (int j = 0; j < length; j++) {
            t[j] = (flow[first + j] - middle) * perHalf;
        }
    }

    double low() {
        return middle - half;
    }

    double high() {
        return middle + half;
    }

    /** The coordinates, those outside of a range moved to its ends. */
    double[] within(double first, double last) {
        if (first <= -1 && last >= 1) {
            return t;
        }
        for (int j = 0; j < n; j++) {
            cut[j] = Math.max(first, Math.min(last, t[j]));
        }
        return cut;
    }
}
