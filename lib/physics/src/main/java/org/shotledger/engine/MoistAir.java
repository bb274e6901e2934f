package org.shotledger.engine;

import org.shotledger.fuel.Oxidisers;
import org.shotledger.gas.Gas;
import org.shotledger.units.Require;

/**
 * Ambient air as the engine meets it: ideal-gas mixture of dry air and water vapour.
 *
 * @param pressure station pressure (not reduced to sea level), Pa absolute, 30 to 120 kPa
 * @param temperature air temperature, K, 220 to 340
 * @param relativeHumidity water vapour pressure over its saturation pressure, 0 to 1
 */
public record MoistAir(double pressure, double temperature, double relativeHumidity) {
    private static final double WATER_TO_AIR = Oxidisers.WATER_MOLAR_MASS / Oxidisers.DRY_AIR_MOLAR_MASS;

    public MoistAir {
        Require.within("station pressure", pressure, 30e3, 120e3, "Pa");
        Require.within("air temperature", temperature, 220, 340, "K");
        Require.within("relative humidity", relativeHumidity, 0, 1, "");
    }

    /**
     * Air at an altitude with the standard pressure of that altitude and the weather's temperature and humidity.
     *
     * @param altitude geometric altitude, m, -1000 to 5000
     * @param temperature air temperature, K
     * @param relativeHumidity 0 to 1
     * @return the air
     */
    public static MoistAir atAltitude(double altitude, double temperature, double relativeHumidity) {
        return new MoistAir(StandardAtmosphere.pressure(altitude), temperature, relativeHumidity);
    }

    /**
     * Partial pressure of the water vapour.
     *
     * @return Pa
     */
    public double vapourPressure() {
        return relativeHumidity * Steam.saturationPressure(temperature);
    }

    /**
     * Partial pressure of the dry air.
     *
     * @return Pa
     */
    public double dryPressure() {
        return pressure - vapourPressure();
    }

    /**
     * Water carried by the air.
     *
     * @return kg of water per kg of dry air
     */
    public double humidityRatio() {
        return WATER_TO_AIR * vapourPressure() / dryPressure();
    }

    /**
     * Mean molar mass.
     *
     * @return kg/mol
     */
    public double molarMass() {
        double wet = vapourPressure() / pressure;
        return (1 - wet) * Oxidisers.DRY_AIR_MOLAR_MASS + wet * Oxidisers.WATER_MOLAR_MASS;
    }

    /**
     * Density.
     *
     * @return kg/m3
     */
    public double density() {
        return pressure * molarMass() / (Gas.MOLAR_CONSTANT * temperature);
    }
}
