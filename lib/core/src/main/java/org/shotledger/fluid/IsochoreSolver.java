package org.shotledger.fluid;

/** Temperature from density and internal energy, which rises with temperature at constant volume in every phase. */
final class IsochoreSolver {

    private static final int MAX_STEPS = 200;
    // most vessels hold a two-phase charge near room temperature
    private static final double START = 280;

    private IsochoreSolver() {}

    /**
     * Newton's method in temperature inside a shrinking bracket, through the kink where the dome is left.
     *
     * @param point scratch
     * @param line scratch
     * @param density density, kg/m3
     * @param energy internal energy, J/kg
     * @return temperature, K
     */
    static double temperature(HelmholtzPoint point, SaturationPoint line, double density, double energy) {
        double lo = FluidRange.MIN_TEMPERATURE;
        double hi = FluidRange.MAX_TEMPERATURE;
        boolean loSeen = false;
        boolean hiSeen = false;
        double t = START;
        for (int i = 0; i < MAX_STEPS; i++) {
            boolean mixed = inDome(line, t, density);
            double found = mixed
                    ? line.energyAtVolume(1 / density)
                    : point.temperature(t).density(density).internalEnergy();
            double miss = found - energy;
            if (miss > 0) {
                if (!loSeen && t <= lo) {
                    throw FluidRange.unreachable("internal energy", energy, "J/kg", density + " kg/m3", found, t);
                }
                hi = t;
                hiSeen = true;
            } else {
                if (!hiSeen && t >= hi) {
                    throw FluidRange.unreachable("internal energy", energy, "J/kg", density + " kg/m3", found, t);
                }
                lo = t;
                loSeen = true;
            }
            double next = t - miss / (mixed ? line.heatCapacityAtVolume(1 / density) : point.cv());
            if (!(next >= lo && next <= hi)) {
                next = next > hi && !hiSeen ? hi : next < lo && !loSeen ? lo : 0.5 * (lo + hi);
            }
            if (Math.abs(next - t) <= 1e-14 * t) {
                return next;
            }
            t = next;
        }
        throw new IllegalStateException("No temperature of nitrous oxide found at " + density
                + " kg/m3 with internal energy " + energy + " J/kg between " + lo + " and " + hi + " K.");
    }

    private static boolean inDome(SaturationPoint line, double t, double density) {
        if (t >= NitrousOxide.CRITICAL_TEMPERATURE) {
            return false;
        }
        line.atTemperature(t);
        return density <= line.liquidDensity() && density >= line.vapourDensity();
    }
}
