package org.shotledger.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.plan.Plan;

/** The limits of a study by number: those of operating points in the order of {@link PointLimits#margins}, then the others. */
record Names(List<String> keys, List<String> words) {
    /** Stands for an operating point that the models do not answer. */
    static final String NO_ANSWER = "no-answer";

    static Names of(Plan plan) {
        Map<String, String> words = new LinkedHashMap<>();
        PointLimits.keys().forEach(key -> words.put(key, key));
        plan.outcomes()
                .forEach(outcome -> outcome.limits().all().forEach(limit -> words.put(limit.key(), limit.name())));
        words.put(NO_ANSWER, "no answer of the models");
        return new Names(List.copyOf(words.keySet()), List.copyOf(words.values()));
    }

    int of(String key) {
        return keys.indexOf(key);
    }

    int noAnswer() {
        return keys.size() - 1;
    }

    int count() {
        return keys.size();
    }
}
