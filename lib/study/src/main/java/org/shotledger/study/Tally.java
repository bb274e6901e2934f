package org.shotledger.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Target;
import org.shotledger.study.Rank.Ranked;

/** What is kept of the combinations: counts, the best, the front. Its size does not grow with theirs. */
final class Tally {
    /** Powers are counted in steps of this share of the target, up to {@link #STEPS} of them. */
    static final double POWER_STEP = 0.01;

    static final int STEPS = 400;
    /** How many of the best are held, to be worked out again. */
    private static final int MOST = 24;

    private final Target target;
    private final Comparator<Ranked> bestFirst;
    private final TreeSet<Ranked> best;
    final Front front;
    final long[] refused;
    final long[] powerKept = new long[STEPS];
    final long[] powerAll = new long[STEPS];
    /** Numbers of the combinations that are compared with exact outcomes, ascending, and what the tables have for them. */
    private final long[] drawn;

    final List<Difference.Sample> samples = new ArrayList<>();
    long kept;
    long reached;

    private Tally(Plan plan, Names names, long[] drawn) {
        this.drawn = drawn;
        this.target = plan.target();
        this.bestFirst = Rank.bestFirst(plan.target());
        this.best = new TreeSet<>(bestFirst);
        this.refused = new long[names.count()];
        double flow = plan.stated().strongest().orElseThrow().nitrous().massFlow();
        this.front = new Front(target.wheelPower(), flow);
    }

    static Tally of(Space space, Names names, long[] drawn) {
        return new Tally(space.plan(), names, drawn);
    }

    /** Adds a row whose first circuit has a number. */
    void add(Row row, double nitrous, long first) {
        draw(row, first);
        for (int k = 0; k < row.margin.length; k++) {
            int step = (int) Math.min(STEPS - 1, row.power[k] / (POWER_STEP * target.wheelPower()));
            powerAll[step]++;
            if (row.margin[k] >= 0) {
                kept++;
                powerKept[step]++;
                if (target.reachedBy(row.power[k])) {
                    reached++;
                }
                Ranked ranked = new Ranked(first + k, row.margin[k], row.power[k], nitrous);
                offer(ranked);
                front.offer(ranked);
            } else {
                refused[row.limit[k]]++;
                // of those that break a limit the best are wanted only where none keeps them
                if (kept == 0) {
                    offer(new Ranked(first + k, row.margin[k], row.power[k], nitrous));
                }
            }
        }
    }

    private void draw(Row row, long first) {
        for (long index : drawn) {
            int k = (int) Math.min(Integer.MAX_VALUE, index - first);
            if (k >= 0 && k < row.margin.length) {
                samples.add(new Difference.Sample(index, row.margin[k], row.power[k], row.lambda[k]));
            }
        }
    }

    private void offer(Ranked ranked) {
        if (best.size() < MOST) {
            best.add(ranked);
        } else if (bestFirst.compare(ranked, best.last()) < 0) {
            best.pollLast();
            best.add(ranked);
        }
    }

    void add(Tally other) {
        kept += other.kept;
        reached += other.reached;
        for (int i = 0; i < refused.length; i++) {
            refused[i] += other.refused[i];
        }
        for (int i = 0; i < STEPS; i++) {
            powerKept[i] += other.powerKept[i];
            powerAll[i] += other.powerAll[i];
        }
        other.best.forEach(this::offer);
        front.add(other.front);
        samples.addAll(other.samples);
    }

    List<Ranked> best(int most) {
        return best.stream()
                .filter(ranked -> kept == 0 || ranked.margin() >= 0)
                .limit(most)
                .toList();
    }
}
