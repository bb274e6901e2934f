package org.shotledger.study;

import java.util.List;

/** What is kept of a sweep while it runs: counts, histograms, the best and the front. Its size does not grow with the sweep. */
final class Tally {
    /** Margin the best must have in hand, so that the tables' error does not put them beyond a limit. */
    static final double IN_HAND = 0.002;

    final long[] brokeFirst;
    final Histogram power;
    final Histogram margin = new Histogram(-0.5, 0.5, 100);
    final TopList best;
    final Front front;
    long evaluated;
    long accepted;
    long reached;

    private final double wanted;

    Tally(int keys, SweepTask task) {
        this.brokeFirst = new long[keys];
        this.wanted = task.wanted();
        this.power = new Histogram(0, 2 * wanted, 200);
        this.best = new TopList(task.rankBy(), task.best());
        this.front = new Front(task.objectives());
    }

    /** Counts combinations whose limit number {@code key} is broken and closest. */
    void reject(int key, int count) {
        evaluated += count;
        brokeFirst[key] += count;
    }

    /** Counts one that keeps every limit. */
    void count(double wheelPower, double leastMargin) {
        evaluated++;
        accepted++;
        power.add(wheelPower);
        margin.add(leastMargin);
        if (wheelPower >= wanted) {
            reached++;
        }
    }

    /** Offers one to the front and, when it reaches the wanted power, to the best. */
    void keep(Figures outcome) {
        if (outcome.wheelPower() >= wanted && outcome.leastMargin() >= IN_HAND) {
            best.offer(outcome);
        }
        front.offer(outcome);
    }

    void join(Tally other) {
        for (int k = 0; k < brokeFirst.length; k++) {
            brokeFirst[k] += other.brokeFirst[k];
        }
        evaluated += other.evaluated;
        accepted += other.accepted;
        reached += other.reached;
        power.join(other.power);
        margin.join(other.margin);
        other.best.all().forEach(best::offer);
        other.front.all().forEach(front::offer);
    }

    static int index(List<String> keys, String key) {
        int at = keys.indexOf(key);
        if (at < 0) {
            throw new IllegalStateException("The sweep has no limit named " + key + "; it has " + keys + ".");
        }
        return at;
    }
}
