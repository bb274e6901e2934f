package org.shotledger.logs;

import org.shotledger.units.Require;

/**
 * What counts as a pull. The usual figures are our own choice, not a standard's.
 *
 * @param leastRise least rise of engine speed, rev/min per second, above 0
 * @param leastSpan least rise over the whole pull, rev/min, above 0
 * @param leastSeconds shortest pull, s, above 0
 * @param smoothing window in which the rise is taken, s, above 0
 * @param openThrottle least throttle opening, where the log has it, a fraction
 * @param fullLoad least manifold pressure as a share of the greatest in the log, where there is no throttle, a fraction
 */
public record PullRule(
        double leastRise,
        double leastSpan,
        double leastSeconds,
        double smoothing,
        double openThrottle,
        double fullLoad) {
    /** 150 rpm/s over at least 1000 rpm and 1 s, throttle at least 90 %, or 60 % of the greatest manifold pressure. */
    public static final PullRule USUAL = new PullRule(150, 1000, 1, 0.3, 0.9, 0.6);

    public PullRule {
        Require.positive("least rise of engine speed in a pull", leastRise, "rpm/s");
        Require.positive("least rise over a pull", leastSpan, "rpm");
        Require.positive("shortest pull", leastSeconds, "s");
        Require.positive("smoothing of the engine speed", smoothing, "s");
        Require.within("least throttle opening of a pull", openThrottle, 0, 1, "");
        Require.within("least load of a pull", fullLoad, 0, 1, "");
    }
}
