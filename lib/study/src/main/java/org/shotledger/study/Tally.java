package org.shotledger.study;

import java.util.ArrayList;
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
    private final TreeSet<Ranked> best;
    final Front front;
    final long[] refused;
    final long[] powerKept = new long[STEPS];
    final long[] powerAll = new long[STEPS];
    /** What the tables have for the combinations that are compared with exact outcomes. */
    final List<Difference.Sample> samples = new ArrayList<>();

    long kept;
    long reached;
    private double nitrous;
    /** The last of the best, and its score. */
    private Ranked last;

    private double worst = Double.NEGATIVE_INFINITY;

    Tally(Plan plan, Names names) {
        this.target = plan.target();
        this.best = new TreeSet<>(Rank.bestFirst(plan.target()));
        this.refused = new long[names.count()];
        double flow = plan.stated().strongest().orElseThrow().nitrous().massFlow();
        this.front = new Front(target.wheelPower(), flow);
    }

    /** Turns to a row. */
    void turn(double nitrousFlow) {
        nitrous = nitrousFlow;
        front.turn(nitrousFlow);
    }

    /**
     * Counts the tile at hand of a row.
     *
     * @param first number of the row's first combination
     * @param number numbers of the circuits, those of the tile from a position on
     */
    void add(Row row, long first, int[] number, int from, int count) {
        double perWatt = 1 / (POWER_STEP * target.wheelPower());
        // neighbours lie on a slope: begun at its better end, most of them come too late for the best list and the
        // front
        boolean rising = Rank.score(row.margin[count - 1], row.power[count - 1], target)
                > Rank.score(row.margin[0], row.power[0], target);
        for (int i = 0; i < count; i++) {
            int k = rising ? count - 1 - i : i;
            double margin = row.margin[k];
            double power = row.power[k];
            int step = (int) Math.min(STEPS - 1, power * perWatt);
            powerAll[step]++;
            if (margin >= 0) {
                powerKept[step]++;
                if (target.reachedBy(power)) {
                    reached++;
                }
                kept++;
                offer(first + number[from + k], margin, power);
                if (kept == 1 || front.mayWant(margin, power)) {
                    front.offer(new Ranked(first + number[from + k], margin, power, nitrous));
                }
            } else {
                refused[row.limit[k]]++;
                // of those that break a limit the best are wanted only where none keeps them
                if (kept == 0) {
                    offer(first + number[from + k], margin, power);
                }
            }
        }
    }

    private void offer(long index, double margin, double power) {
        double score = Rank.score(margin, power, target);
        if (best.size() < MOST || score > worst || (score == worst && isBefore(index, last))) {
            offer(new Ranked(index, margin, power, nitrous));
        }
    }

    /** Among equals less nitrous is better, then the first of the space. */
    private boolean isBefore(long index, Ranked other) {
        return nitrous < other.nitrous() || (nitrous == other.nitrous() && index < other.index());
    }

    private void offer(Ranked ranked) {
        best.add(ranked);
        if (best.size() > MOST) {
            best.pollLast();
        }
        last = best.last();
        worst = Rank.score(last.margin(), last.power(), target);
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
