package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * One point of a measured run without nitrous oxide, at full load.
 *
 * @param rpm crankshaft speed, 500 to 20000
 * @param plenumPressure Pa absolute, 20 kPa to 1 MPa
 * @param chargeTemperature air temperature in the plenum, K, 230 to 450
 * @param lambda measured, 0.5 to 1.5
 * @param brakePower at the flywheel, W, above zero, as observed (not corrected)
 */
public record BasePull(double rpm, double plenumPressure, double chargeTemperature, double lambda, double brakePower) {
    /** Checks the ranges. */
    public BasePull {
        Require.within("speed of the base pull", rpm, 500, 20000, "rpm");
        Require.within("plenum pressure of the base pull", plenumPressure, 20e3, 1e6, "Pa");
        Require.within("charge temperature of the base pull", chargeTemperature, 230, 450, "K");
        Require.within("lambda of the base pull", lambda, 0.5, 1.5, "");
        Require.positive("brake power of the base pull", brakePower, "W");
    }
}
