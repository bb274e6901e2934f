package org.shotledger.fluid;

/**
 * All saturation properties at one temperature or pressure, for inner loops: set it, then read plain doubles.
 *
 * <p>A scratch pad that allocates only when made; one thread at a time. Source and error as {@link SaturationCurve}.
 */
public final class SaturationPoint {

    private int interval;
    private double place;
    private double temperature;
    private double pressure;
    private double liquidDensity;
    private double vapourDensity;
    private double liquidEnthalpy;
    private double vapourEnthalpy;
    private double liquidEntropy;
    private double vapourEntropy;

    /** Makes a point without a state; set a temperature or a pressure before reading it. */
    public SaturationPoint() {}

    /**
     * Moves to a temperature; outside triple to critical the nearer end is taken.
     *
     * @param kelvin temperature, K
     * @return this point
     */
    public SaturationPoint atTemperature(double kelvin) {
        temperature = SaturationCurve.clampTemperature(kelvin);
        atPlace(SaturationCurve.place(temperature));
        return this;
    }

    private void atPlace(double theta) {
        place = theta;
        int i = SaturationCurve.interval(place);
        interval = i;
        double x = SaturationCurve.within(place, i);
        pressure = SaturationCurve.clampPressure(SaturationCurve.value(SaturationCurve.PRESSURE, i, x));
        liquidDensity = SaturationCurve.value(SaturationCurve.LIQUID_DENSITY, i, x);
        vapourDensity = SaturationCurve.value(SaturationCurve.VAPOUR_DENSITY, i, x);
        liquidEnthalpy = SaturationCurve.value(SaturationCurve.LIQUID_ENTHALPY, i, x);
        vapourEnthalpy = SaturationCurve.value(SaturationCurve.VAPOUR_ENTHALPY, i, x);
        liquidEntropy = SaturationCurve.value(SaturationCurve.LIQUID_ENTROPY, i, x);
        vapourEntropy = SaturationCurve.value(SaturationCurve.VAPOUR_ENTROPY, i, x);
    }

    /**
     * Moves to a pressure; outside triple to critical the nearer end is taken.
     *
     * @param pascal absolute pressure, Pa
     * @return this point, its pressure exactly the one given when inside the range
     */
    public SaturationPoint atPressure(double pascal) {
        atPlace(SaturationCurve.placeAtPressure(pascal));
        temperature = SaturationCurve.temperatureAtPlace(place);
        pressure = SaturationCurve.clampPressure(pascal);
        return this;
    }

    /**
     * Temperature.
     *
     * @return temperature, K
     */
    public double temperature() {
        return temperature;
    }

    /**
     * Vapour pressure.
     *
     * @return absolute pressure, Pa
     */
    public double pressure() {
        return pressure;
    }

    /**
     * Density of the saturated liquid.
     *
     * @return density, kg/m3
     */
    public double liquidDensity() {
        return liquidDensity;
    }

    /**
     * Density of the saturated vapour.
     *
     * @return density, kg/m3
     */
    public double vapourDensity() {
        return vapourDensity;
    }

    /**
     * Enthalpy of the saturated liquid.
     *
     * @return specific enthalpy, J/kg
     */
    public double liquidEnthalpy() {
        return liquidEnthalpy;
    }

    /**
     * Enthalpy of the saturated vapour.
     *
     * @return specific enthalpy, J/kg
     */
    public double vapourEnthalpy() {
        return vapourEnthalpy;
    }

    /**
     * Entropy of the saturated liquid.
     *
     * @return specific entropy, J/(kg K)
     */
    public double liquidEntropy() {
        return liquidEntropy;
    }

    /**
     * Entropy of the saturated vapour.
     *
     * @return specific entropy, J/(kg K)
     */
    public double vapourEntropy() {
        return vapourEntropy;
    }

    /**
     * Heat of vaporisation.
     *
     * @return h'' - h', J/kg
     */
    public double heatOfVaporisation() {
        return vapourEnthalpy - liquidEnthalpy;
    }

    /**
     * Slope of the vapour-pressure curve by the Clapeyron equation, {@code (s'' - s')/(v'' - v')}.
     *
     * @return dp/dT along saturation, Pa/K; NaN at the critical point, where it is 0/0
     */
    public double pressureSlope() {
        return (vapourEntropy - liquidEntropy) / (1 / vapourDensity - 1 / liquidDensity);
    }

    /**
     * Vapour fraction of a mixture of given specific volume.
     *
     * @param volume specific volume, m3/kg, from that of the liquid to that of the vapour
     * @return quality, 0 to 1
     */
    public double qualityAtVolume(double volume) {
        double liquid = 1 / liquidDensity;
        double vapour = 1 / vapourDensity;
        return vapour > liquid ? Math.min(Math.max((volume - liquid) / (vapour - liquid), 0), 1) : 0;
    }

    /**
     * Internal energy of a mixture of given specific volume.
     *
     * @param volume specific volume, m3/kg, from that of the liquid to that of the vapour
     * @return specific internal energy, J/kg
     */
    public double energyAtVolume(double volume) {
        return liquidEnthalpy + qualityAtVolume(volume) * heatOfVaporisation() - pressure * volume;
    }

    /**
     * Isochoric heat capacity of a mixture kept in equilibrium, {@code d(energyAtVolume)/dT}, from the slopes of the
     * expansions; good to about 1e-9.
     *
     * @param volume specific volume, m3/kg, from that of the liquid to that of the vapour
     * @return cv, J/(kg K)
     */
    public double heatCapacityAtVolume(double volume) {
        double x = qualityAtVolume(volume);
        double liquid = 1 / liquidDensity;
        double vapour = 1 / vapourDensity;
        double dLiquid = -slope(SaturationCurve.LIQUID_DENSITY) * liquid * liquid;
        double dVapour = -slope(SaturationCurve.VAPOUR_DENSITY) * vapour * vapour;
        double dx = -(dLiquid + x * (dVapour - dLiquid)) / (vapour - liquid);
        double dh = slope(SaturationCurve.LIQUID_ENTHALPY);
        double dhFg = slope(SaturationCurve.VAPOUR_ENTHALPY) - dh;
        double perPlace = dh + x * dhFg + dx * heatOfVaporisation() - slope(SaturationCurve.PRESSURE) * volume;
        return perPlace * SaturationCurve.placeByTemperature(place);
    }

    /**
     * Internal energy of the saturated liquid.
     *
     * @return specific internal energy, J/kg
     */
    public double liquidEnergy() {
        return liquidEnthalpy - pressure / liquidDensity;
    }

    /**
     * Slope of the saturated liquid's density along saturation, from the slope of its expansion.
     *
     * @return d(rho')/dT, kg/(m3 K), negative
     */
    public double liquidDensitySlope() {
        return slope(SaturationCurve.LIQUID_DENSITY) * SaturationCurve.placeByTemperature(place);
    }

    /**
     * Slope of the saturated liquid's internal energy along saturation, from the slopes of the expansions.
     *
     * @return du'/dT, J/(kg K)
     */
    public double liquidEnergySlope() {
        double work = slope(SaturationCurve.PRESSURE) / liquidDensity
                - pressure * slope(SaturationCurve.LIQUID_DENSITY) / (liquidDensity * liquidDensity);
        return (slope(SaturationCurve.LIQUID_ENTHALPY) - work) * SaturationCurve.placeByTemperature(place);
    }

    private double slope(int property) {
        return SaturationCurve.slope(property, interval, SaturationCurve.within(place, interval));
    }
}
