package org.shotledger.nitrous;

import org.shotledger.supply.PumpGroup;
import org.shotledger.units.Require;

/**
 * A fuel supply that feeds the nitrous system and nothing else.
 *
 * @param pumps the pumps that feed it
 * @param volume volume of the cell, m3, above 0 and below 0.2
 */
public record FuelCell(PumpGroup pumps, double volume) {
    public FuelCell {
        Require.given("pumps of the fuel cell", pumps);
        if (!(volume > 0 && volume < 0.2)) {
            throw new IllegalArgumentException(
                    "The fuel cell's volume is " + volume + " m3; allowed is above 0 and below 0.2 m3.");
        }
    }
}
