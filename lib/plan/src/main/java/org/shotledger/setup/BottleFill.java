package org.shotledger.setup;

import org.shotledger.units.Require;

/**
 * How the bottle is filled and how warm it is made.
 *
 * @param charge nitrous oxide in the full bottle, kg, 0.05 to 60
 * @param startTemperature of bottle and contents at the start of a pass, K, 233 to 340
 */
public record BottleFill(double charge, double startTemperature) {
    public BottleFill {
        Require.within("charge of the bottle", charge, 0.05, 60, "kg");
        Require.within("temperature of the bottle at the start", startTemperature, 233, 340, "K");
    }
}
