package org.shotledger.study;

import java.util.Arrays;
import java.util.List;
import org.shotledger.build.BuilderLimits;

/** Holds a stretch of fuel settings against every limit: the least margin of each setting, and which limit it belongs to. */
final class Judge {
    /** Said where settings of a stretch differ. */
    static final int OPEN = -1;

    /** Least margin of each setting, where it was worked out. */
    final double[] least = new double[Stretch.LONGEST];

    private final int[] marginKeys;
    private final List<String> keys;
    private final int lean;
    private final int rich;
    private final int cold;
    private final int pump;
    private final int speedAlone;
    private final int coldMargin;
    private final double peakBound;
    private final double perLambdaHigh;
    private final double perLambdaLow;
    private final double farCold;
    private final double speedMargin;
    /** Limits of the engine that can be the closest somewhere along the stretch. */
    private final int[] active;

    private int actives;
    private boolean anyLimited;
    /** The one limit that can be the closest along the stretch. */
    private int only;

    private boolean kitActive;
    private boolean leanActive;
    private boolean richActive;
    private final double[] kitMargin = new double[Stretch.LONGEST];
    private double aloneMargin;
    private int aloneKey;

    Judge(EngineSide side, List<String> keys) {
        this.keys = keys;
        marginKeys =
                side.table.keys.stream().mapToInt(k -> Tally.index(keys, k)).toArray();
        active = new int[marginKeys.length];
        lean = Tally.index(keys, Figures.LEAN);
        rich = Tally.index(keys, Figures.RICH);
        cold = Tally.index(keys, Figures.COLD);
        pump = Tally.index(keys, Figures.PUMP);
        speedAlone = Tally.index(keys, Probe.SPEED_ALONE);
        coldMargin = side.table.keys.indexOf(Figures.COLD);
        farCold = side.table.farCold;
        speedMargin = side.table.speedMargin;
        BuilderLimits limits = side.table.course.evaluator().build().limits();
        peakBound = limits.peakPressure();
        perLambdaHigh = 1 / limits.lambdaHigh();
        perLambdaLow = 1 / limits.lambdaLow();
    }

    /** Takes over what a nitrous setting answers for by itself. */
    void begin(KitTable.Nitrous nitrous) {
        boolean speed = speedMargin <= nitrous.margin();
        aloneMargin = speed ? speedMargin : nitrous.margin();
        aloneKey = speed ? speedAlone : Tally.index(keys, nitrous.key());
    }

    double peakPressure(double margin) {
        return peakBound * (1 - margin);
    }

    double forgiveness(double lambda) {
        return 1 - lambda * perLambdaHigh;
    }

    /** The limit of the mixture that a whole stretch is so far beyond that nothing else counts, or {@link #OPEN}. */
    int beyond(RowKernel from, boolean anyLimited) {
        if (anyLimited) {
            return OPEN;
        }
        if (perLambdaHigh * from.lowestMost(Probe.LAMBDA) > Figures.FAR_LEAN) {
            return lean;
        }
        if (perLambdaHigh * from.highestMost(Probe.LAMBDA) > Figures.FAR_LEAN) {
            return OPEN;
        }
        return perLambdaLow * from.highestLeast(Probe.LAMBDA) < Figures.FAR_RICH ? rich : OPEN;
    }

    /**
     * Works out every margin that can be the least of some setting.
     *
     * @return number of the limit that is broken and closest for the whole stretch, where the bounds tell it, or {@link #OPEN}
     */
    int judge(RowKernel from, Stretch at, KitMargins kit, boolean anyLimitedAlong) {
        anyLimited = anyLimitedAlong;
        double leanestLow = perLambdaHigh * from.lowestMost(Probe.LAMBDA);
        double leanestHigh = perLambdaHigh * from.highestMost(Probe.LAMBDA);
        double richestLow = perLambdaLow * from.lowestLeast(Probe.LAMBDA);
        double richestHigh = perLambdaLow * from.highestLeast(Probe.LAMBDA);
        double bound = Math.min(aloneMargin, Math.min(1 - leanestLow, richestHigh - 1));
        for (int k = 0; k < marginKeys.length; k++) {
            bound = Math.min(bound, from.highestLeast(Probe.MARGINS + k));
        }
        int plenum = from.plenumOutput();
        kitActive = anyLimited || kit.lowest(at, from.lowestLeast(plenum), from.highestMost(plenum)) <= bound;
        if (kitActive) {
            kit(from, at, kit);
            bound = Math.min(bound, Polynomials.most(kitMargin, at.n));
        }
        boolean far = anyLimited || leanestHigh > Figures.FAR_LEAN || richestLow < Figures.FAR_RICH;
        actives = 0;
        for (int k = 0; k < marginKeys.length; k++) {
            double lowest = from.lowestLeast(Probe.MARGINS + k);
            boolean farther = k == coldMargin && lowest < farCold;
            far |= farther;
            if (lowest <= bound || farther) {
                active[actives++] = k;
            }
        }
        leanActive = 1 - leanestHigh <= bound || leanestHigh > Figures.FAR_LEAN;
        richActive = richestLow - 1 <= bound || richestLow < Figures.FAR_RICH;
        only = far || kitActive || aloneMargin <= bound ? OPEN : only();
        if (only != OPEN && bound < 0) {
            // a stretch of one setting reaches one value, so that the bound is its least margin
            least[0] = bound;
            return only;
        }
        settings(from, at);
        return OPEN;
    }

    private int only() {
        if (actives + (leanActive ? 1 : 0) + (richActive ? 1 : 0) != 1) {
            return OPEN;
        }
        return leanActive ? lean : richActive ? rich : marginKeys[active[0]];
    }

    private void settings(RowKernel from, Stretch at) {
        for (int j = 0; j < at.n; j++) {
            least[j] = kitActive ? Math.min(aloneMargin, kitMargin[j]) : aloneMargin;
        }
        for (int i = 0; i < actives; i++) {
            int k = Probe.MARGINS + active[i];
            from.least(k, from.least[k]);
            Polynomials.lowest(least, from.least[k], at.n);
        }
        if (leanActive) {
            from.most(Probe.LAMBDA, from.leanest);
            for (int j = 0; j < at.n; j++) {
                least[j] = Math.min(least[j], 1 - from.leanest[j] * perLambdaHigh);
            }
        }
        if (richActive) {
            from.least(Probe.LAMBDA, from.richest);
            for (int j = 0; j < at.n; j++) {
                least[j] = Math.min(least[j], from.richest[j] * perLambdaLow - 1);
            }
        }
    }

    /** Margins of the limits that the fuel settings answer for. */
    private void kit(RowKernel from, Stretch at, KitMargins kit) {
        int k = from.plenumOutput();
        Arrays.fill(kitMargin, 0, at.n, Double.POSITIVE_INFINITY);
        if (from.lowestLeast(k) == from.highestLeast(k)) {
            Arrays.fill(from.lowestPlenum, 0, at.n, from.lowestLeast(k));
            kit.lower(kitMargin, at, from.lowestLeast(k));
        } else {
            from.least(k, from.lowestPlenum);
            kit.lower(kitMargin, at, from.lowestPlenum);
        }
        if (from.lowestMost(k) == from.highestMost(k)) {
            Arrays.fill(from.highestPlenum, 0, at.n, from.lowestMost(k));
            kit.lower(kitMargin, at, from.lowestMost(k));
        } else {
            from.most(k, from.highestPlenum);
            kit.lower(kitMargin, at, from.highestPlenum);
        }
    }

    /** The limit that is closest for one setting of the stretch, or so far passed that nothing else counts. */
    int closest(RowKernel from, Stretch at, KitMargins kit, int j) {
        return only == OPEN ? compared(from, at, kit, j) : only;
    }

    private int compared(RowKernel from, Stretch at, KitMargins kit, int j) {
        double leanest = from.leanest[j] * perLambdaHigh;
        double richest = from.richest[j] * perLambdaLow;
        int setting = at.from + j;
        if (anyLimited && kit.limited(setting, from.lowestPlenum[j], from.highestPlenum[j])) {
            return pump;
        }
        if (leanActive && leanest > Figures.FAR_LEAN) {
            return lean;
        }
        if (richActive && richest < Figures.FAR_RICH) {
            return rich;
        }
        double margin = aloneMargin;
        int found = aloneKey;
        for (int i = 0; i < actives; i++) {
            double candidate = from.least[Probe.MARGINS + active[i]][j];
            if (active[i] == coldMargin && candidate < farCold) {
                return cold;
            }
            if (candidate < margin) {
                margin = candidate;
                found = marginKeys[active[i]];
            }
        }
        if (leanActive && 1 - leanest < margin) {
            margin = 1 - leanest;
            found = lean;
        }
        if (richActive && richest - 1 < margin) {
            margin = richest - 1;
            found = rich;
        }
        return kitActive && kitMargin[j] < margin
                ? kit.key(setting, from.lowestPlenum[j], from.highestPlenum[j])
                : found;
    }
}
