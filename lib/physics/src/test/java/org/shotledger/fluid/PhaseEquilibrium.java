package org.shotledger.fluid;

/**
 * Liquid and vapour in equilibrium at one temperature, from equal pressure and equal Gibbs energy of the equation of
 * state (the Maxwell construction).
 *
 * <p>The slow reference beside the fast {@link SaturationCurve}: solved at run time, in double precision. Newton's
 * method in both densities on the reduced pressure and potential, after R. Akasaka, "A reliable and useful method to determine
 * the saturation state from Helmholtz energy equations of state", J. Thermal Sci. Technol. 3 (2008) 442-451. Starting
 * densities: ESDU 91022 correlations below 303 K, above it the equation's own limiting shape at its critical point.
 */
final class PhaseEquilibrium {

    private static final int MAX_STEPS = 60;
    private static final double TOLERANCE = 1e-14;

    private final HelmholtzPoint liquid = new HelmholtzPoint();
    private final HelmholtzPoint vapour = new HelmholtzPoint();

    /**
     * Solves for both phases.
     *
     * @param temperature temperature, K, 182.33 to {@link NitrousOxide#CRITICAL_TEMPERATURE} (exclusive)
     * @return this solver, holding both phases
     * @throws IllegalArgumentException outside that range
     */
    PhaseEquilibrium solve(double temperature) {
        FluidRange.saturationTemperature(temperature);
        start(temperature);
        double last = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MAX_STEPS; i++) {
            double change = step();
            // near the critical point rounding sets the floor: stop when Newton no longer gains
            if (change < TOLERANCE || (i > 6 && change >= last)) {
                break;
            }
            last = change;
        }
        return this;
    }

    private void start(double temperature) {
        liquid.temperature(temperature);
        vapour.temperature(temperature);
        if (temperature < 303) {
            double t = 1 - temperature / 309.57;
            double u = 309.57 / temperature - 1;
            double c = Math.cbrt(t);
            double w = Math.cbrt(u);
            liquid.density(452 * Math.exp(c * (1.72328 + c * (-0.8395 + c * (0.5106 - 0.10412 * c)))));
            vapour.density(452
                    * Math.exp(w * (-1.009 + w * (-6.28792 + w * (7.50332 + w * (-7.90463 + 0.629427 * w))))));
        } else {
            double theta = Math.sqrt(1 - temperature / NitrousOxide.CRITICAL_TEMPERATURE);
            double half = 6.6 * theta / (1 + 7 * theta);
            double mean = 1 + 1.2 * theta * theta;
            liquid.density(NitrousOxide.CRITICAL_DENSITY * (mean + half));
            vapour.density(NitrousOxide.CRITICAL_DENSITY * (mean - half));
        }
    }

    // one Newton step in both densities; returns the larger relative change
    private double step() {
        double rt = HelmholtzPoint.GAS_CONSTANT * liquid.temperature();
        double rhoL = liquid.density();
        double rhoV = vapour.density();
        double pL = liquid.pressureByDensity() / rt;
        double pV = vapour.pressureByDensity() / rt;
        double dp = (vapour.pressure() - liquid.pressure()) / rt;
        double dg = potential(vapour) - potential(liquid);
        // dg = (dp/drho)/(rho RT) drho along an isotherm, so the 2x2 system solves by hand
        double stepL = (dp - rhoV * dg) / (pL * (1 - rhoV / rhoL));
        double stepV = (dp - rhoL * dg) / (pV * (rhoL / rhoV - 1));
        double limit = 0.5 * Math.min(1, Math.min(rhoL / Math.abs(stepL), rhoV / Math.abs(stepV)));
        double factor = limit < 0.5 ? limit : 1;
        liquid.density(rhoL + factor * stepL);
        vapour.density(rhoV + factor * stepV);
        return Math.max(Math.abs(stepL) / rhoL, Math.abs(stepV) / rhoV);
    }

    // Gibbs energy without its purely temperature-dependent part, over RT; pressure/(rho RT) is 1 + delta alphar_d
    private static double potential(HelmholtzPoint point) {
        return point.gibbsEnergy() / (HelmholtzPoint.GAS_CONSTANT * point.temperature());
    }

    /**
     * The liquid phase found.
     *
     * @return the point at the saturated liquid; it belongs to this solver
     */
    HelmholtzPoint liquid() {
        return liquid;
    }

    /**
     * The vapour phase found.
     *
     * @return the point at the saturated vapour; it belongs to this solver
     */
    HelmholtzPoint vapour() {
        return vapour;
    }

    /**
     * The equilibrium pressure, read from the vapour, where it is least sensitive to the density.
     *
     * @return absolute pressure, Pa
     */
    double pressure() {
        return vapour.pressure();
    }
}
