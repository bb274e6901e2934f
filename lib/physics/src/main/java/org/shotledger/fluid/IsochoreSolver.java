package org.shotledger.fluid;

/** Temperature from density and internal energy, which rises with temperature at constant volume in every phase. */
final class IsochoreSolver {

    private static final int MAX_STEPS = 200;
    /** Most vessels hold a two-phase charge near room temperature, K. */
    static final double START = 280;

    private IsochoreSolver() {}

    /**
     * Searches from both sides through the kink where the dome is left.
     *
     * @param point scratch
     * @param line scratch
     * @param search scratch
     * @param density density, kg/m3
     * @param energy internal energy, J/kg
     * @param start first guess, K
     * @return temperature, K; where the energy lies beyond the range (then {@code search.beyond()}) the end of the range
     */
    static double temperature(
            HelmholtzPoint point,
            SaturationPoint line,
            TemperatureSearch search,
            double density,
            double energy,
            double start) {
        search.between(FluidRange.MIN_TEMPERATURE, false, FluidRange.MAX_TEMPERATURE, false);
        double rounding = 1e-12 * (Math.abs(energy) + 1e5);
        double t = search.clamp(start);
        for (int i = 0; i < MAX_STEPS; i++) {
            boolean mixed = inDome(line, t, density);
            double found = energy(point, line, mixed, t, density);
            double slope = mixed ? line.heatCapacityAtVolume(1 / density) : point.cv();
            double next = search.next(t, found - energy, slope, rounding);
            if (next == t) {
                return t;
            }
            t = next;
        }
        throw new IllegalStateException("No temperature of nitrous oxide found at " + density
                + " kg/m3 with internal energy " + energy + " J/kg.");
    }

    /** Internal energy at a temperature and density, J/kg; leaves the scratch of the phase in that state. */
    static double energy(HelmholtzPoint point, SaturationPoint line, double t, double density) {
        return energy(point, line, inDome(line, t, density), t, density);
    }

    private static double energy(HelmholtzPoint point, SaturationPoint line, boolean mixed, double t, double density) {
        return mixed
                ? line.energyAtVolume(1 / density)
                : point.temperature(t).density(density).internalEnergy();
    }

    private static boolean inDome(SaturationPoint line, double t, double density) {
        if (t >= NitrousOxide.CRITICAL_TEMPERATURE) {
            return false;
        }
        line.atTemperature(t);
        return density <= line.liquidDensity() && density >= line.vapourDensity();
    }
}
