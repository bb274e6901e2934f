package org.shotledger.study;

/** Short polynomials over arrays, written so that the compiler can use vector instructions. */
final class Polynomials {
    /** A coefficient this much smaller than what its output means is left out; each runs over -1 to 1. */
    private static final double NOTHING = 1e-5;

    private Polynomials() {}

    /** The degree that matters, for an output of the given size. */
    static int degree(double[] powers, double size) {
        int degree = powers.length - 1;
        while (degree > 1 && Math.abs(powers[degree]) < NOTHING * size) {
            degree--;
        }
        return degree;
    }

    static double at(double[] powers, double x) {
        double sum = 0;
        for (int l = powers.length - 1; l >= 0; l--) {
            sum = sum * x + powers[l];
        }
        return sum;
    }

    /** Values at every place. */
    static void values(double[] p, int degree, double[] x, double[] to, int n) {
        double a = p[0];
        double b = p[1];
        double c = degree > 1 ? p[2] : 0;
        if (degree == 1) {
            for (int j = 0; j < n; j++) {
                to[j] = a + x[j] * b;
            }
        } else if (degree == 2) {
            for (int j = 0; j < n; j++) {
                to[j] = a + x[j] * (b + x[j] * c);
            }
        } else {
            double d = p[3];
            double e = degree > 3 ? p[4] : 0;
            double f = degree > 4 ? p[5] : 0;
            for (int j = 0; j < n; j++) {
                to[j] = a + x[j] * (b + x[j] * (c + x[j] * (d + x[j] * (e + x[j] * f))));
            }
        }
    }

    /** The greatest of some values. */
    static double most(double[] values, int n) {
        double most = values[0];
        for (int j = 1; j < n; j++) {
            most = values[j] > most ? values[j] : most;
        }
        return most;
    }

    static void highest(double[] most, double[] values, int n) {
        for (int j = 0; j < n; j++) {
            most[j] = Math.max(most[j], values[j]);
        }
    }

    static void lowest(double[] least, double[] values, int n) {
        for (int j = 0; j < n; j++) {
            least[j] = Math.min(least[j], values[j]);
        }
    }
}
