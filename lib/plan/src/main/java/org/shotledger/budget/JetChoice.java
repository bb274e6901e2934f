package org.shotledger.budget;

import java.util.List;
import org.shotledger.nitrous.JetPair;

/**
 * The jets: the sizes the physics asks for, and the pairs on the ladder around them with what each really gives.
 *
 * @param nozzles number of nozzles, each with the same pair
 * @param exact the sizes that meet the wish exactly, between the rungs of the ladder
 * @param options pairs on the ladder, the recommended one first
 */
public record JetChoice(int nozzles, JetPair exact, List<Option> options) {

    /** Copies the list. */
    public JetChoice {
        options = List.copyOf(options);
    }

    /**
     * One pair of the ladder.
     *
     * @param pair hole diameters
     * @param nitrousFlow nitrous oxide through all nozzles, kg/s
     * @param fuelFlow nitrous fuel through all nozzles, kg/s
     * @param circuitRatio nitrous oxide over nitrous fuel, by mass
     * @param lambda oxygen supplied over oxygen demanded, all streams
     * @param wheelPower best wheel power in the asked band, W
     * @param leastMargin smallest relative margin of all limits over the band
     * @param firstLimit the limit with that margin, in words
     */
    public record Option(
            JetPair pair,
            double nitrousFlow,
            double fuelFlow,
            double circuitRatio,
            double lambda,
            double wheelPower,
            double leastMargin,
            String firstLimit) {}

    /**
     * The recommended pair.
     *
     * @return the first option
     */
    public Option chosen() {
        return options.get(0);
    }
}
