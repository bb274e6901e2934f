package org.shotledger.plan;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.Speeds;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.setup.Setup;

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
        double missing = plan.outcomes().stream()
                .mapToDouble(outcome -> highestMissing(speeds, outcome))
                .max()
                .orElse(0);
        return missing == 0
                ? OptionalDouble.empty()
                : Arrays.stream(speeds).filter(rpm -> rpm > missing).findFirst().stream()
                        .filter(rpm -> window.rpmHigh() - rpm >= LEAST_REMAINING * (window.rpmHigh() - window.rpmLow()))
                        .findFirst();
    }

    private static double highestMissing(double[] speeds, Outcome outcome) {
        Set<Double> answered =
                outcome.withNitrous().stream().map(OperatingPoint::rpm).collect(Collectors.toSet());
        return Arrays.stream(speeds)
                .filter(rpm -> !answered.contains(rpm))
                .max()
                .orElse(0);
    }

    static Setup from(Setup setup, double rpm) {
        return setup.withArming(new ActivationWindow(rpm, setup.arming().rpmHigh()));
    }
}
