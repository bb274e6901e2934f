package org.shotledger.risk;

import java.util.HashMap;
import java.util.Map;
import org.shotledger.budget.Budget;
import org.shotledger.flow.FeedFlow;
import org.shotledger.units.Require;

/**
 * What becomes of a planned engine when bottle pressure, nitrous fuel pressure and boost stray together.
 *
 * <p>The nitrous flow depends on the bottle and the jets alone while it chokes, so it is solved once for each bottle pressure
 * and kept; everything else is evaluated anew. Not safe for use by several threads at once.
 */
public final class Drift {
    private final Situation plan;
    private final BoostLine line;
    private final DriftBand band;
    private final double highest;
    private final Map<Place, FeedFlow> feeds;

    private record Place(double bottlePressure, double nitrousBore) {}

    private Drift(Situation plan, BoostLine line, DriftBand band, Map<Place, FeedFlow> feeds) {
        this.plan = plan;
        this.line = line;
        this.band = band;
        this.highest = line.highest() + HIGHEST_SHIFT;
        this.feeds = feeds;
    }

    /** Boost shifts above this are refused, Pa: far beyond what any limit allows, and still below the choking pressure. */
    private static final double HIGHEST_SHIFT = 2e5;

    /**
     * The drift of a budget's plan, over its own speeds and in the bands of its sheet.
     *
     * @param budget the budget
     * @return the model
     */
    public static Drift of(Budget budget) {
        return of(budget, DriftBand.of(budget.build()));
    }

    /**
     * The drift of a budget's plan in bands of one's own.
     *
     * @param budget the budget
     * @param band how far the inputs are expected to stray
     * @return the model
     */
    public static Drift of(Budget budget, DriftBand band) {
        return new Drift(Situation.of(budget), BoostLine.of(budget), band, new HashMap<>());
    }

    /**
     * The same speeds and bands with another situation, for example other jets or a regulator without boost reference.
     *
     * @param other the situation instead of the plan
     * @return the model
     */
    public Drift with(Situation other) {
        boolean sameFeed =
                other.build().wetKit().nitrous().equals(plan.build().wetKit().nitrous())
                        && other.nitrousOpen() == plan.nitrousOpen();
        return new Drift(other, line, band, sameFeed ? feeds : new HashMap<>());
    }

    /**
     * The planned situation.
     *
     * @return what drifts
     */
    public Situation plan() {
        return plan;
    }

    /**
     * The speeds and their planned boost.
     *
     * @return the line
     */
    public BoostLine line() {
        return line;
    }

    /**
     * How far the inputs are expected to stray.
     *
     * @return the band
     */
    public DriftBand band() {
        return band;
    }

    /**
     * Bottle pressure of the plan.
     *
     * @return Pa absolute
     */
    public double bottlePressure() {
        return plan.conditions().bottleLiquid().pressure();
    }

    /**
     * Nitrous fuel pressure of the plan.
     *
     * @return what the regulator is set to, Pa gauge
     */
    public double fuelPressure() {
        return plan.fuelPressure();
    }

    /**
     * The plan itself.
     *
     * @return its outcome
     */
    public Outcome planned() {
        return at(bottlePressure(), fuelPressure(), 0);
    }

    /**
     * The engine with all three inputs as given.
     *
     * @param bottlePressure bottle pressure, its liquid saturated, Pa absolute, between triple and critical pressure
     * @param fuelPressure what the regulator of the nitrous fuel holds, Pa gauge, 0.5e5 to 10e5
     * @param boostShift plenum pressure above the planned one at every speed, Pa, -2e5 to 2e5
     * @return the outcome over the examined speeds
     */
    public Outcome at(double bottlePressure, double fuelPressure, double boostShift) {
        Require.within("change of boost", boostShift, -HIGHEST_SHIFT, HIGHEST_SHIFT, "Pa");
        Situation now = plan.withBottlePressure(bottlePressure)
                .withFuelPressure(fuelPressure)
                .withBoostShift(boostShift);
        FeedFlow feed = feeds.computeIfAbsent(
                new Place(bottlePressure, plan.jets().nitrousBore()), any -> Trial.feed(now, highest));
        return Trial.run(now, line, feed, highest);
    }
}
