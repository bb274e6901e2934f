package org.shotledger.flow;

/**
 * Ideal gas with constant heat capacities through a convergent hole.
 *
 * <p>Source: NACA Report 1135 (1953), equations 80 and 95 (isentropic flow, choking). Range: gas well away from saturation
 * and below about 0.2 of the critical pressure. Known error: for nitrous oxide vapour at bottle pressure it misses the
 * real-gas density and the condensation, 10 to 40 %; use {@link HomogeneousEquilibrium} there.
 */
public final class IsentropicGas {
    private IsentropicGas() {}

    /**
     * Ratio of throat to stagnation pressure at choking, NACA 1135 eq. 44 at Mach 1.
     *
     * @param gamma ratio of heat capacities, above 1
     * @return critical pressure ratio
     */
    public static double criticalRatio(double gamma) {
        return Math.pow(2 / (gamma + 1), gamma / (gamma - 1));
    }

    /**
     * Mass flux from stagnation values.
     *
     * @param pressure stagnation pressure, Pa
     * @param density stagnation density, kg/m3
     * @param gamma ratio of heat capacities, above 1
     * @param downstreamPressure pressure behind the hole, Pa
     * @return ideal mass flux, kg/(m2 s), choked where it must be
     */
    public static double massFlux(double pressure, double density, double gamma, double downstreamPressure) {
        Checks.behind("Isentropic gas flow", downstreamPressure);
        Checks.positive("Isentropic gas flow", "stagnation pressure", pressure, "Pa");
        Checks.positive("Isentropic gas flow", "stagnation density", density, "kg/m3");
        Checks.within("Isentropic gas flow", "ratio of heat capacities", gamma, 1.0001, 3, "");
        if (downstreamPressure >= pressure) {
            return 0;
        }
        double ratio = Math.max(downstreamPressure / pressure, criticalRatio(gamma));
        double rise = 2 * gamma / (gamma - 1) * pressure / density * (1 - Math.pow(ratio, (gamma - 1) / gamma));
        return density * Math.pow(ratio, 1 / gamma) * Math.sqrt(rise);
    }
}
