package org.shotledger.plan;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.Speeds;
import org.shotledger.nitrous.ActivationWindow;

/**
 * From which engine speed the models have an answer for a shot. Nitrous oxide takes the place of air, so at low speed the compressor may pass
 * less than its map covers: there the nitrous must stay closed.
 */
final class Opening {
    /** How much of the range that the sheet gives must remain: our choice. */
    private static final double LEAST_REMAINING = 0.4;

    private Opening() {}

    /** The lowest speed above all those without an answer in any case; empty where none is missing or too little of the range is left. */
    static OptionalDouble answered(Plan plan) {
        ActivationWindow window = plan.setup().arming();
        double[] speeds = Speeds.withNitrous(plan.car(), window);
        double remaining = LEAST_REMAINING * (window.rpmHigh() - window.rpmLow());
        double missing = plan.outcomes().stream()
                .mapToDouble(outcome -> highestMissing(speeds, outcome))
                .max()
                .orElse(0);
        return missing == 0
                ? OptionalDouble.empty()
                : Arrays.stream(speeds)
                        .filter(rpm -> rpm > missing && window.rpmHigh() - rpm >= remaining)
                        .findFirst();
    }

    private static double highestMissing(double[] speeds, Outcome outcome) {
        return Speeds.missing(speeds, outcome.withNitrous()).max().orElse(0);
    }
}
