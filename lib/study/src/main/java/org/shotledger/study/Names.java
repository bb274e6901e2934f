package org.shotledger.study;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.limits.Limit;
import org.shotledger.plan.Plan;

/** The limits of a study by number: those of operating points in the order of {@link PointLimits#margins}, then the others. */
record Names(List<String> keys, List<String> words) {
    /** Stands for an operating point that the models do not answer. */
    static final String NO_ANSWER = "no-answer";

    static Names of(Plan plan) {
        List<Limit> limits = plan.outcomes().stream()
                .filter(outcome -> !outcome.withNitrous().isEmpty())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The models answer no engine speed with nitrous of the plan of "
                        + plan.job().name() + "; a study begins at a setup that they answer."))
                .limits()
                .all();
        List<String> keys = new ArrayList<>(limits.stream().map(Limit::key).toList());
        List<String> words = new ArrayList<>(limits.stream().map(Limit::name).toList());
        keys.add(NO_ANSWER);
        words.add("no answer of the models");
        return new Names(keys, words);
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
