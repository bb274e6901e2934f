package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * Saturation pressure of water after Wagner and Pruss (J. Phys. Chem. Ref. Data 22 (1993) 783; IAPWS SR1-86), over liquid
 * water also below freezing, as weather services do.
 */
final class Steam {
    /** K and Pa (IAPWS). */
    private static final double CRITICAL_TEMPERATURE = 647.096;

    private static final double CRITICAL_PRESSURE = 22.064e6;

    private Steam() {}

    static double saturationPressure(double temperature) {
        Require.within("temperature of moist air", temperature, 220, 400, "K");
        double t = 1 - temperature / CRITICAL_TEMPERATURE;
        double root = Math.sqrt(t);
        double t3 = t * t * t;
        double sum = -7.85951783 * t
                + 1.84408259 * t * root
                - 11.7866497 * t3
                + 22.6807411 * t3 * root
                - 15.9618719 * t3 * t
                + 1.80122502 * t3 * t3 * t * root;
        return CRITICAL_PRESSURE * Math.exp(CRITICAL_TEMPERATURE / temperature * sum);
    }
}
