package org.shotledger.workshop;

import org.shotledger.units.Require;

/**
 * A part or a job as the sheet states it.
 *
 * @param what in words; empty where only price and progress of a listed part are stated
 * @param circuit which circuit it belongs to
 * @param count so many; NaN where it is the listed one
 * @param price of one, in the sheet's money; NaN where none is given
 * @param hours of all of them together, h; NaN where none are given
 * @param fitted whether it is in the car
 * @param before what it must be there for
 */
public record ListedPart(
        String what, Circuit circuit, double count, double price, double hours, boolean fitted, Stage before) {
    public ListedPart {
        Require.given("circuit of a part", circuit);
        Require.given("stage of a part", before);
    }

    /** The circuits. */
    public enum Circuit {
        /** From the bottle to the nozzles. */
        NITROUS("nitrous"),
        /** From the fuel cell or the main rail to the nozzles. */
        FUEL("fuel"),
        /** Boost control. */
        BOOST("boost"),
        /** Wires, fuses, relays, controller. */
        ELECTRICS("electrics"),
        /** Sensors. */
        SENSORS("sensors"),
        /** Anything else. */
        OTHER("other");

        private final String words;

        Circuit(String words) {
            this.words = words;
        }

        /**
         * The circuit in a word.
         *
         * @return for example {@code "nitrous"}
         */
        public String words() {
            return words;
        }
    }

    /** What a part must be there for, the earliest first. */
    public enum Stage {
        /** Before the key is turned. */
        KEY_ON("key-on"),
        /** Before the engine is started. */
        FIRST_START("first-start"),
        /** Before nitrous is let into the engine. */
        FIRST_SHOT("first-shot"),
        /** It may wait. */
        LATER("later");

        private final String words;

        Stage(String words) {
            this.words = words;
        }

        /**
         * The stage in a word.
         *
         * @return for example {@code "first-shot"}
         */
        public String words() {
            return words;
        }
    }
}
