package org.shotledger.flow;

import java.util.function.DoubleUnaryOperator;

/**
 * Bracketed root of a function without allocation.
 *
 * <p>Source: R. P. Brent, Algorithms for Minimization Without Derivatives (1973), chapter 4 is the pattern; the step used is
 * the bisection-safeguarded false position of Anderson and Bjorck, BIT 13 (1973) 253.
 */
final class Roots {
    private static final int MAX_STEPS = 200;

    private Roots() {}

    /**
     * Root between two abscissae where the function has opposite signs (or is zero).
     *
     * @param function continuous function
     * @param low one end
     * @param high other end
     * @param tolerance width of the final bracket, absolute
     * @return abscissa
     */
    static double find(DoubleUnaryOperator function, double low, double high, double tolerance) {
        return find(function, low, function.applyAsDouble(low), high, function.applyAsDouble(high), tolerance);
    }

    static double find(DoubleUnaryOperator function, double a, double fa, double b, double fb, double tolerance) {
        if (fa == 0 || fb == 0) {
            return fa == 0 ? a : b;
        }
        if (!(fa * fb < 0)) {
            throw new IllegalStateException(
                    "No sign change between " + a + " (" + fa + ") and " + b + " (" + fb + ").");
        }
        double x0 = a;
        double f0 = fa;
        double x1 = b;
        double f1 = fb;
        for (int i = 0; i < MAX_STEPS; i++) {
            double width = Math.abs(x1 - x0);
            double x = i % 8 == 7 ? 0.5 * (x0 + x1) : x1 - f1 * (x1 - x0) / (f1 - f0);
            if (width <= tolerance || x == x0 || x == x1) {
                return Math.abs(f0) < Math.abs(f1) ? x0 : x1;
            }
            double f = function.applyAsDouble(x);
            if (f == 0 || Math.abs(x - x1) <= 0.25 * tolerance) {
                return x;
            }
            if (f > 0 != f1 > 0) {
                x0 = x1;
                f0 = f1;
            } else {
                double shrink = 1 - f / f1;
                f0 *= shrink > 0 ? shrink : 0.5;
            }
            x1 = x;
            f1 = f;
        }
        return x1;
    }
}
