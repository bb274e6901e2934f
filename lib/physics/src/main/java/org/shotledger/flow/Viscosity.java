package org.shotledger.flow;

/**
 * Viscosity along the saturation line, good enough for friction at any state near it.
 *
 * <p>Source: ESDU 91022 (1991) as quoted in open codes; -90 to 36 degC, clamped at the ends.
 */
final class Viscosity {
    private static final double CRITICAL = 309.57;
    private static final double SHIFT = 5.24;

    private Viscosity() {}

    static double liquid(double temperature) {
        double t = Math.min(Math.max(temperature, 182.33), 309);
        double theta = (CRITICAL - SHIFT) / (t - SHIFT) - 1;
        double root = Math.cbrt(theta);
        return 0.0293423e-3 * Math.exp(1.6089 * root + 2.0439 * root * theta);
    }

    static double vapour(double temperature) {
        double t = Math.min(Math.max(temperature, 182.33), 309);
        double u = CRITICAL / t - 1;
        double root = Math.cbrt(u);
        return 1e-6 * Math.exp(3.3281 - 1.18237 * root - 0.055155 * root * u);
    }
}
