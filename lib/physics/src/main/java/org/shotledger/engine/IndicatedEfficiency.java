package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * Share of the released heat that becomes gross indicated work:
 * {@code eta = fraction (1 - r^(1 - gamma)) (1 - spark (retard)^2)}.
 *
 * @param fraction share of the constant-volume cycle reached; calibrated on the base pull, 0.4 to 1; 0.75 to 0.85 is
 *     common practice
 * @param gamma effective ratio of heat capacities of the cycle, 1.15 to 1.4; 1.27 to 1.30 fits fuel-air cycles
 * @param sparkLoss relative loss per square degree of retard from best torque, 0 to 0.002; 0.0003 to 0.0004 gives the
 *     usual spark-sweep parabola (3 to 4 % at 10 degrees), common practice
 */
public record IndicatedEfficiency(double fraction, double gamma, double sparkLoss) {
    /** A starting point before calibration: 0.80 of the cycle with gamma 1.28 and 0.00035 per square degree. */
    public static final IndicatedEfficiency TYPICAL = new IndicatedEfficiency(0.80, 1.28, 3.5e-4);

    /** Checks the ranges. */
    public IndicatedEfficiency {
        Require.within("share of the constant-volume cycle", fraction, 0.4, 1, "");
        Require.within("effective gamma", gamma, 1.15, 1.4, "");
        Require.within("spark loss", sparkLoss, 0, 2e-3, "1/deg2");
    }

    /**
     * The efficiency.
     *
     * @param compressionRatio geometric, 5 to 20
     * @param retard spark retard from best torque, deg, 0 to 40
     * @return gross indicated work over released heat
     */
    public double at(double compressionRatio, double retard) {
        Require.within("spark retard from best torque", retard, 0, 40, "deg");
        return fraction * (1 - Math.pow(compressionRatio, 1 - gamma)) * (1 - sparkLoss * retard * retard);
    }

    /**
     * The same with another share of the cycle.
     *
     * @param newFraction 0.4 to 1
     * @return the calibrated efficiency
     */
    public IndicatedEfficiency withFraction(double newFraction) {
        return new IndicatedEfficiency(newFraction, gamma, sparkLoss);
    }
}
