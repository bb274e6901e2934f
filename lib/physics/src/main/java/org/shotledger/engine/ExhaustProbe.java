package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * Exhaust temperature as a probe before the turbine reads it: the mean temperature of the gas that leaves the cylinder
 * ({@link Cycle#exhaustTemperature}), less what port and manifold take,
 * {@code T = T_wall + factor (T_cylinder - T_wall)}. It follows spark, mixture and nitrous oxide through the cycle.
 *
 * @param factor share of the excess over the wall that is left at the probe, 0.4 to 1.3
 * @param wallTemperature of port and manifold, K, 300 to 1000
 */
public record ExhaustProbe(double factor, double wallTemperature) {
    /** Port walls in coolant: our choice; the calibration takes up most of its error. */
    public static final double PORT_WALL = 400;
    /**
     * Before any probe was read: 0.9 of the excess is left. Our choice: ports and manifolds of engines under full load lose
     * some 50 to 100 K (Heywood, section 6.5, from memory).
     */
    public static final ExhaustProbe NOT_MEASURED = new ExhaustProbe(0.9, PORT_WALL);

    public ExhaustProbe {
        Require.within("share of the exhaust heat left at the probe", factor, 0.4, 1.3, "");
        Require.within("temperature of the exhaust port's wall", wallTemperature, 300, 1000, "K");
    }

    /**
     * Finds the factor on the base pull.
     *
     * @param measured temperature at the probe, K
     * @param cylinder mean temperature of the gas that leaves the cylinder in the same point, K
     * @return the calibrated probe
     * @throws IllegalArgumentException when the factor would not lie between 0.4 and 1.3
     */
    public static ExhaustProbe calibrate(double measured, double cylinder) {
        Require.within("exhaust temperature of the base pull", measured, 600, 1500, "K");
        Require.positive("exhaust temperature of the cycle above the port wall", cylinder - PORT_WALL, "K");
        return new ExhaustProbe((measured - PORT_WALL) / (cylinder - PORT_WALL), PORT_WALL);
    }

    /**
     * Temperature at the probe.
     *
     * @param cylinder mean temperature of the gas that leaves the cylinder, K
     * @return K
     */
    public double at(double cylinder) {
        return wallTemperature + factor * (cylinder - wallTemperature);
    }
}
