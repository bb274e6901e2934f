package org.shotledger.fuel;

import org.shotledger.units.Require;

/**
 * One part of a blend.
 *
 * @param fuel the fuel
 * @param volumeFraction its share of the parts' volumes at 15 C, 0 to 1
 */
public record Part(Fuel fuel, double volumeFraction) {
    public Part {
        Require.given("fuel of a blend", fuel);
        Require.within("volume fraction of " + fuel.name(), volumeFraction, 0, 1, "");
    }
}
