package org.shotledger.fluid;

/** Density from temperature and pressure within a bracket on which pressure rises with density. */
final class DensitySolver {

    private static final int MAX_STEPS = 200;
    private static final double TOLERANCE = 1e-13;
    // pressure is a difference of terms of the size of rho R T: less than this times that is rounding
    private static final double ROUNDING = 5e-16;

    private DensitySolver() {}

    /**
     * Newton's method kept inside a shrinking bracket; leaves the point at the answer.
     *
     * @param point the equation with its temperature set
     * @param pressure pressure wanted, Pa
     * @param low density with a pressure not above it, kg/m3
     * @param high density with a pressure not below it, kg/m3
     * @param start first guess, kg/m3
     */
    static void solve(HelmholtzPoint point, double pressure, double low, double high, double start) {
        double lo = low;
        double hi = high;
        double rho = Math.min(Math.max(start, lo), hi);
        double rt = HelmholtzPoint.GAS_CONSTANT * point.temperature();
        for (int i = 0; i < MAX_STEPS; i++) {
            point.density(rho);
            double miss = point.pressure() - pressure;
            if (Math.abs(miss) <= ROUNDING * rho * rt) {
                return;
            }
            if (miss > 0) {
                hi = rho;
            } else {
                lo = rho;
            }
            double next = rho - miss / point.pressureByDensity();
            if (!(next > lo && next < hi)) {
                next = 0.5 * (lo + hi);
            }
            double change = Math.abs(next - rho);
            rho = next;
            if (change <= TOLERANCE * rho) {
                point.density(rho);
                return;
            }
        }
        throw new IllegalStateException("No density of nitrous oxide found for " + point.temperature() + " K and "
                + pressure + " Pa between " + low + " and " + high + " kg/m3.");
    }
}
