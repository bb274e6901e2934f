package org.shotledger.curve;

import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;

/** Roots and edges inside a bracket, without allocation for each call of the function. */
public final class Bracket {
    private static final int MOST_STEPS = 200;

    private Bracket() {}

    /**
     * Finds where a function changes its sign, by inverse quadratic interpolation where that is safe and bisection where not
     * (T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145), so that jumps do no harm.
     *
     * @param f a function with values of different sign at both ends
     * @param low one end
     * @param high the other end
     * @param tolerance distance from the sign change that is good enough, above zero
     * @return a place within the tolerance of the sign change
     * @throws IllegalArgumentException when both ends have the same sign
     */
    public static double root(DoubleUnaryOperator f, double low, double high, double tolerance) {
        return root(f, low, f.applyAsDouble(low), high, f.applyAsDouble(high), tolerance);
    }

    /**
     * The same where the function is known at both ends.
     *
     * @param f a function with values of different sign at both ends
     * @param low one end
     * @param atLow its value there
     * @param high the other end
     * @param atHigh its value there
     * @param tolerance distance from the sign change that is good enough, above zero
     * @return a place within the tolerance of the sign change
     * @throws IllegalArgumentException when both ends have the same sign
     */
    public static double root(
            DoubleUnaryOperator f, double low, double atLow, double high, double atHigh, double tolerance) {
        double a = high;
        double b = low;
        double fa = atHigh;
        double fb = atLow;
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

    /**
     * Where something stops to hold.
     *
     * @param inside the end at which it holds, or the last place found
     * @param outside the end at which it does not hold, or the last place found
     */
    public record Edge(double inside, double outside) {}

    /**
     * Halves the stretch between a place where something holds and one where it does not.
     *
     * @param holds what is asked
     * @param inside a place where it holds; not asked again
     * @param outside a place, above or below, where it does not hold; not asked again
     * @param tolerance distance of the two places that is near enough, above zero
     * @return the last places
     */
    public static Edge edge(DoublePredicate holds, double inside, double outside, double tolerance) {
        double in = inside;
        double out = outside;
        for (int i = 0; i < MOST_STEPS && Math.abs(out - in) > tolerance; i++) {
            double middle = (in + out) / 2;
            if (holds.test(middle)) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return new Edge(in, out);
    }

    /** Where to look next between a (0) and b (1). */
    private static double place(double a, double fa, double b, double fb, double c, double fc) {
        double xi = (a - b) / (c - b);
        double phi = (fa - fb) / (fc - fb);
        boolean safe = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
        return safe ? fa / (fb - fa) * (fc / (fb - fc)) + (c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb)) : 0.5;
    }
}
