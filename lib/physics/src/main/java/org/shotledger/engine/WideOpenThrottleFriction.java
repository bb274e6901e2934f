package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * Total motored friction of four-stroke spark-ignition engines, {@code 0.97 + 0.15 (N/1000) + 0.05 (N/1000)^2} bar (Barnes-Moss
 * 1975, Heywood eq. 13.6, from memory), times a factor.
 *
 * @param factor 0.3 to 2; below one for a modern engine
 */
public record WideOpenThrottleFriction(double factor) implements FrictionModel {
    /** Checks the factor. */
    public WideOpenThrottleFriction {
        Require.within("factor of the friction", factor, 0.3, 2, "");
    }

    @Override
    public double meanEffectivePressure(double peakPressure, double meanPistonSpeed, double rpm) {
        double thousands = rpm / 1000;
        return factor * 1e5 * (0.97 + thousands * (0.15 + thousands * 0.05));
    }

    @Override
    public String basis() {
        return "motored friction after Barnes-Moss 1975 (Heywood eq. 13.6) times " + factor;
    }
}
