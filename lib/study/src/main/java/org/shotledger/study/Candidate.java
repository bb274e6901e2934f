package org.shotledger.study;

import java.util.Optional;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.limits.Limit;
import org.shotledger.plan.Plan;
import org.shotledger.study.Rank.Ranked;
import org.shotledger.units.UnitSystem;

/**
 * A combination worked out exactly: its plan is that of {@link Plan#of} for its setup.
 *
 * @param space the space it is of
 * @param index its number in the space
 * @param plan what the setup does in every case
 */
public record Candidate(Space space, long index, Plan plan) {

    static Candidate of(Space space, long index) {
        return new Candidate(space, index, Plan.of(space.plan().job(), space.setup(index)));
    }

    /**
     * What distinguishes it.
     *
     * @param system the units
     * @return the values of what is varied, in words
     */
    public String name(UnitSystem system) {
        return space.words(index, system);
    }

    /**
     * Power at the wheels in the stated case.
     *
     * @return W
     */
    public double wheelPower() {
        return plan.stated().power();
    }

    /**
     * The speed of most power in the stated case.
     *
     * @return the operating point; empty where the models have no answer
     */
    public Optional<OperatingPoint> peak() {
        return plan.stated().strongest();
    }

    /**
     * Nitrous oxide flow in the stated case.
     *
     * @return kg/s; NaN where the models have no answer
     */
    public double nitrousFlow() {
        return peak().map(point -> point.nitrous().massFlow()).orElse(Double.NaN);
    }

    /**
     * Mixture of all streams at that speed.
     *
     * @return lambda; NaN where the models have no answer
     */
    public double lambda() {
        return peak().map(OperatingPoint::lambda).orElse(Double.NaN);
    }

    /**
     * Smallest relative margin of the parts' limits over all cases.
     *
     * @return a share of the bound; negative where a limit is broken
     */
    public double margin() {
        return peak().isPresent() ? plan.parts().leastMargin() : Double.NEGATIVE_INFINITY;
    }

    /**
     * The limit that has it, with its case and place.
     *
     * @return the limit
     */
    public Limit decides() {
        return plan.parts().first().orElseThrow();
    }

    Ranked ranked() {
        return new Ranked(index, margin(), wheelPower(), nitrousFlow());
    }
}
