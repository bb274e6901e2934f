package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.budget.Limit;
import org.shotledger.budget.Limits;
import org.shotledger.units.Require;

/**
 * The largest symmetric excursion: how far bottle pressure, nitrous fuel pressure and boost may all stray at once, each by the
 * same number of half-widths of its expected band in the worst direction, before a limit breaks.
 *
 * <p>The box is held at its eight corners and the middles of its six sides; mixture, pressure and flows run one way with each
 * input, so the worst lies there. The bottle is followed only inside the pressures between which the nitrous is opened at
 * all, the builder's and that of the warmest liquid: a gate is no excursion. The boost table stays as planned.
 *
 * @param size half-widths, in steps of 0.02, at most 8; 0 when the plan itself just holds, negative when it breaks a limit
 * @param stoppedBy the limit that breaks one step further, or why the models end there; empty when none does up to 8
 */
public record Excursion(double size, String stoppedBy) {
    private static final double STEP = 0.02;
    private static final int MOST = 400;
    /** A saturated state gives its pressure back within this. */
    private static final double ROUND_TRIP = 1e-9;

    /**
     * Finds the excursion of all three inputs.
     *
     * @param drift the model
     * @return the largest excursion
     */
    public static Excursion of(Drift drift) {
        return new Box(drift, true).largest();
    }

    /**
     * Finds the excursion of bottle and fuel pressure with the boost as planned.
     *
     * @param drift the model
     * @return the largest excursion
     */
    public static Excursion withBoostHeld(Drift drift) {
        return new Box(drift, false).largest();
    }

    /**
     * Tells whether every limit is kept at corners and sides of a box.
     *
     * @param drift the model
     * @param size half-widths, 0 or more
     * @return true when all are kept
     */
    public static boolean holds(Drift drift, double size) {
        return new Box(drift, true)
                .worst(Require.notNegative("excursion", size, "half-widths"))
                .isEmpty();
    }

    /** Whether an excursion of so many steps holds, for a search that only asks about better ones. */
    static boolean holds(Drift drift, boolean withBoost, int steps) {
        return steps < 0 || new Box(drift, withBoost).worst(steps * STEP).isEmpty();
    }

    int steps() {
        return (int) Math.round(size / STEP);
    }

    /** The corners and sides, the one that broke last asked first. */
    private static final class Box {
        private final Drift drift;
        private final double low;
        private final double high;
        private final List<int[]> directions = new ArrayList<>();

        Box(Drift drift, boolean withBoost) {
            this.drift = drift;
            Limits gates = drift.planned().limits();
            double now = drift.bottlePressure();
            low = Math.min(now, bound(gates, "bottle-low", 0) * (1 + ROUND_TRIP));
            double warmest = bound(gates, "bottle-hot", Double.POSITIVE_INFINITY);
            high = Math.max(now, Math.min(warmest, bound(gates, "bottle-high", warmest)) * (1 - ROUND_TRIP));
            for (int bottle = -1; bottle <= 1; bottle++) {
                for (int fuel = -1; fuel <= 1; fuel++) {
                    for (int boost = withBoost ? -1 : 0; boost <= (withBoost ? 1 : 0); boost++) {
                        int strayed = bottle * bottle + fuel * fuel + boost * boost;
                        if (strayed == 1 || strayed == (withBoost ? 3 : 2)) {
                            directions.add(new int[] {bottle, fuel, boost});
                        }
                    }
                }
            }
        }

        private static double bound(Limits gates, String key, double otherwise) {
            return gates.find(key).map(Limit::bound).orElse(otherwise);
        }

        Excursion largest() {
            String stopped = worst(0);
            if (!stopped.isEmpty()) {
                return new Excursion(-STEP, stopped);
            }
            if (worst(MOST * STEP).isEmpty()) {
                return new Excursion(MOST * STEP, "");
            }
            int inside = 0;
            int outside = 1;
            while (outside < MOST && worst(outside * STEP).isEmpty()) {
                inside = outside;
                outside *= 2;
            }
            outside = Math.min(outside, MOST);
            while (outside - inside > 1) {
                int middle = (inside + outside) / 2;
                if (worst(middle * STEP).isEmpty()) {
                    inside = middle;
                } else {
                    outside = middle;
                }
            }
            return new Excursion(inside * STEP, worst(outside * STEP));
        }

        /** The first limit found broken at a size, in words; empty when all hold. */
        String worst(double size) {
            for (int i = 0; i < directions.size(); i++) {
                int[] to = directions.get(i);
                Outcome there = at(to, size);
                if (!there.safe()) {
                    directions.remove(i);
                    directions.add(0, to);
                    return there.firstWords();
                }
            }
            return "";
        }

        private Outcome at(int[] to, double size) {
            DriftBand band = drift.band();
            double bottle = drift.bottlePressure() + to[0] * size * band.bottlePressure();
            double fuel = drift.fuelPressure() + to[1] * size * band.fuelPressure();
            double boost = to[2] * size * band.boost();
            return drift.at(
                    Math.min(Math.max(bottle, low), high), Drifting.FUEL.clip(fuel), Drifting.BOOST.clip(boost));
        }
    }
}
