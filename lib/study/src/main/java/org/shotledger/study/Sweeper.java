package org.shotledger.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/** Goes through every boost and fuel setting of one nitrous setting after the other, for one thread. */
final class Sweeper {
    private static final double SAME = 1e-9;

    private final EngineSide side;
    private final List<String> keys;
    private final Tally tally;
    private final Worth worth;
    private final boolean peakWanted;
    private final RowKernel kernel;
    private final RowKernel detail;
    private final Judge judge;
    private final Judge detailJudge;
    private final List<List<TaperBranch>> torque = new ArrayList<>();
    private final List<List<TaperBranch>> peak = new ArrayList<>();
    /** By boost and speed. */
    private final SpeedRow[][] rows;

    private final String[] beyond;

    Sweeper(EngineSide side, List<String> keys, Tally tally, SweepTask task) {
        this.side = side;
        this.keys = keys;
        this.tally = tally;
        this.worth = new Worth(tally, task);
        this.peakWanted =
                task.rankBy() == Objective.PEAK_PRESSURE || task.objectives().contains(Objective.PEAK_PRESSURE);
        this.judge = new Judge(side, keys);
        this.detailJudge = new Judge(side, keys);
        this.kernel = new RowKernel(side.table);
        this.detail = new RowKernel(side.table);
        this.rows = new SpeedRow[side.boostOffsets.length][side.table.speeds.length];
        this.beyond = new String[rows.length];
        for (SpeedRow[] row : rows) {
            Arrays.setAll(row, r -> new SpeedRow(side.table.speeds[r]));
        }
    }

    /** Every boost and fuel setting with one nitrous setting. */
    void sweep(KitTable.Nitrous nitrous, BooleanSupplier stopped) {
        judge.begin(nitrous);
        detailJudge.begin(nitrous);
        for (int f = 0; f < side.fuel.size(); f++) {
            FuelRow fuel = side.fuel.get(f);
            branches(nitrous, fuel);
            for (int b = 0; b < rows.length; b++) {
                beyond[b] = place(nitrous, fuel, b);
            }
            for (int from = 0; from < fuel.length() && !stopped.getAsBoolean(); from += Stretch.LONGEST) {
                stretch(nitrous, f, from, Math.min(Stretch.LONGEST, fuel.length() - from));
            }
        }
    }

    private void branches(KitTable.Nitrous nitrous, FuelRow fuel) {
        torque.clear();
        peak.clear();
        for (int r = 0; r < side.table.speeds.length; r++) {
            torque.add(branch(r, side.table.torque, nitrous, fuel));
            peak.add(branch(r, side.table.peak, nitrous, fuel));
        }
    }

    private List<TaperBranch> branch(int speed, int load, KitTable.Nitrous nitrous, FuelRow fuel) {
        return new TaperSearch(side.table.speeds[speed], load, nitrous, fuel.shares())
                .between(fuel.lowest, fuel.highest);
    }

    /** Puts nitrous setting and boost in; the key of the limit that all of the row is far beyond, or nothing. */
    private String place(KitTable.Nitrous nitrous, FuelRow fuel, int b) {
        if (!side.onMap[b]) {
            return Figures.MAP;
        }
        for (int r = 0; r < side.table.speeds.length; r++) {
            double plenum = side.plenum[b][r];
            if (nitrous.flow() / plenum > side.table.speeds[r].nitrous.high() * (1 + SAME)) {
                return Figures.COLD;
            }
            rows[b][r].set(side.atPressure[b][r], plenum, nitrous, fuel);
        }
        return "";
    }

    /** A stretch of fuel settings under every boost. */
    private void stretch(KitTable.Nitrous nitrous, int f, int from, int n) {
        Stretch at = kernel.begin(side.fuel.get(f), from, n, torque, peak);
        boolean anyLimited = side.kits.get(f).anyLimited(at);
        for (int b = 0; b < rows.length; b++) {
            if (beyond[b].isEmpty()) {
                kernel.look(rows[b]);
                int whole = judge.beyond(kernel, anyLimited);
                if (whole == Judge.OPEN) {
                    whole = judge.judge(kernel, at, side.kits.get(f), anyLimited);
                }
                if (whole == Judge.OPEN) {
                    count(nitrous, f, b, at);
                } else {
                    tally.reject(whole, n);
                }
            } else {
                tally.reject(Tally.index(keys, beyond[b]), n);
            }
        }
    }

    private void count(KitTable.Nitrous nitrous, int f, int b, Stretch at) {
        boolean ready = false;
        boolean keeping = false;
        double[] peakMargin = kernel.least[side.table.peak];
        for (int j = 0; j < at.n; j++) {
            double least = judge.least[j];
            if (least < 0) {
                tally.reject(judge.closest(kernel, at, side.kits.get(f), j), 1);
                continue;
            }
            if (!ready) {
                keeping = prepare(nitrous, at);
                ready = true;
            }
            tally.count(kernel.power[j], least);
            if (keeping
                    && worth.keeping(
                            kernel.power[j],
                            least,
                            nitrous.flow(),
                            judge.forgiveness(kernel.lacking[j]),
                            judge.peakPressure(peakMargin[j]))) {
                tally.keep(detailed(nitrous, f, b, at.from + j));
            }
        }
    }

    /** Works out what is counted of a stretch, and what decides on keeping where one of it could be kept. */
    private boolean prepare(KitTable.Nitrous nitrous, Stretch at) {
        kernel.most(Probe.POWER, kernel.power);
        boolean keeping = worth.any(
                kernel.highestMost(Probe.POWER),
                Polynomials.most(judge.least, at.n),
                nitrous.flow(),
                judge.forgiveness(kernel.lowestMost(kernel.lackingOutput())),
                judge.peakPressure(kernel.highestLeast(side.table.peak)));
        if (keeping) {
            kernel.most(kernel.lackingOutput(), kernel.lacking);
            if (peakWanted) {
                kernel.least(side.table.peak, kernel.least[side.table.peak]);
            }
        }
        return keeping;
    }

    private Figures detailed(KitTable.Nitrous nitrous, int f, int b, int setting) {
        FuelRow fuel = side.fuel.get(f);
        Stretch at = detail.begin(fuel, setting, 1, torque, peak);
        KitMargins kit = side.kits.get(f);
        detail.look(rows[b]);
        boolean limited = kit.anyLimited(at);
        int whole = detailJudge.judge(detail, at, kit, limited);
        int strongest = detail.strongest();
        return new Figures(
                side.offset + nitrous.offset() + side.boostOffsets[b] + fuel.offsets[setting],
                detail.single(strongest, Probe.POWER),
                detail.single(strongest, Probe.LAMBDA),
                nitrous.flow(),
                judge.peakPressure(detail.lowestLeast(side.table.peak)),
                detailJudge.least[0],
                keys.get(whole == Judge.OPEN ? detailJudge.closest(detail, at, kit, 0) : whole),
                judge.forgiveness(detail.lowestMost(detail.lackingOutput())));
    }

    /** What one combination gives. */
    Figures one(long index, KitTable.Nitrous nitrous, int f, int b, int setting) {
        judge.begin(nitrous);
        detailJudge.begin(nitrous);
        branches(nitrous, side.fuel.get(f));
        String far = place(nitrous, side.fuel.get(f), b);
        return far.isEmpty() ? detailed(nitrous, f, b, setting) : Figures.far(index, far);
    }
}
