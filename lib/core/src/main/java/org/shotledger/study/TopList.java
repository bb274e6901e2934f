package org.shotledger.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/** The best few by one objective; equal ones by their place in the space, so that the order of arrival does not matter. */
final class TopList {
    private final Objective by;
    private final int most;
    private final Comparator<Figures> worstFirst;
    private final PriorityQueue<Figures> kept;

    TopList(Objective by, int most) {
        this.by = by;
        this.most = most;
        this.worstFirst = Comparator.comparingDouble((Figures o) -> by.sign() * by.of(o))
                .thenComparing(Comparator.comparingLong(Figures::index).reversed());
        this.kept = new PriorityQueue<>(worstFirst);
    }

    /** A value that is certainly not good enough any more, times the objective's sign. */
    double threshold() {
        return kept.size() < most ? Double.NEGATIVE_INFINITY : by.sign() * by.of(kept.peek());
    }

    void offer(Figures outcome) {
        if (kept.size() < most) {
            kept.add(outcome);
        } else if (worstFirst.compare(outcome, kept.peek()) > 0) {
            kept.poll();
            kept.add(outcome);
        }
    }

    /** The kept ones, best first. */
    List<Figures> all() {
        List<Figures> sorted = new ArrayList<>(kept);
        sorted.sort(worstFirst.reversed());
        return sorted;
    }
}
