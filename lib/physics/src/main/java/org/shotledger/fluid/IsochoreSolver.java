package org.shotledger.fluid;

/** Temperature from density and internal energy, which rises with temperature at constant volume in every phase. */
final class IsochoreSolver {

    private static final int MAX_STEPS = 200;
    // most vessels hold a two-phase charge near room temperature
    private static final double START = 280;

    private IsochoreSolver() {}

    /**
     * Searches from both sides through the kink where the dome is left.
     *
     * @param point scratch
     * @param line scratch
     * @param search scratch
     * @param density density, kg/m3
     * @param energy internal energy, J/kg
     * @return temperature, K
     */
    static double temperature(
            HelmholtzPoint point, SaturationPoint line, TemperatureSearch search, double density, double energy) {
        search.between(FluidRange.MIN_TEMPERATURE, false, FluidRange.MAX_TEMPERATURE, false);
        double volume = 1 / density;
        double rounding = 1e-12 * (Math.abs(energy) + 1e5);
        double t = START;
        for (int i = 0; i < MAX_STEPS; i++) {
            boolean mixed = inDome(line, t, density);
            double found = mixed
                    ? line.energyAtVolume(volume)
                    : point.temperature(t).density(density).internalEnergy();
            double slope = mixed ? line.heatCapacityAtVolume(volume) : point.cv();
            double next = search.next(t, found - energy, slope, rounding);
            if (search.beyond()) {
                throw FluidRange.unreachable("internal energy", energy, "J/kg", density + " kg/m3", found, t);
            }
            if (next == t) {
                return t;
            }
            t = next;
        }
        throw new IllegalStateException("No temperature of nitrous oxide found at " + density
                + " kg/m3 with internal energy " + energy + " J/kg.");
    }

    private static boolean inDome(SaturationPoint line, double t, double density) {
        if (t >= NitrousOxide.CRITICAL_TEMPERATURE) {
            return false;
        }
        line.atTemperature(t);
        return density <= line.liquidDensity() && density >= line.vapourDensity();
    }
}
