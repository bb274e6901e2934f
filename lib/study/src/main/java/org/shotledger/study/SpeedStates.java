package org.shotledger.study;

import java.util.Arrays;
import java.util.List;
import org.shotledger.budget.Course;

/**
 * One speed along a stretch of fuel settings: which state rules, boost held or one of the pieces along which it is taken back, and
 * what each output can reach.
 */
final class SpeedStates {
    private static final int HELD = -1;
    private static final int CHANGES = -2;

    /** What each output can reach, once it was asked for. */
    final double[] low;

    final double[] high;

    private final int outputs;
    private final int lackingOutput;
    private final int plenumOutput;
    private final int torqueLoad;
    private final int peakLoad;
    private final State held;
    private final double[] work = new double[Stretch.LONGEST];
    private final double[] other = new double[Stretch.LONGEST];
    private double[] flow;
    private Stretch at;
    /** Where torque, and where peak pressure, keeps its reserve. */
    private List<TaperBranch> torque;

    private List<TaperBranch> peak;
    /** The pieces of torque, then of peak pressure, that were asked for along the stretch. */
    private State[] taken;
    /** Number of the piece that rules along the whole stretch, or HELD, or CHANGES. */
    private int ruling;
    /** Where it changes, by setting: 0 where boost is held, or 1 and the number of the piece. */
    private final int[] ruler = new int[Stretch.LONGEST];
    /** Where it changes, whether a piece rules some setting. */
    private boolean[] involved;

    private SpeedRow row;

    SpeedStates(EngineTable table) {
        lackingOutput = table.speeds[0].outputs;
        plenumOutput = lackingOutput + 1;
        outputs = lackingOutput + 2;
        torqueLoad = table.torque;
        peakLoad = table.peak;
        held = new State(outputs);
        low = new double[outputs];
        high = new double[outputs];
    }

    /** Begins a stretch; the pieces are the same for every boost that follows. */
    void begin(double[] flows, Stretch stretch, List<TaperBranch> torquePieces, List<TaperBranch> peakPieces) {
        flow = flows;
        at = stretch;
        torque = torquePieces;
        peak = peakPieces;
        taken = new State[torque.size() + peak.size()];
        involved = new boolean[taken.length];
    }

    /** Puts a boost in and finds out which state rules. */
    void look(SpeedRow of) {
        row = of;
        held.lay(row.offset, row.slope, 1 - Figures.FUEL_LOST, at);
        held.put(torqueLoad, row.powers(torqueLoad));
        held.put(peakLoad, row.powers(peakLoad));
        ruling = rule(over(torqueLoad, torque), over(peakLoad, peak));
        if (ruling == CHANGES) {
            mix();
        }
    }

    /** Number of the piece along which a load has boost taken back on the whole stretch, or HELD, or CHANGES. */
    private int over(int load, List<TaperBranch> pieces) {
        if (held.low[load] >= Course.RESERVE) {
            return HELD;
        }
        int whole = whole(pieces);
        if (whole >= 0) {
            return held.high[load] < Course.RESERVE ? whole : CHANGES;
        }
        boolean touched = pieces.stream().anyMatch(p -> p.fuel.low() <= at.high() && p.fuel.high() >= at.low());
        return touched ? CHANGES : HELD;
    }

    private int rule(int byTorque, int byPeak) {
        if (byTorque == CHANGES || byPeak == CHANGES) {
            return CHANGES;
        }
        int second = byPeak == HELD ? HELD : torque.size() + byPeak;
        if (byTorque == HELD || second == HELD) {
            int only = Math.max(byTorque, second);
            if (only != HELD) {
                take(only);
            }
            return only;
        }
        take(byTorque);
        take(second);
        if (taken[byTorque].high[plenumOutput] <= taken[second].low[plenumOutput]) {
            return byTorque;
        }
        return taken[second].high[plenumOutput] < taken[byTorque].low[plenumOutput] ? second : CHANGES;
    }

    private void take(int i) {
        if (taken[i] == null) {
            taken[i] = new State(outputs);
            Scale fuel = piece(i).fuel;
            taken[i].lay(fuel.to(0), fuel.slope(), 1, at);
            putTaken(i, plenumOutput);
        }
    }

    private TaperBranch piece(int i) {
        return i < torque.size() ? torque.get(i) : peak.get(i - torque.size());
    }

    /** For each setting the state of least pressure among those that the loads ask for. */
    private void mix() {
        Arrays.fill(involved, false);
        values(held, torqueLoad, work);
        values(held, peakLoad, other);
        int wholeTorque = whole(torque);
        int wholePeak = whole(peak);
        for (int j = 0; j < at.n; j++) {
            int one = work[j] < Course.RESERVE ? piece(torque, wholeTorque, j) : HELD;
            int two = other[j] < Course.RESERVE ? piece(peak, wholePeak, j) : HELD;
            if (two >= 0 && (one < 0 || pressure(torque.size() + two, j) < pressure(one, j))) {
                one = torque.size() + two;
            }
            ruler[j] = one + 1;
            if (one >= 0 && !involved[one]) {
                take(one);
                involved[one] = true;
            }
        }
    }

    private double pressure(int i, int j) {
        take(i);
        return Polynomials.at(taken[i].powers[plenumOutput], at.t[j]);
    }

    /** The piece that covers the whole stretch, negative where none does. */
    private int whole(List<TaperBranch> pieces) {
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i).covers(at.low()) && pieces.get(i).covers(at.high())) {
                return i;
            }
        }
        return HELD;
    }

    /** The piece at a setting, negative where there is none. */
    private int piece(List<TaperBranch> pieces, int whole, int j) {
        for (int i = 0; whole < 0 && i < pieces.size(); i++) {
            if (pieces.get(i).covers(flow[at.from + j])) {
                return i;
            }
        }
        return whole;
    }

    /** Finds out what an output can reach. */
    void reach(int k) {
        if (ruling >= 0) {
            putTaken(ruling, k);
            low[k] = taken[ruling].low[k];
            high[k] = taken[ruling].high[k];
            return;
        }
        putHeld(k);
        low[k] = held.low[k];
        high[k] = held.high[k];
        for (int i = 0; ruling == CHANGES && i < taken.length; i++) {
            if (involved[i]) {
                putTaken(i, k);
                low[k] = Math.min(low[k], taken[i].low[k]);
                high[k] = Math.max(high[k], taken[i].high[k]);
            }
        }
    }

    private void putTaken(int i, int k) {
        if (!taken[i].knows(k)) {
            taken[i].put(k, piece(i).powers(k));
        }
    }

    private void putHeld(int k) {
        if (k == plenumOutput) {
            held.putConstant(k, row.plenum);
        } else if (!held.knows(k)) {
            held.put(k, row.powers(k == lackingOutput ? Probe.LAMBDA : k));
        }
    }

    /** An output at every setting, after it was reached. */
    void values(int k, double[] to) {
        if (ruling >= 0) {
            values(taken[ruling], k, to);
            return;
        }
        values(held, k, to);
        for (int i = 0; ruling == CHANGES && i < taken.length; i++) {
            if (involved[i]) {
                values(taken[i], k, other);
                for (int j = 0; j < at.n; j++) {
                    to[j] = ruler[j] == i + 1 ? other[j] : to[j];
                }
            }
        }
    }

    private void values(State state, int k, double[] to) {
        Polynomials.values(state.powers[k], state.degrees[k], state.places(k, at), to, at.n);
    }
}
