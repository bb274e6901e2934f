package org.shotledger.supply;

import org.shotledger.units.Require;

/** Power of moving a liquid against a pressure. */
public final class HydraulicPower {
    private HydraulicPower() {}

    /**
     * Power put into or lost by the liquid, {@code P = V dp}.
     *
     * @param flow m3/s
     * @param rise Pa
     * @return W
     */
    public static double of(double flow, double rise) {
        return Require.notNegative("flow", flow, "m3/s") * rise;
    }

    /**
     * Electric current that a pump needs.
     *
     * @param flow m3/s
     * @param rise Pa
     * @param efficiency of pump and motor together, 0.05 to 1
     * @param voltage V
     * @return A
     */
    public static double current(double flow, double rise, double efficiency, double voltage) {
        Require.within("efficiency of a pump", efficiency, 0.05, 1, "");
        return of(flow, rise) / efficiency / Require.positive("voltage", voltage, "V");
    }

    /**
     * Affinity of pumps: head goes with the square of the speed, flow with the speed and power with its cube.
     *
     * @param value at the first speed
     * @param speedRatio second over first speed
     * @param exponent 1 for flow, 2 for head, 3 for power
     * @return the value at the second speed
     */
    public static double scaled(double value, double speedRatio, int exponent) {
        return value * Math.pow(Require.positive("speed ratio", speedRatio, ""), exponent);
    }
}
