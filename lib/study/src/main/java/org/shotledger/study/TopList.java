package org.shotledger.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * The best few by one objective; equal ones by what they forgive, then by their place in the space, so that the order of arrival
 * does not matter. Margins within half a percent are equal, as in the budget: where boost is taken back, many are.
 */
final class TopList {
    private static final double SAME_MARGIN = 0.005;

    private final Objective by;
    private final int most;
    private final Comparator<Figures> worstFirst;
    private final PriorityQueue<Figures> kept;

    TopList(Objective by, int most) {
        this.by = by;
        this.most = most;
        this.worstFirst = Comparator.comparingDouble((Figures o) -> rank(by.of(o)))
                .thenComparingDouble(Figures::forgiveness)
                .thenComparing(Comparator.comparingLong(Figures::index).reversed());
        this.kept = new PriorityQueue<>(worstFirst);
    }

    private double rank(double value) {
        return by == Objective.MARGIN ? Math.floor(value / SAME_MARGIN) : by.sign() * value;
    }

    /** Whether one with this value and forgiveness could be kept. */
    boolean wants(double value, double forgiveness) {
        if (kept.size() < most) {
            return true;
        }
        Figures worst = kept.peek();
        double difference = rank(value) - rank(by.of(worst));
        return difference > 0 || (difference == 0 && forgiveness >= worst.forgiveness());
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
