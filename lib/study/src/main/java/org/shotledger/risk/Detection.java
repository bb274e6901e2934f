package org.shotledger.risk;

import java.util.List;

/**
 * What catches a fault, and whether in time.
 *
 * @param answer how it ends
 * @param channel the channel that answers first; empty when none that is fitted does
 * @param damageTime from the beginning of the fault until the engine is hurt, s; infinite when it is not
 * @param cutTime from the beginning of the fault until the nitrous has ceased, s; infinite when it does not
 * @param couldSee channels that are not fitted and would see it, with the time each would take to cut
 */
public record Detection(Answer answer, String channel, double damageTime, double cutTime, List<Sight> couldSee) {
    /** How a fault ends. */
    public enum Answer {
        /** No limit that hurts the engine is broken. */
        BORNE("borne"),
        /** A channel keeps the nitrous from opening. */
        PREVENTED("does not open"),
        /** The nitrous ceases before the engine is hurt. */
        IN_TIME("cut in time"),
        /** A channel sees it, but the engine is hurt first. */
        TOO_LATE("cut too late"),
        /** No fitted channel sees it. */
        UNSEEN("not seen"),
        /** A channel sees it, but closing the nitrous solenoid does not end it. */
        UNSTOPPABLE("cutting does not end it");

        private final String words;

        Answer(String words) {
            this.words = words;
        }

        /**
         * The words a reader sees.
         *
         * @return for example {@code "cut in time"}
         */
        public String words() {
            return words;
        }

        /**
         * Tells whether the engine comes out unhurt.
         *
         * @return true when borne, prevented or cut in time
         */
        public boolean saves() {
            return this == BORNE || this == PREVENTED || this == IN_TIME;
        }
    }

    /**
     * A channel that sees a fault.
     *
     * @param channel its name
     * @param cutTime from the beginning of the fault until the nitrous would have ceased, s
     */
    public record Sight(String channel, double cutTime) {}

    public Detection {
        couldSee = List.copyOf(couldSee);
    }
}
