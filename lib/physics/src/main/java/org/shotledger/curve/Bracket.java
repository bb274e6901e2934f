package org.shotledger.curve;

import java.util.function.DoubleUnaryOperator;

/** Roots inside a bracket, for functions that are cheap enough to be called some ten times in an inner loop. */
public final class Bracket {
    private static final int MOST_STEPS = 200;

    private Bracket() {}

    /**
     * Finds where a function changes its sign, by inverse quadratic interpolation where that is safe and bisection where not
     * (T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145), so that jumps do no harm.
     *
     * @param f a function with values of different sign at both ends
     * @param low one end
     * @param high the other end, above the first
     * @param tolerance distance from the sign change that is good enough, above zero
     * @return a place within the tolerance of the sign change
     * @throws IllegalArgumentException when both ends have the same sign
     */
    public static double root(DoubleUnaryOperator f, double low, double high, double tolerance) {
        double a = high;
        double b = low;
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        if (!(Math.signum(fa) * Math.signum(fb) <= 0)) {
            throw new IllegalArgumentException("The function has no sign change between " + low + " (value " + fb
                    + ") and " + high + " (value " + fa + ").");
        }
        if (fa == 0 || fb == 0) {
            return fa == 0 ? a : b;
        }
        double t = 0.5;
        for (int i = 0; i < MOST_STEPS; i++) {
            double x = a + t * (b - a);
            double fx = f.applyAsDouble(x);
            double c;
            double fc;
            if (fx > 0 == fa > 0) {
                c = a;
                fc = fa;
            } else {
                c = b;
                fc = fb;
                b = a;
                fb = fa;
            }
            a = x;
            fa = fx;
            double least = 0.5 * tolerance / Math.abs(b - a);
            if (fa == 0 || least > 0.5) {
                break;
            }
            t = Math.min(1 - least, Math.max(least, place(a, fa, b, fb, c, fc)));
        }
        return Math.abs(fa) < Math.abs(fb) ? a : b;
    }

    /** Where to look next between a (0) and b (1). */
    private static double place(double a, double fa, double b, double fb, double c, double fc) {
        double xi = (a - b) / (c - b);
        double phi = (fa - fb) / (fc - fb);
        boolean safe = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
        return safe ? fa / (fb - fa) * (fc / (fb - fc)) + (c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb)) : 0.5;
    }
}
