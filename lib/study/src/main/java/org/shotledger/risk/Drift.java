package org.shotledger.risk;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.shotledger.flow.FeedFlow;
import org.shotledger.plan.Plan;
import org.shotledger.units.Require;

/**
 * What becomes of a planned engine, in the case of its target, when bottle pressure, nitrous fuel pressure and boost stray together.
 *
 * <p>The nitrous flow depends on the bottle and the jets alone while it chokes, so it is solved once for each bottle pressure
 * and kept; everything else is evaluated anew. May be used by several threads at once.
 */
public final class Drift {
    private final Scenario sound;
    private final BoostLine line;
    private final DriftBand band;
    private final double highest;
    private final Map<Place, FeedFlow> feeds;

    private record Place(double bottlePressure, double nitrousBore) {}

    private Drift(Scenario sound, BoostLine line, DriftBand band, Map<Place, FeedFlow> feeds) {
        this.sound = sound;
        this.line = line;
        this.band = band;
        this.highest = line.highest() + HIGHEST_SHIFT;
        this.feeds = feeds;
    }

    /** Boost shifts above this are refused, Pa: far beyond what any limit allows, and still below the choking pressure. */
    private static final double HIGHEST_SHIFT = 2e5;

    /**
     * The drift of a plan, over the speeds at which its nitrous is on and in the bands of its sheet.
     *
     * @param plan the plan
     * @return the model
     */
    public static Drift of(Plan plan) {
        return of(plan, DriftBand.of(Scenario.of(plan)));
    }

    /**
     * The drift of a plan in bands of one's own.
     *
     * @param plan the plan
     * @param band how far the inputs are expected to stray
     * @return the model
     */
    public static Drift of(Plan plan, DriftBand band) {
        return new Drift(Scenario.of(plan), BoostLine.of(plan), band, new ConcurrentHashMap<>());
    }

    /**
     * The same speeds and bands with another scenario, for example other jets or a regulator without boost reference.
     *
     * @param other the scenario instead of the plan
     * @return the model
     */
    public Drift with(Scenario other) {
        boolean sameFeed =
                other.car().nitrous().nitrous().equals(sound.car().nitrous().nitrous())
                        && other.nitrousOpen() == sound.nitrousOpen()
                        && other.at().equals(sound.at())
                        && other.setup().bottle().equals(sound.setup().bottle());
        return new Drift(other, line, band, sameFeed ? feeds : new ConcurrentHashMap<>());
    }

    /** The same at the one speed of the highest boost, with the same nitrous flows: a first sieve for a search. */
    Drift atHighestBoost() {
        double most = line.highest();
        List<BoostLine.Stop> one = line.stops().stream()
                .filter(stop -> stop.plenumPressure() == most)
                .limit(1)
                .toList();
        return new Drift(sound, new BoostLine(one), band, feeds);
    }

    /**
     * The planned scenario.
     *
     * @return what drifts
     */
    public Scenario sound() {
        return sound;
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
        return sound.bottle().pressure();
    }

    /**
     * Nitrous fuel pressure of the plan.
     *
     * @return what the regulator is set to, Pa gauge
     */
    public double fuelPressure() {
        return sound.fuelPressure();
    }

    /**
     * The plan itself.
     *
     * @return its outcome
     */
    public FaultOutcome planned() {
        return at(bottlePressure(), fuelPressure(), 0);
    }

    /**
     * The engine with all three inputs as given.
     *
     * @param bottlePressure bottle pressure, the bottle warmer or colder with its charge, Pa absolute
     * @param fuelPressure what the regulator of the nitrous fuel holds, Pa gauge, 0.5e5 to 10e5
     * @param boostShift plenum pressure above the planned one at every speed, Pa, -2e5 to 2e5
     * @return the outcome over the examined speeds
     */
    public FaultOutcome at(double bottlePressure, double fuelPressure, double boostShift) {
        try {
            Scenario now = scenario(bottlePressure, fuelPressure, boostShift);
            return Simulation.run(now, line, () -> feed(now), highest);
        } catch (IllegalArgumentException refused) { // no temperature gives that bottle pressure
            return FaultOutcome.refused(refused.getMessage());
        }
    }

    /** Whether {@link #at} is safe, for searches. */
    boolean safe(double bottlePressure, double fuelPressure, double boostShift) {
        try {
            Scenario now = scenario(bottlePressure, fuelPressure, boostShift);
            return Simulation.safe(now, line, () -> feed(now), highest);
        } catch (IllegalArgumentException refused) {
            return false;
        }
    }

    private Scenario scenario(double bottlePressure, double fuelPressure, double boostShift) {
        Require.within("change of boost", boostShift, -HIGHEST_SHIFT, HIGHEST_SHIFT, "Pa");
        return sound.withBottlePressure(bottlePressure)
                .withFuelPressure(fuelPressure)
                .withBoostShift(boostShift);
    }

    private FeedFlow feed(Scenario now) {
        Place place = new Place(now.bottle().pressure(), sound.jets().nitrousBore());
        return feeds.computeIfAbsent(place, any -> SystemFlows.nitrous(now, highest));
    }
}
