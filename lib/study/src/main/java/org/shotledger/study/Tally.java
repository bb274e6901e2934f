package org.shotledger.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Target;
import org.shotledger.study.Rank.Ranked;

/** What is kept of the combinations: counts, the best, the front. Its size does not grow with theirs. */
final class Tally {
    /** Powers are counted in steps of this share of the target, up to {@link #STEPS} of them. */
    static final double POWER_STEP = 0.01;

    /** Boxes of the front in one of those steps. */
    private static final int BOXES = (int) Math.round(POWER_STEP / Front.GRAIN);

    static final int STEPS = Skyline.BOXES / BOXES;
    /** How many of the best are held, to be worked out again. */
    private static final int MOST = 24;

    private final Target target;
    private final TreeSet<Ranked> best;
    private final Skyline skyline;
    final Front front;
    final long[] refused;
    final long[] powerKept = new long[STEPS];
    private final long[] powerRefused = new long[STEPS];
    /** What the tables have for the combinations that are compared with exact outcomes. */
    final List<Difference.Sample> samples = new ArrayList<>();

    long kept;
    long reached;
    private double nitrous;
    /** The last of the best and its score, once there are enough of them. */
    private Ranked last = new Ranked(Long.MAX_VALUE, 0, 0, Double.POSITIVE_INFINITY);

    private double worst = Double.NEGATIVE_INFINITY;

    Tally(Plan plan, Names names) {
        this.target = plan.target();
        this.best = new TreeSet<>(Rank.bestFirst(plan.target()));
        this.refused = new long[names.count()];
        double flow = plan.stated().strongest().orElseThrow().nitrous().massFlow();
        this.skyline = new Skyline(target.wheelPower());
        this.front = new Front(target.wheelPower(), flow);
    }

    /** Turns to a row. */
    void begin(double nitrousFlow) {
        nitrous = nitrousFlow;
    }

    /** Ends the row. */
    void end() {
        skyline.into(front, nitrous);
    }

    /**
     * Counts the tile at hand of a row.
     *
     * @param first number of the row's first combination
     */
    void add(Row row, long first, Circuits circuits, int tile) {
        int from = tile * Circuits.TILE;
        int size = circuits.size(tile);
        double needed = target.neededPower();
        int keep = 0;
        int reach = 0;
        for (int k = 0; k < size; k++) {
            double margin = row.margin[k];
            double power = row.power[k];
            long index = first + circuits.number()[from + k];
            int box = skyline.box(power);
            if (margin >= 0) {
                powerKept[box / BOXES]++;
                keep++;
                boolean reaches = power >= needed;
                reach += reaches ? 1 : 0;
                skyline.see(box, margin, power, index);
                double score = Rank.score(margin, power, reaches);
                if (score >= worst) {
                    offer(score, index, margin, power);
                }
            } else {
                powerRefused[box / BOXES]++;
                refused[row.limit[k]]++;
                // of those that break a limit the best are wanted only where none keeps them
                if (kept + keep == 0) {
                    offer(Rank.score(margin, power, false), index, margin, power);
                }
            }
        }
        kept += keep;
        reached += reach;
    }

    /** Of equals the one of less nitrous is better, then the first of the space. */
    private void offer(double score, long index, double margin, double power) {
        if (score > worst
                || (score == worst
                        && (nitrous < last.nitrous() || (nitrous == last.nitrous() && index < last.index())))) {
            offer(new Ranked(index, margin, power, nitrous));
        }
    }

    private void offer(Ranked ranked) {
        best.add(ranked);
        if (best.size() > MOST) {
            best.pollLast();
        }
        if (best.size() == MOST) {
            last = best.last();
            worst = Rank.score(last.margin(), last.power(), target.reachedBy(last.power()));
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
            powerRefused[i] += other.powerRefused[i];
        }
        other.best.forEach(this::offer);
        front.add(other.front);
        samples.addAll(other.samples);
    }

    /** All combinations by step of power. */
    long[] powerAll() {
        long[] all = new long[STEPS];
        Arrays.setAll(all, i -> powerKept[i] + powerRefused[i]);
        return all;
    }

    List<Ranked> best(int most) {
        return best.stream()
                .filter(ranked -> kept == 0 || ranked.margin() >= 0)
                .limit(most)
                .toList();
    }
}
