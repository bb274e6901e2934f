package org.shotledger.study;

import org.shotledger.budget.Course;

/**
 * The innermost loops of a sweep: one nitrous setting, one boost, a stretch of fuel settings. Everything is a polynomial in the
 * fuel flow, so each output of each speed costs a few multiply-adds over plain arrays. One instance serves one thread.
 */
final class RowKernel {
    static final int LONGEST = 128;

    /** Most wheel power over the speeds, W. */
    final double[] power = new double[LONGEST];
    /** Lambda at the speed of most power, where wanted. */
    final double[] lambda = new double[LONGEST];
    /** Leanest and richest mixture over the speeds, and the leanest with a part of the fuel missing. */
    final double[] leanest = new double[LONGEST];

    final double[] richest = new double[LONGEST];
    final double[] lacking = new double[LONGEST];
    /** Least margin of each limit over the speeds. */
    final double[][] margins;

    private final EngineTable table;
    private final boolean detailed;
    private final int outputs;
    private final double[] held = new double[LONGEST];
    private final double[] heldLacking = new double[LONGEST];
    private final double[] along = new double[LONGEST];
    private final double[] other = new double[LONGEST];
    private final double[] useTorque = new double[LONGEST];
    private final double[] usePeak = new double[LONGEST];
    private final double[] work = new double[LONGEST];
    private final double[] mixture = new double[LONGEST];
    private final double[] now = new double[LONGEST];

    /**
     * Prepares the arrays.
     *
     * @param table the engine side
     * @param detailed whether lambda at most power is wanted
     */
    RowKernel(EngineTable table, boolean detailed) {
        this.table = table;
        this.detailed = detailed;
        this.outputs = table.speeds[0].outputs;
        this.margins = new double[outputs - Probe.MARGINS][LONGEST];
    }

    /** Forgets the last stretch. */
    void clear(int n) {
        java.util.Arrays.fill(power, 0, n, Double.NEGATIVE_INFINITY);
        java.util.Arrays.fill(leanest, 0, n, Double.NEGATIVE_INFINITY);
        java.util.Arrays.fill(richest, 0, n, Double.POSITIVE_INFINITY);
        java.util.Arrays.fill(lacking, 0, n, Double.NEGATIVE_INFINITY);
        for (double[] margin : margins) {
            java.util.Arrays.fill(margin, 0, n, Double.POSITIVE_INFINITY);
        }
    }

    /** Begins with what another kernel has gathered. */
    void begin(RowKernel with, int n) {
        System.arraycopy(with.power, 0, power, 0, n);
        System.arraycopy(with.leanest, 0, leanest, 0, n);
        System.arraycopy(with.richest, 0, richest, 0, n);
        System.arraycopy(with.lacking, 0, lacking, 0, n);
        for (int k = 0; k < margins.length; k++) {
            System.arraycopy(with.margins[k], 0, margins[k], 0, n);
        }
    }

    /** The least of all margins, into an array. */
    void least(double[] to, int n) {
        System.arraycopy(margins[0], 0, to, 0, n);
        for (int k = 1; k < margins.length; k++) {
            Polynomials.lowest(to, margins[k], n);
        }
    }

    /** Adds one speed to the stretch. */
    void add(SpeedRow at, double[] fuel, int from, int n) {
        if (at.only != null) {
            stretch(along, fuel, from, n, at.only.fuel.to(0), at.only.fuel.slope());
            for (int k = 0; k < outputs; k++) {
                Polynomials.values(at.only.powers[k + 1], at.only.degrees[k + 1], along, work, n);
                take(k, n);
            }
            Polynomials.values(at.only.powers[outputs + 1], at.only.degrees[outputs + 1], along, work, n);
            Polynomials.highest(lacking, work, n);
            return;
        }
        stretch(held, fuel, from, n, at.offset, at.slope);
        stretch(heldLacking, fuel, from, n, at.offset, at.slope * (1 - Figures.FUEL_LOST));
        if (at.tapered) {
            choose(at, fuel, from, n);
        }
        for (int k = 0; k < outputs; k++) {
            Polynomials.values(at.powers[k], at.degrees[k], held, work, n);
            blend(at, k + 1, n);
            take(k, n);
        }
        Polynomials.values(at.powers[Probe.LAMBDA], at.degrees[Probe.LAMBDA], heldLacking, work, n);
        blend(at, outputs + 1, n);
        Polynomials.highest(lacking, work, n);
    }

    /** For each fuel setting which of the held state and the two tapered ones rules: the one of least pressure. */
    private void choose(SpeedRow at, double[] fuel, int from, int n) {
        if (at.torque != null) {
            stretch(along, fuel, from, n, at.torque.fuel.to(0), at.torque.fuel.slope());
        }
        if (at.peak != null) {
            stretch(other, fuel, from, n, at.peak.fuel.to(0), at.peak.fuel.slope());
        }
        for (int j = 0; j < n; j++) {
            boolean torque = at.torque != null && Polynomials.at(at.powers[table.torque], held[j]) < Course.RESERVE;
            boolean peak = at.peak != null && Polynomials.at(at.powers[table.peak], held[j]) < Course.RESERVE;
            boolean first = torque
                    && (!peak
                            || Polynomials.at(at.torque.powers[0], along[j])
                                    <= Polynomials.at(at.peak.powers[0], other[j]));
            useTorque[j] = first ? 1 : 0;
            usePeak[j] = peak && !first ? 1 : 0;
        }
    }

    private void blend(SpeedRow at, int k, int n) {
        if (at.tapered && at.torque != null) {
            mix(at.torque, k, along, useTorque, n);
        }
        if (at.tapered && at.peak != null) {
            mix(at.peak, k, other, usePeak, n);
        }
    }

    private void mix(TaperBranch branch, int k, double[] x, double[] use, int n) {
        Polynomials.values(branch.powers[k], branch.degrees[k], x, mixture, n);
        for (int j = 0; j < n; j++) {
            work[j] += use[j] * (mixture[j] - work[j]);
        }
    }

    private void take(int k, int n) {
        if (k == Probe.POWER && detailed) {
            System.arraycopy(work, 0, now, 0, n);
        } else if (k == Probe.POWER) {
            Polynomials.highest(power, work, n);
        } else if (k == Probe.LAMBDA) {
            Polynomials.highest(leanest, work, n);
            Polynomials.lowest(richest, work, n);
            if (detailed) {
                strongest(n);
            }
        } else {
            Polynomials.lowest(margins[k - Probe.MARGINS], work, n);
        }
    }

    private void strongest(int n) {
        for (int j = 0; j < n; j++) {
            if (now[j] > power[j]) {
                power[j] = now[j];
                lambda[j] = work[j];
            }
        }
    }

    private static void stretch(double[] to, double[] fuel, int from, int n, double offset, double slope) {
        for (int j = 0; j < n; j++) {
            to[j] = Math.max(-1, Math.min(1, offset + slope * fuel[from + j]));
        }
    }
}
