package org.shotledger.boost;

import org.shotledger.units.Require;

/**
 * What the shaft of a turbocharger must balance at one engine speed.
 *
 * @param gas all of the exhaust
 * @param compressorPower W, 0 or more
 * @param outletPressure after the turbine, Pa
 */
public record ShaftDemand(ExhaustGas gas, double compressorPower, double outletPressure) {
    /** Checks the figures. */
    public ShaftDemand {
        Require.given("exhaust gas", gas);
        Require.notNegative("compressor power", compressorPower, "W");
        Require.positive("pressure after the turbine", outletPressure, "Pa");
    }
}
