package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * Friction mean effective pressure of an engine with its accessories after Chen and Flynn, SAE 650733 (1965): {@code fmep = constant + pressureFactor p_max + speedFactor S_p + squareFactor S_p^2}.
 *
 * @param constant Pa, 0 to 200 kPa
 * @param pressureFactor share of the peak pressure, 0 to 0.02
 * @param speedFactor Pa per m/s of mean piston speed, 0 to 30 kPa
 * @param squareFactor Pa per (m/s)^2, 0 to 2 kPa
 */
public record ChenFlynn(double constant, double pressureFactor, double speedFactor, double squareFactor) {
    /**
     * Values for a modern spark-ignition engine: 0.4 bar, 0.005, 0.09 bar per m/s, 0.0009 bar per (m/s)^2; common practice
     * in engine calculations, no single source; calibrate on a motored or coast-down test.
     */
    public static final ChenFlynn TYPICAL = new ChenFlynn(40e3, 0.005, 9e3, 90);

    public ChenFlynn {
        Require.within("constant of the friction", constant, 0, 200e3, "Pa");
        Require.within("pressure factor of the friction", pressureFactor, 0, 0.02, "");
        Require.within("speed factor of the friction", speedFactor, 0, 30e3, "Pa s/m");
        Require.within("square factor of the friction", squareFactor, 0, 2e3, "Pa s2/m2");
    }

    /**
     * Friction mean effective pressure.
     *
     * @param peakPressure highest cylinder pressure, Pa
     * @param meanPistonSpeed m/s
     * @return Pa
     */
    public double meanEffectivePressure(double peakPressure, double meanPistonSpeed) {
        return constant
                + pressureFactor * peakPressure
                + meanPistonSpeed * (speedFactor + meanPistonSpeed * squareFactor);
    }

    /**
     * What the model is, for the ledger.
     *
     * @return one line with its source
     */
    public String basis() {
        return "Chen and Flynn, SAE 650733 (1965), with the constants given";
    }
}
