package org.shotledger.study;

import java.util.Optional;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Limits;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;
import org.shotledger.study.Rank.Ranked;
import org.shotledger.units.UnitSystem;

/**
 * A combination worked out exactly.
 *
 * @param space the space it is of
 * @param index its number in the space
 * @param limits every limit of the parts over all cases, each where it is closest: those of its plan
 * @param peak the speed of most power with the nitrous open in the stated case; empty where the models have no answer
 */
public record Candidate(Space space, long index, Limits limits, Optional<OperatingPoint> peak) {

    /**
     * What is set.
     *
     * @return the setup
     */
    public Setup setup() {
        return space.setup(index);
    }

    /**
     * Its plan, worked out when it is asked for.
     *
     * @return what the setup does in every case
     */
    public Plan plan() {
        return Plan.of(space.plan().job(), setup());
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
     * @return W; 0 where the models have no answer
     */
    public double wheelPower() {
        return peak.map(OperatingPoint::wheelPower).orElse(0.0);
    }

    /**
     * Nitrous oxide flow in the stated case.
     *
     * @return kg/s; NaN where the models have no answer
     */
    public double nitrousFlow() {
        return peak.map(point -> point.nitrous().massFlow()).orElse(Double.NaN);
    }

    /**
     * Mixture of all streams at that speed.
     *
     * @return lambda; NaN where the models have no answer
     */
    public double lambda() {
        return peak.map(OperatingPoint::lambda).orElse(Double.NaN);
    }

    /**
     * Smallest relative margin of the parts' limits over all cases.
     *
     * @return a share of the bound; negative where a limit is broken
     */
    public double margin() {
        return peak.isPresent() ? limits.leastMargin() : Double.NEGATIVE_INFINITY;
    }

    /**
     * The limit that has it, with its case and place.
     *
     * @return the limit
     */
    public Limit decides() {
        return limits.first().orElseThrow();
    }

    /**
     * Whether the power asked for is reached in the stated case.
     *
     * @return true when it is
     */
    public boolean reached() {
        return space.plan().target().reachedBy(wheelPower());
    }

    Ranked ranked() {
        return new Ranked(index, margin(), wheelPower(), nitrousFlow());
    }
}
