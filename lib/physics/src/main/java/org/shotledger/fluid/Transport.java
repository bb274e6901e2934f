package org.shotledger.fluid;

/**
 * Viscosity, conductivity and surface tension along the saturation line, and the viscosity of the thin gas.
 *
 * <p>Saturation correlations: ESDU 91022, "Thermophysical properties of nitrous oxide" (1991), coefficients as
 * reproduced in the open literature; surface tension: A. Mulero, I. Cachadina, M. I. Parra, J. Phys. Chem. Ref. Data 41
 * (2012) 043105. Each holds along saturation only. A liquid somewhat above its vapour pressure may use the saturated
 * value at its temperature; a gas far below saturation uses {@link #thinGasViscosity}; nothing here covers the dense
 * fluid above the critical point.
 *
 * <p>How good: two single values of other origin disagree with the liquid viscosity, by -22 % at 183 K and +18 % at 279
 * K and the same density, so treat it as good to a quarter. A turbulent pressure drop moves with about its fifth root.
 */
public final class Transport {

    private static final double CRITICAL_TEMPERATURE = 309.57;
    private static final double CONDUCTIVITY_LIQUID_LIMIT = 283.15;
    private static final double CONDUCTIVITY_VAPOUR_LIMIT = 303.15;
    // Lennard-Jones parameters of nitrous oxide after Hirschfelder, Curtiss and Bird (from memory)
    private static final double DIAMETER = 3.828;
    private static final double WELL_DEPTH = 232.4;

    private Transport() {}

    /**
     * Viscosity of the saturated liquid, ESDU 91022.
     *
     * @param temperature temperature, K, 182.33 to 309.52
     * @return dynamic viscosity, Pa s
     * @throws IllegalArgumentException outside the range
     */
    public static double liquidViscosity(double temperature) {
        range("liquid viscosity", temperature, NitrousOxide.CRITICAL_TEMPERATURE);
        double theta = (CRITICAL_TEMPERATURE - 5.24) / (temperature - 5.24) - 1;
        double c = Math.cbrt(theta);
        return 0.0293423e-3 * Math.exp(1.6089 * c + 2.0439 * c * theta);
    }

    /**
     * Viscosity of the saturated vapour, ESDU 91022.
     *
     * @param temperature temperature, K, 182.33 to 309.52
     * @return dynamic viscosity, Pa s
     * @throws IllegalArgumentException outside the range
     */
    public static double vapourViscosity(double temperature) {
        range("vapour viscosity", temperature, NitrousOxide.CRITICAL_TEMPERATURE);
        double u = CRITICAL_TEMPERATURE / temperature - 1;
        double c = Math.cbrt(u);
        return 1e-6 * Math.exp(3.3281 - 1.18237 * c - 0.055155 * c * u);
    }

    /**
     * Conductivity of the saturated liquid, ESDU 91022.
     *
     * @param temperature temperature, K, 182.33 to 283.15
     * @return thermal conductivity, W/(m K)
     * @throws IllegalArgumentException outside the range
     */
    public static double liquidConductivity(double temperature) {
        range("liquid conductivity", temperature, CONDUCTIVITY_LIQUID_LIMIT);
        double t = 1 - temperature / CRITICAL_TEMPERATURE;
        double c = Math.cbrt(t);
        return 72.35e-3 * (1 + 1.5 * c - 3.5 * c * c + 4.5 * t);
    }

    /**
     * Conductivity of the saturated vapour, ESDU 91022; the formula folds back close to critical and is cut before.
     *
     * @param temperature temperature, K, 182.33 to 303.15
     * @return thermal conductivity, W/(m K)
     * @throws IllegalArgumentException outside the range
     */
    public static double vapourConductivity(double temperature) {
        range("vapour conductivity", temperature, CONDUCTIVITY_VAPOUR_LIMIT);
        double c = Math.cbrt(1 - temperature / CRITICAL_TEMPERATURE);
        return 1e-3 * Math.exp(-7.0887 - 0.276962 / (c * c) + 2.88672 / c + 16.6116 * c - 11.8221 * c * c);
    }

    /**
     * Surface tension, Mulero et al. (2012): {@code 0.07087 (1 - T/309.52)^1.204}.
     *
     * @param temperature temperature, K, 182.33 to critical
     * @return surface tension, N/m; 0 from 309.52 K on
     * @throws IllegalArgumentException outside the range
     */
    public static double surfaceTension(double temperature) {
        range("surface tension", temperature, NitrousOxide.CRITICAL_TEMPERATURE);
        return 0.07087 * Math.pow(Math.max(1 - temperature / HelmholtzPoint.REDUCING_TEMPERATURE, 0), 1.204);
    }

    /**
     * Viscosity of the gas at low density, Chapman-Enskog with the collision integral of P. D. Neufeld, A. R. Janzen and
     * R. A. Aziz, J. Chem. Phys. 57 (1972) 1100. Within about 10 % up to a tenth of the critical density.
     *
     * @param temperature temperature, K, 182.33 to 525
     * @return dynamic viscosity, Pa s
     * @throws IllegalArgumentException outside the range
     */
    public static double thinGasViscosity(double temperature) {
        FluidRange.temperature(temperature);
        double t = temperature / WELL_DEPTH;
        double omega =
                1.16145 * Math.pow(t, -0.14874) + 0.52487 * Math.exp(-0.77320 * t) + 2.16178 * Math.exp(-2.43787 * t);
        double molar = 1000 * HelmholtzPoint.MOLAR_MASS;
        return 2.669e-6 * Math.sqrt(molar * temperature) / (DIAMETER * DIAMETER * omega);
    }

    private static void range(String what, double temperature, double highest) {
        if (!(temperature >= FluidRange.MIN_TEMPERATURE && temperature <= highest)) {
            throw new IllegalArgumentException("Nitrous oxide " + what + " is correlated from 182.33 to " + highest
                    + " K along saturation; " + temperature + " K is outside.");
        }
    }
}
