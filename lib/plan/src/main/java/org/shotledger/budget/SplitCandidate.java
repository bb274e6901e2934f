package org.shotledger.budget;

import org.shotledger.nitrous.JetPair;

/**
 * One way to divide the wish between boost and nitrous, with jets between the rungs of the ladder.
 *
 * @param gaugePressure boost held, above ambient, Pa
 * @param bestRpm engine speed at which the wish is met, rev/min
 * @param boostWheelPower wheel power there with the nitrous off, W
 * @param nitrousWheelPower what the nitrous adds there, W
 * @param jets the exact jets
 * @param nitrousFlow nitrous oxide through all nozzles, kg/s
 * @param leastMargin smallest relative margin of all limits over the asked band
 * @param firstLimit the limit with that margin, in words
 * @param verdict the verdict on every limit together, tight when one is inside its caution band
 */
public record SplitCandidate(
        double gaugePressure,
        double bestRpm,
        double boostWheelPower,
        double nitrousWheelPower,
        JetPair jets,
        double nitrousFlow,
        double leastMargin,
        String firstLimit,
        Verdict verdict) {}
