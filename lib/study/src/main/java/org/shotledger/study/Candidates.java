package org.shotledger.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.evaluate.Bottles;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Limits;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;

/**
 * Combinations of a space worked out exactly. What several have in common is worked out once: the bottle, and the limits with the
 * nitrous closed.
 */
final class Candidates {
    /** What an exact outcome depends on. */
    private record Exactly(Setup setup) {}

    private record Judged(Limits limits, Optional<OperatingPoint> peak) {}

    private final Space space;
    private final Bottles bottles = new Bottles();

    private Candidates(Space space) {
        this.space = space;
    }

    /**
     * Works some out.
     *
     * @param indices numbers in the space
     * @return one a number, in that order
     */
    static List<Candidate> of(Space space, List<Long> indices) {
        Plan plan = space.plan();
        List<Setup> closed = indices.stream()
                .map(index -> ClosedSide.alike(plan, space.setup(index)))
                .distinct()
                .toList();
        Pieces.of(closed.size(), n -> ClosedSide.limits(plan, closed.get(n)));
        Candidates all = new Candidates(space);
        return Pieces.of(indices.size(), n -> all.of(indices.get(n)));
    }

    private Candidate of(long index) {
        Setup setup = space.setup(index);
        Judged judged = space.plan().known().of(new Exactly(setup), () -> judged(setup));
        return new Candidate(space, index, judged.limits, judged.peak);
    }

    private Judged judged(Setup setup) {
        Plan plan = space.plan();
        List<Outcome> open =
                Evaluate.open(bottles, plan.car(), setup, plan.job().cases());
        List<Limit> limits = new ArrayList<>(ClosedSide.limits(plan, setup).all());
        open.forEach(outcome -> limits.addAll(outcome.limits().all()));
        return new Judged(Limits.closest(limits), open.get(0).strongest());
    }
}
