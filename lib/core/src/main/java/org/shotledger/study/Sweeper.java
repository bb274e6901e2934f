package org.shotledger.study;

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
    private final RowKernel kernel;
    /** What the speeds give at which one branch rules for a whole stretch, the same for every boost above it. */
    private final RowKernel common;

    private final RowKernel detail;
    private final TaperBranch[] gathered;
    private final TaperBranch[] torque;
    private final TaperBranch[] peak;
    /** By boost and speed. */
    private final SpeedRow[][] rows;

    private final String[] beyond;
    private final double[] leastOfEngine = new double[RowKernel.LONGEST];
    private final Judge judge;

    Sweeper(EngineSide side, List<String> keys, Tally tally, SweepTask task) {
        this.side = side;
        this.keys = keys;
        this.tally = tally;
        this.worth = new Worth(tally, task);
        this.judge = new Judge(side, keys);
        this.kernel = new RowKernel(side.table, false);
        this.common = new RowKernel(side.table, false);
        this.detail = new RowKernel(side.table, true);
        int speeds = side.table.speeds.length;
        this.gathered = new TaperBranch[speeds];
        this.torque = new TaperBranch[speeds];
        this.peak = new TaperBranch[speeds];
        this.rows = new SpeedRow[side.boostOffsets.length][speeds];
        this.beyond = new String[rows.length];
        for (SpeedRow[] row : rows) {
            Arrays.setAll(row, r -> new SpeedRow(side.table.speeds[r]));
        }
    }

    /** Every boost and fuel setting with one nitrous setting. */
    void sweep(KitTable.Nitrous nitrous, BooleanSupplier stopped) {
        judge.begin(nitrous);
        for (int f = 0; f < side.fuel.size(); f++) {
            FuelRow fuel = side.fuel.get(f);
            branches(nitrous, fuel);
            for (int b = 0; b < rows.length; b++) {
                beyond[b] = place(nitrous, fuel, b);
            }
            for (int from = 0; from < fuel.length() && !stopped.getAsBoolean(); from += RowKernel.LONGEST) {
                stretch(nitrous, f, from, Math.min(RowKernel.LONGEST, fuel.length() - from));
            }
        }
    }

    private void branches(KitTable.Nitrous nitrous, FuelRow fuel) {
        for (int r = 0; r < torque.length; r++) {
            torque[r] = branch(r, side.table.torque, nitrous, fuel);
            peak[r] = branch(r, side.table.peak, nitrous, fuel);
        }
    }

    private TaperBranch branch(int speed, int load, KitTable.Nitrous nitrous, FuelRow fuel) {
        return new TaperBranch.Maker(side.table.speeds[speed], load, nitrous.enthalpy(), nitrous.flow(), fuel.shares())
                .between(fuel.lowest, fuel.highest);
    }

    /** Puts nitrous setting and boost in; the key of the limit that all of the row is far beyond, or nothing. */
    private String place(KitTable.Nitrous nitrous, FuelRow fuel, int b) {
        if (!side.onMap[b]) {
            return Figures.MAP;
        }
        for (int r = 0; r < torque.length; r++) {
            double plenum = side.plenum[b][r];
            if (nitrous.flow() / plenum > side.table.speeds[r].nitrous.high() * (1 + SAME)) {
                return Figures.COLD;
            }
            rows[b][r].torque = torque[r];
            rows[b][r].peak = peak[r];
            rows[b][r].set(side.table, r, side.atPressure[b][r], plenum, nitrous, fuel);
        }
        return "";
    }

    /** A stretch of fuel settings under every boost; speeds at which boost is taken back for all of them are gathered once. */
    private void stretch(KitTable.Nitrous nitrous, int f, int from, int n) {
        Arrays.fill(gathered, null);
        common.clear(n);
        for (int b = 0; b < rows.length; b++) {
            if (beyond[b].isEmpty()) {
                gather(rows[b], side.fuel.get(f), from, n);
                count(nitrous, f, b, from, n);
            } else {
                tally.reject(Tally.index(keys, beyond[b]), n);
            }
        }
    }

    private void gather(SpeedRow[] at, FuelRow fuel, int from, int n) {
        for (int r = 0; r < at.length; r++) {
            if (gathered[r] != null && gathered[r] != at[r].only) {
                Arrays.fill(gathered, null);
                common.clear(n);
            }
        }
        for (int r = 0; r < at.length; r++) {
            if (at[r].only != null && gathered[r] == null) {
                common.add(at[r], fuel.flow, from, n);
                gathered[r] = at[r].only;
            }
        }
        kernel.begin(common, n);
        for (SpeedRow row : at) {
            if (row.only == null) {
                kernel.add(row, fuel.flow, from, n);
            }
        }
        kernel.least(leastOfEngine, n);
    }

    private void count(KitTable.Nitrous nitrous, int f, int b, int from, int n) {
        FuelRow.Kit kit = side.kits[f][b];
        double alone = Math.min(side.table.speedMargin, nitrous.margin());
        for (int j = 0; j < n; j++) {
            double least = Math.min(
                    Math.min(leastOfEngine[j], judge.mixtureMargin(kernel, j)),
                    Math.min(alone, kit.margins()[from + j]));
            if (least < 0) {
                judge.find(kernel, kit, from + j, j);
                tally.reject(judge.closest(), 1);
                continue;
            }
            tally.count(kernel.power[j], least);
            if (worth.keeping(
                    kernel.power[j],
                    least,
                    nitrous.flow(),
                    judge.forgiveness(kernel, j),
                    judge.peakPressure(kernel, j))) {
                tally.keep(detailed(nitrous, f, b, from + j));
            }
        }
    }

    private Figures detailed(KitTable.Nitrous nitrous, int f, int b, int setting) {
        FuelRow fuel = side.fuel.get(f);
        detail.clear(1);
        for (SpeedRow row : rows[b]) {
            detail.add(row, fuel.flow, setting, 1);
        }
        judge.find(detail, side.kits[f][b], setting, 0);
        return new Figures(
                side.offset + nitrous.offset() + side.boostOffsets[b] + fuel.offsets[setting],
                detail.power[0],
                detail.lambda[0],
                nitrous.flow(),
                judge.peakPressure(detail, 0),
                judge.least(),
                keys.get(judge.closest()),
                judge.forgiveness(detail, 0));
    }

    /** What one combination gives. */
    Figures one(long index, KitTable.Nitrous nitrous, int f, int b, int setting) {
        judge.begin(nitrous);
        branches(nitrous, side.fuel.get(f));
        String far = place(nitrous, side.fuel.get(f), b);
        return far.isEmpty() ? detailed(nitrous, f, b, setting) : Figures.far(index, far);
    }
}
