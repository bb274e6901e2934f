package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.Require;

/**
 * A device on the data bus that brings pins of its own.
 *
 * @param name what it is
 * @param price of it, fitted, in the sheet's money
 * @param frames per second that it takes on the bus, 1/s
 * @param rate how often each of its pins is read or set, Hz
 * @param pins its pins, none of them a bus
 */
public record PinExpander(String name, double price, double frames, double rate, List<Pin> pins) {
    public PinExpander {
        Require.named("expander", name);
        Require.notNegative("price of " + name, price, "");
        Require.positive("frames of " + name, frames, "1/s");
        Require.positive("rate of " + name, rate, "Hz");
        pins = List.copyOf(pins);
        if (pins.isEmpty() || pins.stream().anyMatch(pin -> pin.kinds().contains(PinKind.BUS))) {
            throw new IllegalArgumentException("The expander " + name
                    + " has no pin, or a bus among its pins; give at least one pin that is no bus.");
        }
    }
}
