package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * Burned mass fraction {@code x = 1 - exp(-a ((theta - start)/duration)^(m+1))}.
 *
 * @param start of burning, deg after top dead centre, -90 to 60
 * @param duration nominal, deg, 5 to 150; with a = 5 it holds 99.3 % of the burning
 * @param efficiencyFactor a, 2 to 10
 * @param formFactor m, 0.5 to 5
 */
public record Wiebe(double start, double duration, double efficiencyFactor, double formFactor) {
    /** Beyond this exponent the rest is below the rounding of a double. */
    private static final double COMPLETE = 37;

    public Wiebe {
        Require.within("start of burning", start, -90, 60, "deg");
        Require.within("duration of burning", duration, 5, 150, "deg");
        Require.within("efficiency factor of the burning", efficiencyFactor, 2, 10, "");
        Require.within("form factor of the burning", formFactor, 0.5, 5, "");
    }

    /**
     * The usual shape for spark ignition, a = 5 and m = 2 (Heywood, chapter 9).
     *
     * @param start deg after top dead centre
     * @param duration deg
     * @return the burning
     */
    public static Wiebe of(double start, double duration) {
        return new Wiebe(start, duration, 5, 2);
    }

    /**
     * Burned fraction.
     *
     * @param angle deg after top dead centre
     * @return 0 to 1
     */
    public double burned(double angle) {
        double share = (angle - start) / duration;
        if (share <= 0) {
            return 0;
        }
        double power = formFactor == 2 ? share * share * share : Math.pow(share, formFactor + 1);
        double exponent = efficiencyFactor * power;
        return exponent < COMPLETE ? 1 - Math.exp(-exponent) : 1;
    }

    /**
     * Angle at which a fraction is burned.
     *
     * @param fraction 0 to below 1
     * @return deg after top dead centre
     */
    public double angleOf(double fraction) {
        Require.within("burned fraction", fraction, 0, 1 - 1e-12, "");
        return start + duration * Math.pow(-Math.log1p(-fraction) / efficiencyFactor, 1 / (formFactor + 1));
    }

    /**
     * The same burning begun at another angle.
     *
     * @param newStart deg after top dead centre
     * @return the moved burning
     */
    public Wiebe startingAt(double newStart) {
        return new Wiebe(newStart, duration, efficiencyFactor, formFactor);
    }

    /**
     * The same burning, faster or slower; with nitrous oxide it is faster by a factor to be calibrated.
     *
     * @param factor on the duration, 0.5 to 2
     * @return the changed burning
     */
    public Wiebe scaled(double factor) {
        Require.within("factor on the duration of burning", factor, 0.5, 2, "");
        return new Wiebe(start, duration * factor, efficiencyFactor, formFactor);
    }
}
