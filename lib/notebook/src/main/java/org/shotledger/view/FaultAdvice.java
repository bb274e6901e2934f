package org.shotledger.view;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shotledger.risk.Detection;
import org.shotledger.risk.Detection.Answer;
import org.shotledger.risk.Fault;
import org.shotledger.risk.FaultEffect;
import org.shotledger.risk.Faults;

/** What a person must do about the faults that no fitted sensor ends in time. Common practice, no source. */
public final class FaultAdvice {
    private FaultAdvice() {}

    /** The same in sentences, for a page without room for a table. */
    static List<String> sentences(Faults faults) {
        return byAdvice(faults).entrySet().stream()
                .map(one -> names(one.getValue()) + ": " + one.getKey())
                .toList();
    }

    private static Map<String, List<FaultEffect>> byAdvice(Faults faults) {
        return faults.uncaught().stream()
                .collect(Collectors.groupingBy(FaultAdvice::advice, LinkedHashMap::new, Collectors.toList()));
    }

    private static String names(List<FaultEffect> effects) {
        return effects.stream().map(effect -> effect.fault().name()).collect(Collectors.joining("; "));
    }

    /** What to do about one. */
    static String advice(FaultEffect effect) {
        if (effect.detection().answer() == Answer.UNSTOPPABLE) {
            return "Closing the solenoid does not end it: a second valve in series, cut by a hard-wired switch within"
                    + " reach; throttle shut, then the bottle.";
        }
        if (effect.fault().onset() == Fault.Onset.BEFORE) {
            return "No sensor reads it before it opens: two people read jets by number and side, and the fuel in each"
                    + " tank, before the bottle is opened.";
        }
        return quickest(effect.detection())
                .map(sight -> "Fit a sensor for " + sight.channel() + " that cuts: without it do not run this shot.")
                .orElse("No sensor is quick enough: measure the flow of both circuits into a vessel before the day,"
                        + " filters new, smallest jets first, stop at the first figure outside its band.");
    }

    /** The quickest of the sensors that could be added and would cut before the engine is hurt. */
    private static Optional<Detection.Sight> quickest(Detection detection) {
        return detection.couldSee().stream()
                .filter(sight -> sight.cutTime() <= detection.damageTime())
                .min(Comparator.comparingDouble(Detection.Sight::cutTime));
    }
}
