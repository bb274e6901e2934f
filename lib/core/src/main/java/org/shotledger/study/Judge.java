package org.shotledger.study;

import java.util.List;
import org.shotledger.build.BuilderLimits;

/** Finds the limit that is closest for one fuel setting of a stretch. */
final class Judge {
    private final EngineSide side;
    private final List<String> keys;
    private final int[] marginKeys;
    private final int lean;
    private final int rich;
    private final int cold;
    private final int pump;
    private final int speedAlone;
    private final int coldMargin;
    private final int peakMargin;
    private final double peakBound;
    private final double perLambdaHigh;
    private final double perLambdaLow;
    private double kitMargin;
    private int kitKey;
    private double least;
    private int closest;

    Judge(EngineSide side, List<String> keys) {
        this.side = side;
        this.keys = keys;
        marginKeys =
                side.table.keys.stream().mapToInt(k -> Tally.index(keys, k)).toArray();
        lean = Tally.index(keys, Figures.LEAN);
        rich = Tally.index(keys, Figures.RICH);
        cold = Tally.index(keys, Figures.COLD);
        pump = Tally.index(keys, Figures.PUMP);
        speedAlone = Tally.index(keys, Probe.SPEED_ALONE);
        coldMargin = side.table.keys.indexOf(Figures.COLD);
        peakMargin = side.table.peak - Probe.MARGINS;
        BuilderLimits limits = side.table.course.evaluator().build().limits();
        peakBound = limits.peakPressure();
        perLambdaHigh = 1 / limits.lambdaHigh();
        perLambdaLow = 1 / limits.lambdaLow();
    }

    /** Takes over what a nitrous setting answers for by itself. */
    void begin(KitTable.Nitrous nitrous) {
        kitMargin = nitrous.margin();
        kitKey = Tally.index(keys, nitrous.key());
    }

    double mixtureMargin(RowKernel from, int j) {
        return Math.min(1 - from.leanest[j] * perLambdaHigh, from.richest[j] * perLambdaLow - 1);
    }

    double forgiveness(RowKernel from, int j) {
        return 1 - from.lacking[j] * perLambdaHigh;
    }

    double peakPressure(RowKernel from, int j) {
        return peakBound * (1 - from.margins[peakMargin][j]);
    }

    /** Looks at every limit; {@link #least} and {@link #closest} tell what was found. */
    void find(RowKernel from, FuelRow.Kit kit, int setting, int j) {
        least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < marginKeys.length; k++) {
            closer(from.margins[k][j], marginKeys[k]);
        }
        closer(1 - from.leanest[j] * perLambdaHigh, lean);
        closer(from.richest[j] * perLambdaLow - 1, rich);
        closer(side.table.speedMargin, speedAlone);
        closer(kit.margins()[setting], kit.keys()[setting]);
        closer(kitMargin, kitKey);
        if (kit.limited()[setting]) {
            closest = pump;
        } else if (from.leanest[j] * perLambdaHigh > Figures.FAR_LEAN) {
            closest = lean;
        } else if (from.richest[j] * perLambdaLow < Figures.FAR_RICH) {
            closest = rich;
        } else if (from.margins[coldMargin][j] < side.table.farCold) {
            closest = cold;
        }
    }

    private void closer(double margin, int key) {
        if (margin < least) {
            least = margin;
            closest = key;
        }
    }

    double least() {
        return least;
    }

    int closest() {
        return closest;
    }
}
