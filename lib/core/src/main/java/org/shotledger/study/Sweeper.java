package org.shotledger.study;

import java.util.List;

/** Goes through every boost and fuel setting of one nitrous setting after the other, for one thread. */
final class Sweeper {
    private final EngineSide side;
    private final List<String> keys;
    private final Tally tally;
    private final SweepTask task;
    private final RowKernel kernel;
    private final SpeedRow[] rows;
    private final int[] marginKeys;
    private final int lean;
    private final int rich;
    private final int cold;
    private final int pump;
    private final int speedAlone;
    private final int coldMargin;
    private final double peakBound;
    private final double lambdaHigh;
    private final double lambdaLow;
    private final double[] candidate;
    private int nitrousKey;
    private double least;
    private int closest;

    Sweeper(EngineSide side, List<String> keys, Tally tally, SweepTask task) {
        this.side = side;
        this.keys = keys;
        this.tally = tally;
        this.task = task;
        this.kernel = new RowKernel(side.table);
        this.rows = new SpeedRow[side.table.speeds.length];
        for (int r = 0; r < rows.length; r++) {
            rows[r] = new SpeedRow(side.table.speeds[r]);
        }
        marginKeys =
                side.table.keys.stream().mapToInt(k -> Tally.index(keys, k)).toArray();
        lean = Tally.index(keys, Figures.LEAN);
        rich = Tally.index(keys, Figures.RICH);
        pump = Tally.index(keys, Figures.PUMP);
        cold = Tally.index(keys, Figures.COLD);
        speedAlone = Tally.index(keys, Probe.SPEED_ALONE);
        coldMargin = side.table.keys.indexOf(Figures.COLD);
        var limits = side.table.course.evaluator().build().limits();
        peakBound = limits.peakPressure();
        lambdaHigh = limits.lambdaHigh();
        lambdaLow = limits.lambdaLow();
        candidate = new double[task.objectives().size()];
    }

    /** Every boost and fuel setting with one nitrous setting. */
    void sweep(KitTable.Nitrous nitrous, java.util.function.BooleanSupplier stopped) {
        for (int f = 0; f < side.fuel.size(); f++) {
            begin(nitrous, side.fuel.get(f));
            for (int b = 0; b < side.boostOffsets.length && !stopped.getAsBoolean(); b++) {
                row(nitrous, f, b);
            }
        }
    }

    private void begin(KitTable.Nitrous nitrous, FuelRow fuel) {
        nitrousKey = Tally.index(keys, nitrous.key());
        for (int r = 0; r < rows.length; r++) {
            rows[r].torque = branch(r, side.table.torque, nitrous, fuel);
            rows[r].peak = branch(r, side.table.peak, nitrous, fuel);
        }
    }

    private TaperBranch branch(int speed, int load, KitTable.Nitrous nitrous, FuelRow fuel) {
        return new TaperBranch.Maker(side.table.speeds[speed], load, nitrous.enthalpy(), nitrous.flow(), fuel.shares())
                .between(fuel.lowest, fuel.highest);
    }

    private void row(KitTable.Nitrous nitrous, int f, int b) {
        FuelRow fuel = side.fuel.get(f);
        String beyond = place(nitrous, f, b);
        if (!beyond.isEmpty()) {
            reject(beyond, fuel.length());
            return;
        }
        long index = side.offset + nitrous.offset() + side.boostOffsets[b];
        for (int from = 0; from < fuel.length(); from += RowKernel.LONGEST) {
            int n = Math.min(RowKernel.LONGEST, fuel.length() - from);
            run(fuel, from, n);
            for (int j = 0; j < n; j++) {
                judge(nitrous, side.kits[f][b], from + j, j);
                count(index + fuel.offsets[from + j], nitrous, j);
            }
        }
    }

    /** Puts nitrous setting and boost in; the key of the limit that all of the row is far beyond, or nothing. */
    private String place(KitTable.Nitrous nitrous, int f, int b) {
        if (!side.onMap[b]) {
            return Figures.MAP;
        }
        for (int r = 0; r < rows.length; r++) {
            double plenum = side.plenum[b][r];
            if (nitrous.flow() / plenum > side.table.speeds[r].nitrous.high() * (1 + 1e-9)) {
                return Figures.COLD;
            }
            rows[r].set(side.table, r, side.atPressure[b][r], plenum, nitrous, side.fuel.get(f));
        }
        return "";
    }

    private void run(FuelRow fuel, int from, int n) {
        kernel.clear(n);
        for (SpeedRow row : rows) {
            kernel.add(row, fuel.flow, from, n);
        }
    }

    private void reject(String key, int count) {
        int at = Tally.index(keys, key);
        for (int j = 0; j < count; j++) {
            tally.reject(at);
        }
    }

    /** Finds the limit that is closest; it stands in {@code least} and {@code closest} afterwards. */
    private void judge(KitTable.Nitrous nitrous, FuelRow.Kit kit, int setting, int j) {
        least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < marginKeys.length; k++) {
            closer(kernel.margins[k][j], marginKeys[k]);
        }
        closer(1 - kernel.leanest[j] / lambdaHigh, lean);
        closer(kernel.richest[j] / lambdaLow - 1, rich);
        closer(side.table.speedMargin, speedAlone);
        closer(kit.margins()[setting], kit.keys()[setting]);
        closer(nitrous.margin(), nitrousKey);
        if (kit.limited()[setting]) {
            closest = pump;
        } else if (kernel.leanest[j] > Figures.FAR_LEAN * lambdaHigh) {
            closest = lean;
        } else if (kernel.richest[j] < Figures.FAR_RICH * lambdaLow) {
            closest = rich;
        } else if (kernel.margins[coldMargin][j] < side.table.farCold) {
            closest = cold;
        }
    }

    private void closer(double margin, int key) {
        if (margin < least) {
            least = margin;
            closest = key;
        }
    }

    private void count(long index, KitTable.Nitrous nitrous, int j) {
        if (least < 0) {
            tally.reject(closest);
            return;
        }
        tally.count(kernel.power[j], least);
        if (worth(kernel.power[j], nitrous.flow(), 1 - kernel.lacking[j] / lambdaHigh, peakPressure(j))) {
            tally.keep(outcome(index, nitrous, j));
        }
    }

    private Figures outcome(long index, KitTable.Nitrous nitrous, int j) {
        return new Figures(
                index,
                kernel.power[j],
                kernel.lambda[j],
                nitrous.flow(),
                peakPressure(j),
                least,
                keys.get(closest),
                1 - kernel.lacking[j] / lambdaHigh);
    }

    private double peakPressure(int j) {
        return peakBound * (1 - kernel.margins[side.table.peak - Probe.MARGINS][j]);
    }

    private boolean worth(double power, double nitrous, double forgiveness, double peak) {
        double ranked = value(task.rankBy(), power, least, nitrous, forgiveness, peak);
        if (power >= task.wanted() && task.rankBy().sign() * ranked >= tally.best.threshold()) {
            return true;
        }
        for (int i = 0; i < candidate.length; i++) {
            candidate[i] = value(task.objectives().get(i), power, least, nitrous, forgiveness, peak);
        }
        return !tally.front.betters(candidate);
    }

    private static double value(
            Objective by, double power, double margin, double nitrous, double forgiveness, double peak) {
        return switch (by) {
            case POWER -> power;
            case MARGIN -> margin;
            case NITROUS -> nitrous;
            case FORGIVENESS -> forgiveness;
            case PEAK_PRESSURE -> peak;
        };
    }

    /** What one combination gives. */
    Figures one(long index, KitTable.Nitrous nitrous, int f, int b, int setting) {
        begin(nitrous, side.fuel.get(f));
        String beyond = place(nitrous, f, b);
        if (!beyond.isEmpty()) {
            return Figures.far(index, beyond);
        }
        run(side.fuel.get(f), setting, 1);
        judge(nitrous, side.kits[f][b], setting, 0);
        return outcome(index, nitrous, 0);
    }
}
