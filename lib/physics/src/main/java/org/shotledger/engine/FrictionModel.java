package org.shotledger.engine;

/** Friction mean effective pressure of an engine with its accessories. */
public sealed interface FrictionModel permits ChenFlynn, WideOpenThrottleFriction {
    /**
     * Friction mean effective pressure.
     *
     * @param peakPressure highest cylinder pressure, Pa
     * @param meanPistonSpeed m/s
     * @param rpm crankshaft speed
     * @return Pa
     */
    double meanEffectivePressure(double peakPressure, double meanPistonSpeed, double rpm);

    /**
     * What the model is, for the ledger.
     *
     * @return one line with its source
     */
    String basis();
}
