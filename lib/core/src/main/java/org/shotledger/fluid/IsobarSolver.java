package org.shotledger.fluid;

/** Temperature from pressure and enthalpy or entropy in one phase; both rise with temperature at constant pressure. */
final class IsobarSolver {

    private static final int MAX_STEPS = 200;

    private IsobarSolver() {}

    /** Where the answer is known to lie. */
    enum Branch {
        LIQUID,
        GAS,
        ABOVE_CRITICAL_PRESSURE
    }

    /** What is given beside the pressure. */
    enum Given {
        ENTHALPY,
        ENTROPY;

        double of(HelmholtzPoint point) {
            return this == ENTHALPY ? point.enthalpy() : point.entropy();
        }

        double slope(HelmholtzPoint point) {
            return this == ENTHALPY ? point.cp() : point.cp() / point.temperature();
        }

        double start(double from, double difference, double cp) {
            return this == ENTHALPY ? from + difference / cp : from * Math.exp(difference / cp);
        }
    }

    /**
     * Newton's method in temperature inside a shrinking bracket; leaves the point at the answer.
     *
     * @param point scratch, left at the answer
     * @param pressure pressure, Pa
     * @param wanted enthalpy, J/kg, or entropy, J/(kg K)
     * @param given which of the two
     * @param branch where to search
     * @param boiling boiling temperature at the pressure, K; not used above the critical pressure
     * @param start first guess of the temperature, K
     */
    static void solve(
            HelmholtzPoint point,
            double pressure,
            double wanted,
            Given given,
            Branch branch,
            double boiling,
            double start) {
        double lo = branch == Branch.GAS ? boiling : FluidRange.MIN_TEMPERATURE;
        double hi = branch == Branch.LIQUID ? boiling : FluidRange.MAX_TEMPERATURE;
        double gasLimit = branch == Branch.GAS ? SaturationCurve.vapourDensity(boiling) : 0;
        boolean loSeen = branch == Branch.GAS;
        boolean hiSeen = branch == Branch.LIQUID;
        double t = Math.min(Math.max(start, lo), hi);
        double guess = Double.NaN;
        for (int i = 0; i < MAX_STEPS; i++) {
            point.temperature(t);
            density(point, pressure, branch, gasLimit, guess);
            double miss = given.of(point) - wanted;
            if (miss > 0) {
                if (!loSeen && t <= lo) {
                    throw outside(point, pressure, wanted, given);
                }
                hi = t;
                hiSeen = true;
            } else {
                if (!hiSeen && t >= hi) {
                    throw outside(point, pressure, wanted, given);
                }
                lo = t;
                loSeen = true;
            }
            double next = t - miss / given.slope(point);
            boolean newton = next >= lo && next <= hi;
            if (!newton) {
                next = next > hi && !hiSeen ? hi : next < lo && !loSeen ? lo : 0.5 * (lo + hi);
            }
            double step = next - t;
            if (Math.abs(step) <= 1e-14 * t) {
                return;
            }
            // along the isobar: a close first guess for the next density
            guess = point.density() - step * point.pressureByTemperature() / point.pressureByDensity();
            t = next;
            if (newton && Math.abs(step) <= 1e-8 * t && branch != Branch.ABOVE_CRITICAL_PRESSURE) {
                point.temperature(t);
                density(point, pressure, branch, gasLimit, guess);
                return;
            }
        }
        throw new IllegalStateException("No temperature of nitrous oxide found at " + pressure + " Pa with " + given
                + " " + wanted + " between " + lo + " and " + hi + " K.");
    }

    private static void density(HelmholtzPoint point, double pressure, Branch branch, double gasLimit, double guess) {
        double t = point.temperature();
        boolean first = Double.isNaN(guess);
        if (branch == Branch.GAS) {
            if (first) {
                DensitySolver.gas(point, pressure, gasLimit);
            } else {
                DensitySolver.solve(point, pressure, 0, gasLimit, guess);
            }
        } else if (t < NitrousOxide.CRITICAL_TEMPERATURE) {
            double low = SaturationCurve.liquidDensity(t);
            if (first) {
                DensitySolver.liquid(point, pressure, low);
            } else {
                DensitySolver.solve(point, pressure, low, NitrousOxide.MAX_DENSITY, guess);
            }
        } else if (first) {
            DensitySolver.supercritical(point, pressure);
        } else {
            DensitySolver.solve(point, pressure, 0, NitrousOxide.MAX_DENSITY, guess);
        }
    }

    private static IllegalArgumentException outside(HelmholtzPoint point, double pressure, double wanted, Given given) {
        String name = given == Given.ENTHALPY ? "enthalpy" : "entropy";
        String unit = given == Given.ENTHALPY ? "J/kg" : "J/(kg K)";
        double bound = given.of(point);
        return FluidRange.unreachable(name, wanted, unit, pressure + " Pa", bound, point.temperature());
    }
}
