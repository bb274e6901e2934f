package org.shotledger.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.shotledger.evaluate.Bottles;
import org.shotledger.evaluate.Evaluate;
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
    private final Space space;
    private final Bottles bottles = new Bottles();
    private final Map<Setup, Limits> closed = new LinkedHashMap<>();

    private Candidates(Space space, List<Long> indices) {
        this.space = space;
        List<Setup> different = indices.stream().map(this::closed).distinct().toList();
        List<Limits> limits = Pieces.of(different.size(), n -> ClosedSide.limits(space.plan(), different.get(n)));
        IntStream.range(0, different.size()).forEach(n -> closed.put(different.get(n), limits.get(n)));
    }

    /**
     * Works some out.
     *
     * @param indices numbers in the space
     * @return one a number, in that order
     */
    static List<Candidate> of(Space space, List<Long> indices) {
        Candidates all = new Candidates(space, indices);
        return Pieces.of(indices.size(), n -> all.of(indices.get(n)));
    }

    private Setup closed(long index) {
        return ClosedSide.alike(space.plan(), space.setup(index));
    }

    private Candidate of(long index) {
        Plan plan = space.plan();
        List<Outcome> open = Evaluate.open(
                bottles, plan.car(), space.setup(index), plan.job().cases());
        List<Limit> limits = new ArrayList<>(closed.get(closed(index)).all());
        open.forEach(outcome -> limits.addAll(outcome.limits().all()));
        return new Candidate(space, index, Limits.closest(limits), open.get(0).strongest());
    }
}
