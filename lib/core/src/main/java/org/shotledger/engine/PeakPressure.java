package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * Peak cylinder pressure in closed form, for quick looks and as the first guess of the full cycle: polytropic
 * compression from the plenum, then a share of the heat at constant volume,
 * {@code p_max = p r^n (1 + share q / (c_v T r^(n-1)))}.
 *
 * @param polytropicExponent of the compression, 1.2 to 1.4
 * @param share of the heat that acts at constant volume, 0.2 to 1; 0.45 to 0.6 is common practice with spark at best torque
 * @param heatCapacity of the burned gas at constant volume, J/(kg K), 700 to 1400
 */
public record PeakPressure(double polytropicExponent, double share, double heatCapacity) {
    /** 1.32, half of the heat, 1000 J/(kg K): common practice. */
    public static final PeakPressure TYPICAL = new PeakPressure(1.32, 0.5, 1000);

    /** Checks the ranges. */
    public PeakPressure {
        Require.within("polytropic exponent", polytropicExponent, 1.2, 1.4, "");
        Require.within("share of the heat at constant volume", share, 0.2, 1, "");
        Require.within("heat capacity of the burned gas", heatCapacity, 700, 1400, "J/(kg K)");
    }

    /**
     * The estimate.
     *
     * @param compressionRatio geometric
     * @param pressure at intake valve closing, Pa
     * @param temperature of the charge with its residual gas, K
     * @param heatPerMass heat released per mass of charge, J/kg
     * @return Pa
     */
    public double estimate(double compressionRatio, double pressure, double temperature, double heatPerMass) {
        double compressed = temperature * Math.pow(compressionRatio, polytropicExponent - 1);
        return pressure
                * Math.pow(compressionRatio, polytropicExponent)
                * (1 + share * heatPerMass / (heatCapacity * compressed));
    }
}
