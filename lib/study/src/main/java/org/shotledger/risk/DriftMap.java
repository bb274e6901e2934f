package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shotledger.plan.Plan;

/**
 * A slice of the drift: outcomes over bottle pressure and nitrous fuel pressure at one change of boost.
 *
 * <p>A choked nitrous jet does not feel the plenum: its flow is set where the mixture passes at its own speed of sound, and no
 * news of the pressure behind travels up. A fuel jet is an orifice for a liquid and feels {@code sqrt(p_rail - p_nozzle)};
 * whether boost moves it is up to the regulator ({@link BoostReference}).
 *
 * <p>The bottle differs in pressure because it is warmer or colder, with the charge of the setup in the case of the target. Near the
 * critical point, 72.4 bar, the density of the saturated liquid collapses and its flux falls again; a vessel full of liquid stands
 * above its vapour pressure and gives more.
 *
 * @param bottlePressures bottle pressures, Pa absolute, ascending
 * @param fuelPressures set pressures of the nitrous fuel, Pa gauge, ascending
 * @param boostShift plenum pressure above the planned one, Pa
 * @param outcomes one list a fuel pressure, in it one outcome a bottle pressure
 * @param planned outcome of the plan itself
 * @param planBottlePressure bottle pressure of the plan, Pa absolute
 * @param planFuelPressure fuel pressure of the plan, Pa gauge
 * @param band how far the inputs are expected to stray
 * @param edges where the safe region ends when one input strays alone
 */
public record DriftMap(
        List<Double> bottlePressures,
        List<Double> fuelPressures,
        double boostShift,
        List<List<FaultOutcome>> outcomes,
        FaultOutcome planned,
        double planBottlePressure,
        double planFuelPressure,
        DriftBand band,
        List<DriftEdge> edges) {
    /** Points along each axis: our choice, what a picture can show. */
    private static final int POINTS = 25;
    /** Bottle pressures of the map, Pa: liquid at 8 degC and just below the critical point. */
    private static final double LOWEST_BOTTLE = 38e5;

    private static final double HIGHEST_BOTTLE = 72.2e5;
    /** Share of the fuel pressure up to which the map goes either way: our choice. */
    private static final double FUEL_SHARE = 0.55;

    public DriftMap {
        bottlePressures = List.copyOf(bottlePressures);
        fuelPressures = List.copyOf(fuelPressures);
        outcomes = outcomes.stream().map(List::copyOf).toList();
        edges = List.copyOf(edges);
    }

    /**
     * The slice at planned boost, 25 by 25: bottle from 38 bar (a cold bottle near the freezing point of water) to just below
     * the critical pressure, fuel from 45 % to 155 % of its set pressure.
     *
     * @param plan the plan
     * @return the map
     */
    public static DriftMap of(Plan plan) {
        return of(Drift.of(plan), 0);
    }

    /**
     * The slice at a change of boost, 25 by 25.
     *
     * @param drift the model
     * @param boostShift plenum pressure above the planned one, Pa, -2e5 to 2e5
     * @return the map
     */
    public static DriftMap of(Drift drift, double boostShift) {
        double set = drift.fuelPressure();
        return of(
                drift,
                boostShift,
                grid(LOWEST_BOTTLE, HIGHEST_BOTTLE, POINTS),
                grid(Math.max(0.5e5, set * (1 - FUEL_SHARE)), Math.min(10e5, set * (1 + FUEL_SHARE)), POINTS));
    }

    /**
     * A slice on a grid of one's own.
     *
     * @param drift the model
     * @param boostShift plenum pressure above the planned one, Pa
     * @param bottlePressures Pa absolute, ascending, between triple and critical pressure
     * @param fuelPressures Pa gauge, ascending, 0.5e5 to 10e5
     * @return the map
     */
    public static DriftMap of(
            Drift drift, double boostShift, List<Double> bottlePressures, List<Double> fuelPressures) {
        List<List<FaultOutcome>> rows = new ArrayList<>();
        for (double fuel : fuelPressures) {
            rows.add(bottlePressures.stream()
                    .map(bottle -> drift.at(bottle, fuel, boostShift))
                    .toList());
        }
        return new DriftMap(
                bottlePressures,
                fuelPressures,
                boostShift,
                rows,
                drift.planned(),
                drift.bottlePressure(),
                drift.fuelPressure(),
                drift.band(),
                edges(drift));
    }

    private static List<DriftEdge> edges(Drift drift) {
        List<DriftEdge> edges = new ArrayList<>();
        for (Drifting input : Drifting.values()) {
            edges.add(DriftEdge.find(drift, input, false));
            edges.add(DriftEdge.find(drift, input, true));
        }
        return edges;
    }

    /**
     * Equal steps.
     *
     * @param low first value
     * @param high last value
     * @param points how many, at least 2
     * @return the values
     */
    public static List<Double> grid(double low, double high, int points) {
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            values.add(low + (high - low) * i / (points - 1));
        }
        return values;
    }

    /**
     * The knock index of an outcome against that of the plan, a relative measure: above one the end gas is nearer to
     * knock than planned.
     *
     * @param outcome an outcome of this map
     * @return ratio of the highest indices; NaN without an answer
     */
    public double knockAgainstPlan(FaultOutcome outcome) {
        return outcome.knock() / planned.knock();
    }

    /**
     * The share of the map in which every limit is kept.
     *
     * @return 0 to 1
     */
    public double safeShare() {
        long safe = outcomes.stream()
                .flatMap(List::stream)
                .filter(FaultOutcome::safe)
                .count();
        return (double) safe / (bottlePressures.size() * fuelPressures.size());
    }

    /**
     * The safe region in one line.
     *
     * @return which input may stray how far before which limit breaks
     */
    public String summary() {
        DriftEdge nearest = edges.stream()
                .filter(DriftEdge::found)
                .min(java.util.Comparator.comparingDouble(DriftEdge::distance))
                .orElse(edges.get(0));
        return String.format(
                Locale.ROOT,
                "Every limit is kept at %.0f %% of the map's points; the nearest edge is %s %s, %.1f expected bands away%s. The band:"
                        + " %s. An estimate, to be proven in small steps.",
                100 * safeShare(),
                nearest.input().words(),
                nearest.up() ? "rising" : "falling",
                nearest.distance(),
                nearest.limit().map(l -> ", where '" + l.name() + "' breaks").orElse(""),
                band.basis());
    }
}
