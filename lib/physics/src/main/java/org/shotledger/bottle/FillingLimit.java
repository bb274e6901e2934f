package org.shotledger.bottle;

import java.util.Locale;

/**
 * One limit on what a bottle may hold and how warm it may get. Only stricter bounds may be asked for.
 *
 * @param kind which limit
 * @param value what this charge does, in the unit of the kind
 * @param bound what it must keep
 * @param beyond whether the true pressure is higher than the value, which is where the equation of state ends
 * @param charge charge it was worked out for, kg
 */
public record FillingLimit(Kind kind, double value, double bound, boolean beyond, double charge) {
    private static final String FIRM = "change the part, the charge or the target; this limit is not to be moved";

    /** What is limited. */
    public enum Kind {
        /** Charge per water capacity, kg/L (kg per kg of water). */
        FILLING_DENSITY("charge per water capacity", true),
        /** Service pressure stamped on the cylinder, Pa absolute. */
        SERVICE_PRESSURE("service pressure stamped on the cylinder", false),
        /** Pressure of the charge at 21 degC against the service pressure, Pa absolute. */
        PRESSURE_AT_21("pressure at 21 degC", true),
        /** Rated burst pressure of the disc against the test pressure, Pa absolute. */
        DISC_RATING("burst rating of the disc", true),
        /** Start temperature against the temperature at which the charge is liquid-full, K. */
        START_TEMPERATURE("start temperature", true),
        /** Pressure of this charge at the start against the highest working pressure, Pa absolute. */
        START_PRESSURE_HIGH("pressure at the start", true),
        /** Pressure of this charge at the start against the lowest working pressure, Pa absolute. */
        START_PRESSURE_LOW("pressure at the start", false),
        /** Pressure of this charge at the start against the disc, Pa absolute. */
        START_PRESSURE_DISC("pressure at the start", true),
        /** Pressure of this charge at the hottest soak against the disc, Pa absolute. */
        SOAK_PRESSURE_DISC("pressure at the hottest soak", true),
        /** Temperature at which the heater turns off against the one at which the charge is liquid-full, K. */
        HEATER_OFF("temperature at which the heater turns off", true);

        private final String words;
        private final boolean upper;

        Kind(String words, boolean upper) {
            this.words = words;
            this.upper = upper;
        }

        /**
         * Names the value.
         *
         * @return a short phrase
         */
        public String words() {
            return words;
        }

        /**
         * Whether the bound is the highest value allowed.
         *
         * @return false when it is the lowest
         */
        public boolean upper() {
            return upper;
        }
    }

    /**
     * Distance to the bound.
     *
     * @return bound less value (value less bound for a lowest value), in the unit of the kind; negative when broken, NaN when a figure
     *     of the cylinder has not been read
     */
    public double margin() {
        return kind.upper ? bound - value : value - bound;
    }

    /**
     * Whether the limit is kept. A figure that has not been read does not keep it.
     *
     * @return true when value and bound are known and the value keeps the bound
     */
    public boolean holds() {
        return margin() >= 0 && !beyond;
    }

    /**
     * Says what the limit is about and whether it holds.
     *
     * @param figures how figures are written
     * @return one sentence
     */
    public String reason(Figures figures) {
        if (Double.isNaN(value) || Double.isNaN(bound)) {
            return "The " + kind.words
                    + " cannot be judged: read the marking of the cylinder and of its disc and state both.";
        }
        String is = "The " + kind.words + " is " + (beyond ? "beyond " : "") + text(value, figures)
                + (beyond ? ", outside the equation of state" : "") + "; ";
        return is + why(figures) + (holds() ? "." : ": " + FIRM + ".");
    }

    private String why(Figures figures) {
        String limit = text(bound, figures);
        return switch (kind) {
            case FILLING_DENSITY ->
                "49 CFR 173.304a(a)(2) allows " + limit + " for nitrous oxide, " + figures.mass(bound * charge / value)
                        + " in this bottle by scale";
            case SERVICE_PRESSURE ->
                "the cylinders listed in 49 CFR 173.304a(a)(2) for this filling are marked " + limit + " or more";
            case PRESSURE_AT_21 -> "49 CFR 173.301a(c) allows the service pressure, " + limit;
            case DISC_RATING -> "a disc bursts at the latest at the cylinder's test pressure, " + limit;
            case START_TEMPERATURE, HEATER_OFF ->
                Double.isInfinite(bound)
                        ? "so small a charge never fills the bottle with liquid"
                        : "liquid fills the bottle from " + limit + " on";
            case START_PRESSURE_HIGH -> "the highest working pressure is " + limit;
            case START_PRESSURE_LOW -> "the lowest working pressure is " + limit;
            case START_PRESSURE_DISC, SOAK_PRESSURE_DISC -> "the disc may open from " + limit + " on";
        };
    }

    private String text(double figure, Figures figures) {
        return switch (kind) {
            case FILLING_DENSITY -> String.format(Locale.ROOT, "%.3f kg per litre", figure);
            case START_TEMPERATURE, HEATER_OFF ->
                Double.isInfinite(figure) ? "no temperature" : figures.temperature(figure);
            default -> figures.pressure(figure);
        };
    }
}
