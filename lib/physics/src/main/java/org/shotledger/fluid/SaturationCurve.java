package org.shotledger.fluid;

import java.nio.ByteBuffer;

/**
 * Saturation properties as functions of temperature, and boiling temperature of pressure, without iteration.
 *
 * <p>Piecewise Chebyshev expansions in {@code theta = sqrt(1 - T/Tc)} of the exact phase equilibrium of the equation of
 * state, made offline in 50-digit arithmetic and read once from a resource; after I. H. Bell and B. K. Alpert, Int. J.
 * Thermophys. 42 (2021) 75. In theta both branches are smooth up to the critical point, so no property is cut off
 * there; what remains near it is that a temperature in double precision fixes theta only to about 1e-16/theta.
 *
 * <p>These methods are primitive, allocate nothing and are thread-safe. They do not check the range: outside triple to
 * critical the temperature is taken at the nearer end. For several properties at once use {@link SaturationPoint}.
 */
public final class SaturationCurve {

    static final int CELLS = 64;
    static final int TERMS = Expansions.TERMS;
    static final double THETA_SPAN = 0.6411;
    static final double PHI_SPAN = 2.1007;

    static final int PRESSURE = 0;
    static final int LIQUID_DENSITY = 1;
    static final int VAPOUR_DENSITY = 2;
    static final int LIQUID_ENTHALPY = 3;
    static final int VAPOUR_ENTHALPY = 4;
    static final int LIQUID_ENTROPY = 5;
    static final int VAPOUR_ENTROPY = 6;

    private static final Expansions CURVE;
    private static final Expansions BOILING;

    static {
        ByteBuffer resource = Expansions.resource("saturation.bin");
        CURVE = new Expansions(resource, 7);
        BOILING = new Expansions(resource, 1);
    }

    private static final double CELLS_PER_THETA = CELLS / THETA_SPAN;
    private static final double CELLS_PER_PHI = CELLS / PHI_SPAN;

    private SaturationCurve() {}

    /**
     * Vapour pressure.
     *
     * @param temperature temperature, K, triple to critical
     * @return absolute pressure, Pa
     */
    public static double pressure(double temperature) {
        return clampPressure(value(PRESSURE, temperature));
    }

    /**
     * Boiling temperature.
     *
     * @param pressure absolute pressure, Pa, triple to critical
     * @return temperature, K
     */
    public static double temperature(double pressure) {
        return temperatureAtPlace(placeAtPressure(pressure));
    }

    /** Place of a boiling pressure: theta is as smooth in phi = sqrt(ln(pc/p)) as everything else is in theta. */
    static double placeAtPressure(double pressure) {
        double ratio = NitrousOxide.CRITICAL_PRESSURE / clampPressure(pressure);
        double phi = Math.sqrt(Math.log(ratio)) * CELLS_PER_PHI;
        int i = BOILING.intervalOfCell[(int) phi];
        return CELLS_PER_THETA * BOILING.value(0, i, BOILING.within(phi, i));
    }

    static double temperatureAtPlace(double place) {
        double theta = place / CELLS_PER_THETA;
        return clampTemperature(NitrousOxide.CRITICAL_TEMPERATURE * (1 - theta * theta));
    }

    /**
     * Density of the saturated liquid.
     *
     * @param temperature temperature, K, triple to critical
     * @return density, kg/m3
     */
    public static double liquidDensity(double temperature) {
        return value(LIQUID_DENSITY, temperature);
    }

    /**
     * Density of the saturated vapour.
     *
     * @param temperature temperature, K, triple to critical
     * @return density, kg/m3
     */
    public static double vapourDensity(double temperature) {
        return value(VAPOUR_DENSITY, temperature);
    }

    /**
     * Enthalpy of the saturated vapour.
     *
     * @param temperature temperature, K, triple to critical
     * @return specific enthalpy, J/kg
     */
    public static double vapourEnthalpy(double temperature) {
        return value(VAPOUR_ENTHALPY, temperature);
    }

    /**
     * Entropy of the saturated liquid.
     *
     * @param temperature temperature, K, triple to critical
     * @return specific entropy, J/(kg K)
     */
    public static double liquidEntropy(double temperature) {
        return value(LIQUID_ENTROPY, temperature);
    }

    /**
     * Entropy of the saturated vapour.
     *
     * @param temperature temperature, K, triple to critical
     * @return specific entropy, J/(kg K)
     */
    public static double vapourEntropy(double temperature) {
        return value(VAPOUR_ENTROPY, temperature);
    }

    private static double value(int property, double temperature) {
        double place = place(temperature);
        int i = interval(place);
        return value(property, i, within(place, i));
    }

    static double place(double temperature) {
        double t = clampTemperature(temperature);
        return Math.sqrt(1 - t / NitrousOxide.CRITICAL_TEMPERATURE) * CELLS_PER_THETA;
    }

    static int interval(double place) {
        return CURVE.intervalOfCell[Math.min((int) place, CELLS - 1)];
    }

    /** Position in an interval, -1 to 1. */
    static double within(double place, int interval) {
        return CURVE.within(place, interval);
    }

    static double value(int property, int interval, double x) {
        return CURVE.value(property, interval, x);
    }

    /** Derivative of a property with the place on the curve. */
    static double slope(int property, int interval, double x) {
        return CURVE.slope(property, interval, x);
    }

    static double clampTemperature(double t) {
        return Math.min(Math.max(t, NitrousOxide.TRIPLE_TEMPERATURE), NitrousOxide.CRITICAL_TEMPERATURE);
    }

    static double clampPressure(double p) {
        return Math.min(Math.max(p, NitrousOxide.TRIPLE_PRESSURE), NitrousOxide.CRITICAL_PRESSURE);
    }

    /** d(place)/dT at a place, 1/K; kept finite at the critical point. */
    static double placeByTemperature(double place) {
        return -0.5 * CELLS_PER_THETA * CELLS_PER_THETA / (Math.max(place, 1e-7) * NitrousOxide.CRITICAL_TEMPERATURE);
    }
}
