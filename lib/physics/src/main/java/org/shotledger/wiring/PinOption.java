package org.shotledger.wiring;

import java.util.Optional;
import org.shotledger.units.Require;

/**
 * Another way for a signal that frees the pin it asks for.
 *
 * @param way the kind of way
 * @param what the part in words, for example {@code "bottle temperature sensor with bus"}
 * @param price of it, fitted, in the sheet's money, zero or above
 * @param need what it still asks of a pin; empty when it asks for none
 */
public record PinOption(Way way, String what, double price, Optional<PinNeed> need) {

    /** Kinds of way. */
    public enum Way {
        /** A sensor or driver that talks on the data bus. */
        BUS("over the bus"),
        /** A relay or solid-state switch, so that a weaker pin suffices. */
        RELAY("by a relay"),
        /** A device that works without the controller: a switch, a thermostat, a lamp on the dashboard. */
        OWN_DEVICE("by a device of its own");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        /**
         * The way in words.
         *
         * @return for example {@code "over the bus"}
         */
        public String words() {
            return words;
        }
    }

    public PinOption {
        Require.named("part", what);
        Require.notNegative("price of " + what, price, "");
    }

    /**
     * A part on the bus.
     *
     * @param what the part in words
     * @param price of it
     * @param frames per second that it takes, 1/s
     * @return the option
     */
    public static PinOption bus(String what, double price, double frames) {
        return new PinOption(Way.BUS, what, price, Optional.of(PinNeed.of(PinKind.BUS, 0, frames)));
    }

    /**
     * A relay.
     *
     * @param what the part in words
     * @param price of it
     * @param coil what its coil or input asks of a pin
     * @return the option
     */
    public static PinOption relay(String what, double price, PinNeed coil) {
        return new PinOption(Way.RELAY, what, price, Optional.of(coil));
    }

    /**
     * A device that works without the controller.
     *
     * @param what the part in words
     * @param price of it
     * @return the option
     */
    public static PinOption ownDevice(String what, double price) {
        return new PinOption(Way.OWN_DEVICE, what, price, Optional.empty());
    }
}
