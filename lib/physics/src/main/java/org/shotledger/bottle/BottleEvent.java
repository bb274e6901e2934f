package org.shotledger.bottle;

/**
 * Something that happened while a bottle emptied.
 *
 * @param kind what happened
 * @param time when, s from the start
 * @param pressure absolute pressure then, Pa
 * @param mass nitrous oxide left then, kg
 */
public record BottleEvent(Kind kind, double time, double pressure, double mass) {
    /** Kinds of event. */
    public enum Kind {
        /** The siphon tube draws vapour: the liquid is gone and the power collapses. */
        LIQUID_UNCOVERED("the liquid is gone, the siphon draws vapour"),
        /** The pressure fell below the value asked for. */
        PRESSURE_BELOW("the pressure is below the working band"),
        /** The pressure stands above the highest working pressure, at the start or by heating. */
        PRESSURE_ABOVE("the pressure is above the working band"),
        /** Liquid fills the whole bottle: from here on pressure climbs steeply with temperature. */
        LIQUID_FULL("liquid fills the whole bottle"),
        /** Next to nothing is left, or the pressure behind the jets stops the flow. */
        EMPTY("the bottle is empty"),
        /** The heater's thermostat switched. */
        THERMOSTAT("the thermostat switched"),
        /** Pressure or temperature are beyond what the equation of state covers, far beyond what a disc holds. */
        BEYOND_EQUATION("the pressure or temperature is beyond the equation of state"),
        /** The time asked for has passed. */
        TIME_UP("the time asked for has passed");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * Tells the event in words.
         *
         * @return a short phrase for a report
         */
        public String words() {
            return words;
        }
    }
}
