package org.shotledger.plan;

import java.util.function.DoubleUnaryOperator;

/** Finds where a rising function meets a value, in few calls: false position with the Illinois rule (Dowell and Jarratt, BIT 11, 1971). */
final class Rising {
    private static final int MOST_CALLS = 40;

    private Rising() {}

    /**
     * The argument at which the function meets the value.
     *
     * @param f rising; NaN counts as too much
     * @param value the value wanted
     * @param low argument at which it is below the value
     * @param high largest argument
     * @param tolerance of the argument
     * @return the least argument found at which the value is met; {@code high} where it is met nowhere
     */
    static double meet(DoubleUnaryOperator f, double value, double low, double high, double tolerance) {
        return meet(f, value, low, f.applyAsDouble(low), high, f.applyAsDouble(high), tolerance);
    }

    /** The same where the function is known at both ends. */
    static double meet(
            DoubleUnaryOperator f,
            double value,
            double low,
            double atLow,
            double high,
            double atHigh,
            double tolerance) {
        double a = low;
        double b = high;
        double atA = atLow - value;
        double atB = atHigh - value;
        if (atA >= 0) {
            return a;
        }
        if (atB < 0) {
            return b;
        }
        double last = 0;
        for (int calls = 0; calls < MOST_CALLS && b - a > tolerance; calls++) {
            double guess = Double.isNaN(atB) ? (a + b) / 2 : b - atB * (b - a) / (atB - atA);
            double inside = Math.min(0.05 * (b - a), tolerance / 2);
            double next = Math.min(Math.max(guess, a + inside), b - inside);
            double at = f.applyAsDouble(next) - value;
            // an end that stays twice counts half
            if (at < 0) {
                a = next;
                atA = at;
                atB = last < 0 ? atB / 2 : atB;
            } else {
                b = next;
                atB = at;
                atA = last > 0 ? atA / 2 : atA;
            }
            last = at;
        }
        return b;
    }
}
