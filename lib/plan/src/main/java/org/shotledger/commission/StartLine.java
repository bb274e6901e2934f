package org.shotledger.commission;

import java.util.List;
import org.shotledger.units.QuantityKind;

/**
 * One line of the list of a first start.
 *
 * @param stage when
 * @param action what is done
 * @param expected what must then be seen
 * @param stop what ends it here
 * @param caution its safety note
 */
public record StartLine(Stage stage, String action, List<Expected> expected, String stop, String caution) {
    public StartLine {
        expected = List.copyOf(expected);
    }

    /** The stages in their order. The bottle stays closed in all before {@link #NITROUS}. */
    public enum Stage {
        /** Before the battery is connected. */
        BEFORE_POWER("before power"),
        /** Key on, engine off. */
        KEY_ON("key on"),
        /** Fuel pumps primed, leaks looked for in the fuel. */
        PRIME("prime and fuel leak search"),
        /** First start on the base tune. */
        FIRST_START("first start"),
        /** Bottle opened for the first time, leaks looked for in the nitrous system. */
        NITROUS("nitrous leak search"),
        /** Valves and flow. */
        FLOW("valves and flow"),
        /** The first shot. */
        FIRST_SHOT("first shot");

        private final String words;

        Stage(String words) {
            this.words = words;
        }

        /**
         * The stage in words.
         *
         * @return for example {@code "key on"}
         */
        public String words() {
            return words;
        }
    }

    /**
     * A figure that must be seen.
     *
     * @param what it is
     * @param value SI
     * @param band half width, SI; NaN where only the figure is stated
     * @param kind what it measures
     */
    public record Expected(String what, double value, double band, QuantityKind kind) {}
}
