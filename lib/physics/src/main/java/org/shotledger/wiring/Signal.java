package org.shotledger.wiring;

import org.shotledger.units.Require;

/**
 * A signal that wants a channel of the controller.
 *
 * @param name what it carries
 * @param way which kind of channel
 * @param need how much it is needed
 * @param instead what may be done where no channel is left
 */
public record Signal(String name, Way way, Need need, Instead instead) {

    /** The kind of channel. */
    public enum Way {
        /** An input, analogue or digital. */
        INPUT("input"),
        /** An output that pulses. */
        PULSE("pulsing output"),
        /** An output that is on or off. */
        OUTPUT("output");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        /**
         * The kind in words.
         *
         * @return for example {@code "pulsing output"}
         */
        public String words() {
            return words;
        }
    }

    /** How much a signal is needed. */
    public enum Need {
        /** Without it the kit must not be armed. */
        MUST("must"),
        /** It should be there. */
        SHOULD("should"),
        /** It is good to have. */
        COULD("could");

        private final String words;

        Need(String words) {
            this.words = words;
        }

        /**
         * The need in words.
         *
         * @return {@code "must"}, {@code "should"} or {@code "could"}
         */
        public String words() {
            return words;
        }
    }

    /** What may be done where no channel is left. */
    public enum Instead {
        /** Nothing. */
        NOTHING("nothing"),
        /** It shares the channel of its twin, as two valves that open together do. */
        SHARED("shares a channel with its twin"),
        /** It takes turns with another signal on one input, where slow reading suffices. */
        MULTIPLEXED("takes turns on one input"),
        /** It goes over the data bus. */
        BUS("goes over the data bus"),
        /** A device of its own does it. */
        LOCAL("is done by a device of its own");

        private final String words;

        Instead(String words) {
            this.words = words;
        }

        /**
         * The way in words.
         *
         * @return for example {@code "goes over the data bus"}
         */
        public String words() {
            return words;
        }
    }

    /** Checks that everything is there. */
    public Signal {
        Require.named("signal", name);
        Require.given("channel of " + name, way);
        Require.given("need of " + name, need);
        Require.given("way out of " + name, instead);
    }
}
