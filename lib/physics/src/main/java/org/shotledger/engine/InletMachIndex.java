package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * Taylor's inlet Mach index, {@code Z = (B/D)^2 S_p / (C a)}: volumetric efficiency falls once it exceeds 0.5 to 0.6
 * (C. F. Taylor, The Internal Combustion Engine in Theory and Practice, from memory).
 */
public final class InletMachIndex {
    /** Gas constant and ratio of heat capacities of air (ISO 2533). */
    private static final double AIR = 287.05;

    private static final double GAMMA = 1.4;

    private InletMachIndex() {}

    /**
     * The index.
     *
     * @param bore m
     * @param valveDiameter of all inlet valves of a cylinder as one circle, m
     * @param meanPistonSpeed m/s
     * @param flowCoefficient mean over the lift, 0.1 to 1
     * @param temperature of the air at the valve, K
     * @return Z
     */
    public static double of(
            double bore, double valveDiameter, double meanPistonSpeed, double flowCoefficient, double temperature) {
        Require.positive("inlet valve diameter", valveDiameter, "m");
        Require.within("inlet flow coefficient", flowCoefficient, 0.1, 1, "");
        double ratio = bore / valveDiameter;
        return ratio * ratio * meanPistonSpeed / (flowCoefficient * Math.sqrt(GAMMA * AIR * temperature));
    }

    /**
     * The valve diameter that keeps an index.
     *
     * @param index Z, above zero
     * @param bore m
     * @param meanPistonSpeed m/s
     * @param flowCoefficient mean over the lift, 0.1 to 1
     * @param temperature of the air at the valve, K
     * @return m
     */
    public static double valveDiameter(
            double index, double bore, double meanPistonSpeed, double flowCoefficient, double temperature) {
        Require.positive("inlet Mach index", index, "");
        return bore * Math.sqrt(of(bore, bore, meanPistonSpeed, flowCoefficient, temperature) / index);
    }
}
