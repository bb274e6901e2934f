package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * The power law by which standards relate power to dry air pressure and temperature,
 * {@code (p_ref/p)^m (T/T_ref)^n}.
 *
 * @param pressureExponent m, 0 to 2
 * @param temperatureExponent n, 0 to 2
 */
public record AtmosphericFactor(double pressureExponent, double temperatureExponent) {
    /** Spark ignition in ISO 1585 and ISO 3046: m = 1.2, n = 0.6. */
    public static final AtmosphericFactor SPARK_IGNITION = new AtmosphericFactor(1.2, 0.6);

    public AtmosphericFactor {
        Require.within("pressure exponent", pressureExponent, 0, 2, "");
        Require.within("temperature exponent", temperatureExponent, 0, 2, "");
    }

    /**
     * The factor by which power observed in one air is multiplied to get that in a reference air.
     *
     * @param referencePressure dry, Pa
     * @param referenceTemperature K
     * @param pressure dry, Pa
     * @param temperature K
     * @return a pure number
     */
    public double of(double referencePressure, double referenceTemperature, double pressure, double temperature) {
        return Math.pow(referencePressure / pressure, pressureExponent)
                * Math.pow(temperature / referenceTemperature, temperatureExponent);
    }
}
