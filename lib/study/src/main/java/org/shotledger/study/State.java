package org.shotledger.study;

import java.util.Arrays;

/**
 * One speed with boost held, or taken back, along a stretch of fuel settings: each output as a polynomial in the stretch's
 * coordinate, with what it can reach there at least and at most (the middle value and the sum of the other coefficients).
 */
final class State {
    final double[][] powers;
    final int[] degrees;
    /** Least and greatest value of each output along the stretch. */
    final double[] low;

    final double[] high;

    /** Which outputs have been written. */
    private final boolean[] known;

    private final Line mixture = new Line();
    private final Line lacking = new Line();
    private final int lackingOutput;

    /** A straight line from the stretch's coordinate to a polynomial's own, which is cut at -1 and 1. */
    private static final class Line {
        double middle;
        double slope;
        double first;
        double last;

        void set(double atMiddle, double perCoordinate) {
            boolean before = atMiddle + perCoordinate <= -1;
            boolean after = atMiddle - perCoordinate >= 1;
            middle = before ? -1 : after ? 1 : atMiddle;
            slope = before || after ? 0 : perCoordinate;
            first = slope > 0 ? (-1 - middle) / slope : Double.NEGATIVE_INFINITY;
            last = slope > 0 ? (1 - middle) / slope : Double.POSITIVE_INFINITY;
        }
    }

    State(int outputs) {
        powers = new double[outputs][TaperBranch.NODES];
        degrees = new int[outputs];
        low = new double[outputs];
        high = new double[outputs];
        known = new boolean[outputs];
        lackingOutput = outputs - 2;
    }

    /**
     * Lays the state over a stretch.
     *
     * @param offset own coordinate without fuel
     * @param slope the same per kg/s of fuel
     * @param less share of the slope that counts where a part of the fuel is missing
     */
    void lay(double offset, double slope, double less, Stretch at) {
        Arrays.fill(known, false);
        mixture.set(offset + slope * at.middle, slope * at.half);
        lacking.set(offset + less * slope * at.middle, less * slope * at.half);
    }

    boolean knows(int k) {
        return known[k];
    }

    /** Writes one output anew, from five or six powers of its own coordinate. */
    void put(int k, double[] own) {
        known[k] = true;
        Line line = k == lackingOutput ? lacking : mixture;
        double[] p = powers[k];
        double m = line.middle;
        double a = own[0];
        double b = own[1];
        double c = own[2];
        double d = own[3];
        double e = own[4];
        double f = own.length > 5 ? own[5] : 0;
        // Horner's scheme over and over, which moves the origin to the middle
        e += m * f;
        d += m * e;
        c += m * d;
        b += m * c;
        a += m * b;
        e += m * f;
        d += m * e;
        c += m * d;
        b += m * c;
        e += m * f;
        d += m * e;
        c += m * d;
        e += m * f;
        d += m * e;
        e += m * f;
        double s = line.slope;
        double s2 = s * s;
        p[0] = a;
        p[1] = s * b;
        p[2] = s2 * c;
        p[3] = s2 * s * d;
        p[4] = s2 * s2 * e;
        p[5] = s2 * s2 * s * f;
        double reach = Math.abs(p[1]) + Math.abs(p[2]) + Math.abs(p[3]) + Math.abs(p[4]) + Math.abs(p[5]);
        low[k] = a - reach;
        high[k] = a + reach;
        degrees[k] = Polynomials.degree(p, k >= Probe.MARGINS && k < lackingOutput ? 1 : Math.abs(a));
    }

    /** Writes an output that does not depend on the fuel. */
    void putConstant(int k, double value) {
        known[k] = true;
        Arrays.fill(powers[k], 0);
        powers[k][0] = value;
        degrees[k] = 1;
        low[k] = value;
        high[k] = value;
    }

    /** The coordinates at which an output is worked out. */
    double[] places(int k, Stretch at) {
        Line line = k == lackingOutput ? lacking : mixture;
        return at.within(line.first, line.last);
    }
}
