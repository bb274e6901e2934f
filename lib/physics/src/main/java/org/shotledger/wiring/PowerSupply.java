package org.shotledger.wiring;

import java.util.Optional;
import org.shotledger.units.Require;

/**
 * What feeds the loads of a car.
 *
 * @param rated current of the alternator, A
 * @param share of it that is there with a hot alternator, 0.1 to 1
 * @param battery rated charge of the battery, C
 * @param overSpeed current over engine speed; empty where the sheet does not give the second current of the plate
 * @param idleRpm engine speed at which the car waits, rev/min
 */
public record PowerSupply(double rated, double share, double battery, Optional<Alternator> overSpeed, double idleRpm) {
    public PowerSupply {
        Require.positive("rated current of the alternator", rated, "A");
        Require.within("share of the alternator", share, 0.1, 1, "");
        Require.positive("charge of the battery", battery, "C");
        Require.within("idle speed", idleRpm, 200, 5_000, "rpm");
    }

    /**
     * What the alternator gives at an engine speed.
     *
     * @param rpm engine speed, zero for an engine that stands
     * @return A; the hot share of the rating at any speed where nothing is known over speed
     */
    public double current(double rpm) {
        return rpm == 0 ? 0 : overSpeed.map(a -> a.current(rpm)).orElse(rated * share);
    }
}
