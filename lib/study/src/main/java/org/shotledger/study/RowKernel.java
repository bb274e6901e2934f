package org.shotledger.study;

import java.util.Arrays;
import java.util.List;

/**
 * The innermost loops of a sweep: one nitrous setting, one boost, a stretch of fuel settings, over every speed. What each speed can
 * reach along the stretch is known before it is worked out, so that speeds and limits which cannot be the ones that count are left
 * out: the result is the same as that of working out all. One instance serves one thread.
 */
final class RowKernel {
    /** Most wheel power over the speeds, W. */
    final double[] power = new double[Stretch.LONGEST];
    /** Leanest and richest mixture over the speeds, and the leanest with a part of the fuel missing. */
    final double[] leanest = new double[Stretch.LONGEST];

    final double[] richest = new double[Stretch.LONGEST];
    final double[] lacking = new double[Stretch.LONGEST];
    /** Lowest and highest plenum pressure over the speeds, Pa. */
    final double[] lowestPlenum = new double[Stretch.LONGEST];

    final double[] highestPlenum = new double[Stretch.LONGEST];
    /** Least value of each output over the speeds, where it was asked for. */
    final double[][] least;

    private final int lackingOutput;
    private final SpeedStates[] speeds;
    private final Stretch at = new Stretch();
    private final double[] work = new double[Stretch.LONGEST];
    /** Bounds over the speeds of the least and the greatest value of each output, once they were asked for. */
    private final boolean[] reached;

    private final double[] lowestLeast;
    private final double[] highestLeast;
    private final double[] lowestMost;
    private final double[] highestMost;

    RowKernel(EngineTable table) {
        lackingOutput = table.speeds[0].outputs;
        int outputs = lackingOutput + 2;
        least = new double[lackingOutput][Stretch.LONGEST];
        speeds = new SpeedStates[table.speeds.length];
        Arrays.setAll(speeds, r -> new SpeedStates(table));
        reached = new boolean[outputs];
        lowestLeast = new double[outputs];
        highestLeast = new double[outputs];
        lowestMost = new double[outputs];
        highestMost = new double[outputs];
    }

    /** Begins a stretch of fuel settings; the pieces, by speed, are the same for every boost that follows. */
    Stretch begin(FuelRow fuel, int from, int n, List<List<TaperBranch>> torque, List<List<TaperBranch>> peak) {
        at.set(fuel.flow, from, n);
        for (int r = 0; r < speeds.length; r++) {
            speeds[r].begin(fuel.flow, at, torque.get(r), peak.get(r));
        }
        return at;
    }

    /** Puts a boost in. */
    void look(SpeedRow[] rows) {
        Arrays.fill(reached, false);
        for (int r = 0; r < speeds.length; r++) {
            speeds[r].look(rows[r]);
        }
    }

    /** Finds out what each speed can reach of an output. */
    private void reach(int k) {
        if (reached[k]) {
            return;
        }
        reached[k] = true;
        lowestLeast[k] = Double.POSITIVE_INFINITY;
        highestLeast[k] = Double.POSITIVE_INFINITY;
        lowestMost[k] = Double.NEGATIVE_INFINITY;
        highestMost[k] = Double.NEGATIVE_INFINITY;
        for (SpeedStates speed : speeds) {
            speed.reach(k);
            lowestLeast[k] = Math.min(lowestLeast[k], speed.low[k]);
            highestLeast[k] = Math.min(highestLeast[k], speed.high[k]);
            lowestMost[k] = Math.max(lowestMost[k], speed.low[k]);
            highestMost[k] = Math.max(highestMost[k], speed.high[k]);
        }
    }

    /** The least that the least value of an output over the speeds can be. */
    double lowestLeast(int k) {
        reach(k);
        return lowestLeast[k];
    }

    /** The greatest that it can be. */
    double highestLeast(int k) {
        reach(k);
        return highestLeast[k];
    }

    /** The least that the greatest value of an output over the speeds can be. */
    double lowestMost(int k) {
        reach(k);
        return lowestMost[k];
    }

    /** The greatest that it can be. */
    double highestMost(int k) {
        reach(k);
        return highestMost[k];
    }

    /** The output that is the plenum pressure. */
    int plenumOutput() {
        return lackingOutput + 1;
    }

    /** The output that is lambda with a part of the fuel missing. */
    int lackingOutput() {
        return lackingOutput;
    }

    /** Works out the greatest value over the speeds. */
    void most(int k, double[] to) {
        double floor = lowestMost(k);
        boolean first = true;
        for (SpeedStates speed : speeds) {
            if (speed.high[k] >= floor) {
                speed.values(k, first ? to : work);
                if (!first) {
                    Polynomials.highest(to, work, at.n);
                }
                first = false;
            }
        }
    }

    /** Works out the least value over the speeds. */
    void least(int k, double[] to) {
        double ceiling = highestLeast(k);
        boolean first = true;
        for (SpeedStates speed : speeds) {
            if (speed.low[k] <= ceiling) {
                speed.values(k, first ? to : work);
                if (!first) {
                    Polynomials.lowest(to, work, at.n);
                }
                first = false;
            }
        }
    }

    /** Number of the speed of most power, for a stretch of one setting. */
    int strongest() {
        reach(Probe.POWER);
        int best = 0;
        for (int r = 1; r < speeds.length; r++) {
            best = speeds[r].low[Probe.POWER] > speeds[best].low[Probe.POWER] ? r : best;
        }
        return best;
    }

    /** An output at a speed, for a stretch of one setting. */
    double single(int r, int k) {
        reach(k);
        return speeds[r].low[k];
    }
}
