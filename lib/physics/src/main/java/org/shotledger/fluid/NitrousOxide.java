package org.shotledger.fluid;

/**
 * Nitrous oxide states by any of the usual pairs of properties.
 *
 * <p>Equation of state of Lemmon and Span (2006), see {@link HelmholtzPoint}; range 182.33 K (triple point) to 525 K and
 * to 50 MPa. States colder than melting at high pressure are not recognised as solid: the melting line is not part of
 * the equation. All methods are pure and thread-safe.
 */
public final class NitrousOxide {

    /** Critical temperature of the equation itself (published fluid: 309.52 K), K. */
    public static final double CRITICAL_TEMPERATURE = 309.52067823146013;

    /** Critical pressure of the equation itself, Pa. */
    public static final double CRITICAL_PRESSURE = 7244816.701606721;

    /** Critical density of the equation itself, kg/m3. */
    public static final double CRITICAL_DENSITY = 452.93147761878607;

    /** Triple-point temperature, K. */
    public static final double TRIPLE_TEMPERATURE = FluidRange.MIN_TEMPERATURE;

    /** Triple-point pressure by the equation, Pa. */
    public static final double TRIPLE_PRESSURE = 87837.43922581258;

    /** Highest density of the equation's range (182.33 K, 50 MPa), kg/m3. */
    static final double MAX_DENSITY = 1292.549021768042;

    private NitrousOxide() {}

    /**
     * Vapour pressure.
     *
     * @param temperature temperature, K, triple to critical
     * @return absolute pressure, Pa
     * @throws IllegalArgumentException outside the range
     */
    public static double saturationPressure(double temperature) {
        FluidRange.saturationTemperature(temperature);
        return SaturationCurve.pressure(temperature);
    }

    /**
     * Boiling temperature.
     *
     * @param pressure absolute pressure, Pa, triple to critical
     * @return temperature, K
     * @throws IllegalArgumentException outside the range
     */
    public static double saturationTemperature(double pressure) {
        FluidRange.saturationPressure(pressure);
        return SaturationCurve.temperature(pressure);
    }

    /**
     * Saturated liquid.
     *
     * @param temperature temperature, K, triple to critical
     * @return the state, quality 0
     * @throws IllegalArgumentException outside the range
     */
    public static FluidState saturatedLiquid(double temperature) {
        return mixture(temperature, 0);
    }

    /**
     * Saturated vapour.
     *
     * @param temperature temperature, K, triple to critical
     * @return the state, quality 1
     * @throws IllegalArgumentException outside the range
     */
    public static FluidState saturatedVapour(double temperature) {
        return mixture(temperature, 1);
    }

    /**
     * Liquid and vapour in equilibrium.
     *
     * @param temperature temperature, K, triple to critical
     * @param quality vapour mass fraction, 0 to 1
     * @return the state; at quality 0 and 1 the saturated phase itself
     * @throws IllegalArgumentException outside the ranges
     */
    public static FluidState mixture(double temperature, double quality) {
        return new StatePoint().mixture(temperature, quality).state();
    }

    /**
     * State at temperature and pressure. Exactly on the saturation line the pair does not fix a state: the saturated
     * liquid is returned there, and just below that pressure the vapour.
     *
     * @param temperature temperature, K, 182.33 to 525
     * @param pressure absolute pressure, Pa, above 0 to 50 MPa
     * @return the state; its quality is NaN except exactly on the saturation line
     * @throws IllegalArgumentException outside the ranges
     */
    public static FluidState atTemperaturePressure(double temperature, double pressure) {
        return new StatePoint().temperaturePressure(temperature, pressure).state();
    }

    /**
     * State at pressure and enthalpy.
     *
     * @param pressure absolute pressure, Pa, above 0 to 50 MPa
     * @param enthalpy specific enthalpy, J/kg, zero for the saturated liquid at 101 325 Pa
     * @return the state
     * @throws IllegalArgumentException when no temperature from 182.33 to 525 K has this enthalpy at this pressure
     */
    public static FluidState atPressureEnthalpy(double pressure, double enthalpy) {
        return new StatePoint().pressureEnthalpy(pressure, enthalpy).state();
    }

    /**
     * State at pressure and entropy.
     *
     * @param pressure absolute pressure, Pa, above 0 to 50 MPa
     * @param entropy specific entropy, J/(kg K), zero for the saturated liquid at 101 325 Pa
     * @return the state
     * @throws IllegalArgumentException when no temperature from 182.33 to 525 K has this entropy at this pressure
     */
    public static FluidState atPressureEntropy(double pressure, double entropy) {
        return new StatePoint().pressureEntropy(pressure, entropy).state();
    }

    /**
     * State at density and internal energy, as in a closed rigid vessel.
     *
     * @param density density, kg/m3
     * @param internalEnergy specific internal energy, J/kg, on the enthalpy's base
     * @return the state
     * @throws IllegalArgumentException when no temperature from 182.33 to 525 K has this energy at this density
     */
    public static FluidState atDensityEnergy(double density, double internalEnergy) {
        return new StatePoint().densityEnergy(density, internalEnergy).state();
    }

    /**
     * State at temperature and density.
     *
     * @param temperature temperature, K, 182.33 to 525
     * @param density density, kg/m3
     * @return the state, a mixture when the density lies inside the dome
     * @throws IllegalArgumentException outside the ranges
     */
    public static FluidState atTemperatureDensity(double temperature, double density) {
        return new StatePoint().temperatureDensity(temperature, density).state();
    }
}
