package org.shotledger.engine;

import org.shotledger.units.Require;
import org.shotledger.units.UnitFactors;

/** The standard atmosphere of ISO 2533 (as ICAO) in its lowest layer, by geometric altitude. */
public final class StandardAtmosphere {
    private static final double EARTH_RADIUS = 6356766;
    private static final double SEA_LEVEL_TEMPERATURE = 288.15;
    private static final double SEA_LEVEL_PRESSURE = UnitFactors.ATMOSPHERE;
    private static final double LAPSE = 0.0065;
    private static final double GAS_CONSTANT = 287.05287;
    private static final double EXPONENT = UnitFactors.GRAVITY / (GAS_CONSTANT * LAPSE);

    private StandardAtmosphere() {}

    /**
     * Geopotential altitude, {@code H = r Z / (r + Z)}.
     *
     * @param altitude geometric altitude, m, -1000 to 11000
     * @return m
     */
    public static double geopotential(double altitude) {
        Require.within("altitude", altitude, -1000, 11000, "m");
        return EARTH_RADIUS * altitude / (EARTH_RADIUS + altitude);
    }

    /**
     * Temperature.
     *
     * @param altitude geometric altitude, m, -1000 to 11000
     * @return K
     */
    public static double temperature(double altitude) {
        return SEA_LEVEL_TEMPERATURE - LAPSE * geopotential(altitude);
    }

    /**
     * Pressure.
     *
     * @param altitude geometric altitude, m, -1000 to 11000
     * @return Pa
     */
    public static double pressure(double altitude) {
        return SEA_LEVEL_PRESSURE * Math.pow(temperature(altitude) / SEA_LEVEL_TEMPERATURE, EXPONENT);
    }

    /**
     * The altitude at which a pressure is the standard one, the inverse of {@link #pressure}.
     *
     * @param pressure Pa, 22700 to 113900
     * @return geometric altitude, m, -1000 to 11000
     */
    public static double altitude(double pressure) {
        Require.within("pressure of the standard atmosphere", pressure, 22_700, 113_900, "Pa");
        double temperature = SEA_LEVEL_TEMPERATURE * Math.pow(pressure / SEA_LEVEL_PRESSURE, 1 / EXPONENT);
        double geopotential = (SEA_LEVEL_TEMPERATURE - temperature) / LAPSE;
        return EARTH_RADIUS * geopotential / (EARTH_RADIUS - geopotential);
    }

    /**
     * Density.
     *
     * @param altitude geometric altitude, m, -1000 to 11000
     * @return kg/m3
     */
    public static double density(double altitude) {
        return pressure(altitude) / (GAS_CONSTANT * temperature(altitude));
    }
}
