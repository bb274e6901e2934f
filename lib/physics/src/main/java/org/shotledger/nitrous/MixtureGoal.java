package org.shotledger.nitrous;

import java.util.Locale;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Oxidisers;

/**
 * The mixture wanted with the nitrous on, in one of the three ways in which it is asked for. All three rest on the same
 * oxygen balance: total lambda counts every stream, the other two only the nitrous circuit.
 *
 * @param kind what the value counts
 * @param value lambda, 0.5 to 1.2; or kg of nitrous oxide for each kg of nitrous fuel, 1 to 15
 */
public record MixtureGoal(Kind kind, double value) {

    /** What a goal counts. */
    public enum Kind {
        /** Oxygen supplied over oxygen demanded, all streams. */
        TOTAL_LAMBDA("lambda of all streams", 0.5, 1.2),
        /** Nitrous oxide over nitrous fuel, by mass. */
        CIRCUIT_RATIO("nitrous oxide over nitrous fuel, by mass", 1, 15),
        /** Oxygen of the nitrous oxide over the demand of its own fuel. */
        CIRCUIT_LAMBDA("lambda of the nitrous circuit alone", 0.5, 1.2);

        private final String words;
        private final double low;
        private final double high;

        Kind(String words, double low, double high) {
            this.words = words;
            this.low = low;
            this.high = high;
        }

        /**
         * The words a reader sees.
         *
         * @return for example {@code "lambda of all streams"}
         */
        public String words() {
            return words;
        }
    }

    public MixtureGoal {
        if (!(value >= kind.low && value <= kind.high)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "The mixture wanted, %s, is %s; allowed is %s to %s.",
                    kind.words,
                    value,
                    kind.low,
                    kind.high));
        }
    }

    /**
     * A goal for all streams together.
     *
     * @param lambda oxygen supplied over oxygen demanded, 0.5 to 1.2
     * @return the goal
     */
    public static MixtureGoal total(double lambda) {
        return new MixtureGoal(Kind.TOTAL_LAMBDA, lambda);
    }

    /**
     * A goal for the nitrous circuit alone.
     *
     * @param ratio kg of nitrous oxide for each kg of nitrous fuel, 1 to 15
     * @return the goal
     */
    public static MixtureGoal ratio(double ratio) {
        return new MixtureGoal(Kind.CIRCUIT_RATIO, ratio);
    }

    /**
     * A goal for the nitrous circuit alone.
     *
     * @param lambda oxygen of the nitrous oxide over the demand of its fuel, 0.5 to 1.2
     * @return the goal
     */
    public static MixtureGoal circuit(double lambda) {
        return new MixtureGoal(Kind.CIRCUIT_LAMBDA, lambda);
    }

    /**
     * The nitrous fuel that would meet the goal with the other streams as they are.
     *
     * @param streams the streams; their own nitrous fuel flow does not matter
     * @return flow, kg/s; not positive when the main fuel alone is richer than the goal
     */
    public double fuelFlow(Mixture streams) {
        double demand = streams.nitrousFuel().oxygenDemand();
        return switch (kind) {
            case TOTAL_LAMBDA ->
                (streams.oxygenSupplied() / value
                                - streams.mainFlow() * streams.mainFuel().oxygenDemand())
                        / demand;
            case CIRCUIT_RATIO -> streams.nitrous() / value;
            case CIRCUIT_LAMBDA -> streams.nitrous() * Oxidisers.OXYGEN_IN_NITROUS_OXIDE / (value * demand);
        };
    }

    /**
     * What the streams reach, counted as the goal counts.
     *
     * @param streams the streams
     * @return lambda or ratio
     */
    public double reached(Mixture streams) {
        return switch (kind) {
            case TOTAL_LAMBDA -> streams.lambda();
            case CIRCUIT_RATIO -> streams.nitrousOxidiserFuel();
            case CIRCUIT_LAMBDA -> streams.nitrousLambda();
        };
    }
}
