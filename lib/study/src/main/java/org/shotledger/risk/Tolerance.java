package org.shotledger.risk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shotledger.units.Require;

/**
 * The largest symmetric deviation: how far bottle pressure, nitrous fuel pressure and boost may all stray at once, each by the
 * same number of half-widths of its expected band in the worst direction, before a limit breaks.
 *
 * <p>The box is held at its eight corners and the middles of its six sides; mixture, pressure and flows run one way with each
 * input, so the worst lies there. The bottle is followed only inside the pressures between which the nitrous is opened at
 * all, the car's own working band: what the arming conditions keep closed is no drift. The boost table stays as planned.
 *
 * @param size half-widths, in steps of 0.02, at most 8; 0 when the plan itself just holds, negative when it breaks a limit
 * @param stoppedBy the limit that breaks one step further, or why the models end there, where it is broken most; empty when none does up to 8
 */
public record Tolerance(double size, String stoppedBy) {
    /** In bands: our choice, finer than the bands are known. */
    private static final double STEP = 0.02;

    private static final int MOST = 400;
    /** A saturated state gives its pressure back within this. */
    private static final double ROUND_TRIP = 1e-9;

    /**
     * Finds the tolerance for all three inputs.
     *
     * @param drift the model
     * @return the largest tolerance
     */
    public static Tolerance of(Drift drift) {
        return near(drift, true, 0);
    }

    /**
     * Finds the tolerance for bottle and fuel pressure with the boost as planned.
     *
     * @param drift the model
     * @return the largest tolerance
     */
    public static Tolerance withBoostHeld(Drift drift) {
        return near(drift, false, 0);
    }

    /** The same for a setting that is likely to bear about so many steps. */
    static Tolerance near(Drift drift, boolean withBoost, int steps) {
        return new Box(drift, withBoost).largest(steps);
    }

    /**
     * Tells whether every limit is kept at corners and sides of a box.
     *
     * @param drift the model
     * @param size half-widths, 0 or more
     * @return true when all are kept
     */
    public static boolean holds(Drift drift, double size) {
        return new Box(drift, true).holds(Require.notNegative("tolerance", size, "half-widths"));
    }

    /** Whether a tolerance of so many steps holds, for a search that only asks about better ones. */
    static boolean holds(Drift drift, boolean withBoost, int steps) {
        return steps < 0 || new Box(drift, withBoost).holds(steps * STEP);
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
            var limits = drift.sound().car().limits();
            double now = drift.bottlePressure();
            low = Math.min(now, limits.bottlePressureLow() * (1 + ROUND_TRIP));
            high = Math.max(now, limits.bottlePressureHigh() * (1 - ROUND_TRIP));
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

        /** @param near steps from which the search begins */
        Tolerance largest(int near) {
            if (!holds(0)) {
                return new Tolerance(-STEP, stoppedAt(0));
            }
            if (holds(MOST * STEP)) {
                return new Tolerance(MOST * STEP, "");
            }
            int inside = 0;
            int outside = Math.max(1, near);
            int stride = 1;
            while (outside < MOST && holds(outside * STEP)) {
                inside = outside;
                outside += stride;
                stride *= 2;
            }
            outside = Math.min(outside, MOST);
            while (outside - inside > 1) {
                int middle = (inside + outside) / 2;
                if (holds(middle * STEP)) {
                    inside = middle;
                } else {
                    outside = middle;
                }
            }
            return new Tolerance(inside * STEP, stoppedAt(outside * STEP));
        }

        boolean holds(double size) {
            for (int i = 0; i < directions.size(); i++) {
                int[] to = directions.get(i);
                if (!safe(to, size)) {
                    directions.remove(i);
                    directions.add(0, to);
                    return false;
                }
            }
            return true;
        }

        /** The limit that is broken most at a size, in words. */
        private String stoppedAt(double size) {
            return directions.stream()
                    .map(to -> at(to, size))
                    .filter(there -> !there.safe())
                    .min(Comparator.comparingDouble(FaultOutcome::minMargin))
                    .map(FaultOutcome::firstWords)
                    .orElseThrow();
        }

        private FaultOutcome at(int[] to, double size) {
            return drift.at(bottle(to, size), fuel(to, size), boost(to, size));
        }

        private boolean safe(int[] to, double size) {
            return drift.safe(bottle(to, size), fuel(to, size), boost(to, size));
        }

        private double bottle(int[] to, double size) {
            double pressure =
                    drift.bottlePressure() + to[0] * size * drift.band().bottlePressure();
            return Drifting.BOTTLE.clip(drift, Math.min(Math.max(pressure, low), high));
        }

        private double fuel(int[] to, double size) {
            return Drifting.FUEL.clip(
                    drift, drift.fuelPressure() + to[1] * size * drift.band().fuelPressure());
        }

        private double boost(int[] to, double size) {
            return Drifting.BOOST.clip(drift, to[2] * size * drift.band().boost());
        }
    }
}
