package org.shotledger.fluid;

/** Density from temperature and pressure within a bracket on which pressure rises with density. */
final class DensitySolver {

    private static final int MAX_STEPS = 200;
    private static final double TOLERANCE = 1e-9;
    // pressure is a difference of terms of the size of rho R T: less than this times that is rounding
    private static final double ROUNDING = 5e-16;
    // bulk modulus of the liquid grows by about this much per unit of pressure (Murnaghan): only a start value
    private static final double STIFFENING = 9;

    private DensitySolver() {}

    /**
     * Liquid denser than saturated.
     *
     * @param point the equation with its temperature set, below critical; left at the answer
     * @param pressure pressure wanted, Pa, not below the vapour pressure
     * @param saturated density of the saturated liquid, kg/m3
     */
    static void liquid(HelmholtzPoint point, double pressure, double saturated) {
        point.density(saturated);
        double over = pressure - point.pressure();
        double modulus = saturated * point.pressureByDensity();
        double start = saturated * power(1 + STIFFENING * over / modulus);
        solve(point, pressure, saturated, NitrousOxide.MAX_DENSITY, start);
    }

    // x^(1/8), near enough to 1/9
    private static double power(double x) {
        return Math.sqrt(Math.sqrt(Math.sqrt(Math.max(x, 1))));
    }

    /**
     * Gas below its saturation pressure.
     *
     * @param point the equation with its temperature set; left at the answer
     * @param pressure pressure wanted, Pa
     * @param high density at or above the answer, still on the gas branch, kg/m3
     */
    static void gas(HelmholtzPoint point, double pressure, double high) {
        solve(point, pressure, 0, high, pressure / (HelmholtzPoint.GAS_CONSTANT * point.temperature()));
    }

    /**
     * Fluid at or above the critical temperature.
     *
     * @param point the equation with its temperature set; left at the answer
     * @param pressure pressure wanted, Pa
     */
    static void supercritical(HelmholtzPoint point, double pressure) {
        double middle = NitrousOxide.CRITICAL_DENSITY;
        point.density(middle);
        if (point.pressure() > pressure) {
            gas(point, pressure, middle);
        } else {
            solve(point, pressure, middle, NitrousOxide.MAX_DENSITY, 1.8 * middle);
        }
    }

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
            boolean newton = next >= lo && next <= hi;
            if (!newton) {
                next = 0.5 * (lo + hi);
            }
            double change = Math.abs(next - rho);
            rho = next;
            // after a Newton step this small the rest is its square; after halving, the bracket itself must be small
            if (change <= (newton ? TOLERANCE : 1e-15) * rho) {
                point.density(rho);
                return;
            }
        }
        throw new IllegalStateException("No density of nitrous oxide found for " + point.temperature() + " K and "
                + pressure + " Pa between " + low + " and " + high + " kg/m3.");
    }
}
