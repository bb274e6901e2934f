package org.shotledger.setup;

import org.shotledger.units.Require;

/**
 * The moment in a bottle's day at which the engine is looked at.
 *
 * @param moment which moment
 * @param temperature of the saturated liquid, K; NaN where it follows from the filling and the passes run
 */
public record BottleState(Moment moment, double temperature) {
    /** As charged, at the first opening. */
    public static final BottleState FULL = new BottleState(Moment.FIRST_OPENING, Double.NaN);
    /** At the end of the last pass asked for. */
    public static final BottleState LAST = new BottleState(Moment.END_OF_LAST_PASS, Double.NaN);

    /** Moments of a day. */
    public enum Moment {
        /** The first opening of the bottle as it was charged. */
        FIRST_OPENING("bottle as charged"),
        /** The last second of the last pass. */
        END_OF_LAST_PASS("bottle at the end of the last pass"),
        /** A temperature that is given. */
        GIVEN("bottle at a given temperature");

        private final String words;

        Moment(String words) {
            this.words = words;
        }

        /**
         * The words a reader sees.
         *
         * @return for example {@code "bottle as charged"}
         */
        public String words() {
            return words;
        }
    }

    /**
     * A bottle of which the temperature is known and which holds liquid and vapour.
     *
     * @param temperature K, 183 to 309.5
     * @return the state
     */
    public static BottleState at(double temperature) {
        return new BottleState(Moment.GIVEN, Require.within("temperature of the bottle", temperature, 183, 309.5, "K"));
    }
}
