package org.shotledger.study;

import java.util.LinkedHashMap;
import java.util.Map;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;

/**
 * Some setups side by side.
 *
 * @param plans what each does in every case, by the name it was given, in that order
 */
public record SideBySide(Map<String, Plan> plans) {
    /** Setups that fit beside each other on a page. */
    private static final int MOST = 6;

    /** Keeps the order. */
    public SideBySide {
        if (plans.size() < 2 || plans.size() > MOST) {
            throw new IllegalArgumentException(
                    "A comparison has " + plans.size() + " setups; give 2 to " + MOST + ", each with its own name.");
        }
        plans = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(plans));
    }

    /**
     * Works the setups out.
     *
     * @param job the job they are for
     * @param setups two to six setups by name
     * @return the comparison
     */
    public static SideBySide of(Job job, Map<String, Setup> setups) {
        Map<String, Plan> plans = new LinkedHashMap<>();
        setups.forEach((name, setup) -> plans.put(name, Plan.of(job, setup)));
        return new SideBySide(plans);
    }

    /**
     * The setups alone.
     *
     * @return by name, in order
     */
    public Map<String, Setup> setups() {
        Map<String, Setup> setups = new LinkedHashMap<>();
        plans.forEach((name, plan) -> setups.put(name, plan.setup()));
        return setups;
    }
}
