package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Standing;
import org.shotledger.build.BuilderLimits;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * The window in which the nitrous may be on, each end computed with its reason, beside the one written in the build sheet.
 *
 * @param gates the conditions; all must be met
 * @param written the engine speeds written in the sheet
 * @param cutTime time from a value outside a gate to the end of nitrous flow, without the sensor's own delay, s
 */
public record NitrousWindow(List<Gate> gates, ActivationWindow written, double cutTime) {
    /** Throttle opening above which the plenum hardly knows the throttle: common practice, no source. */
    private static final double THROTTLE = 0.9;

    private static final double THROTTLE_HYSTERESIS = 0.05;

    /** Hysteresis as a share of the way from the plan to the gate: common practice, no source. */
    private static final double BACK = 0.25;

    private static final double LAMBDA_HYSTERESIS = 0.01;

    /** Copies the list. */
    public NitrousWindow {
        gates = List.copyOf(gates);
    }

    /**
     * The window of a budget's plan.
     *
     * @param budget the budget
     * @return the window
     */
    public static NitrousWindow of(Budget budget) {
        return of(budget, Drift.of(budget));
    }

    /**
     * The window of a budget's plan with expected bands of one's own.
     *
     * @param budget the budget
     * @param drift the drift of its plan
     * @return the window
     */
    public static NitrousWindow of(Budget budget, Drift drift) {
        CutOff cut = CutOff.of(budget);
        List<Gate> gates = new ArrayList<>();
        GearGate gear = GearGate.of(budget, cut.time());
        gates.add(new SpeedGate(budget).gate(gear.overshoot()));
        gates.add(throttle());
        gates.add(edged("boost", "boost above its table", QuantityKind.PRESSURE_DIFFERENCE, drift, Drifting.BOOST));
        gates.add(lambda(budget));
        gates.add(edged("fuel-pressure", "nitrous fuel pressure", QuantityKind.GAUGE_PRESSURE, drift, Drifting.FUEL));
        gates.add(edged("bottle-pressure", "bottle pressure", QuantityKind.ABSOLUTE_PRESSURE, drift, Drifting.BOTTLE));
        gates.add(VoltageGate.of(drift));
        gear.gate().ifPresent(gates::add);
        return new NitrousWindow(gates, budget.build().wetKit().window(), cut.time());
    }

    private static Gate throttle() {
        return new Gate(
                "throttle",
                "throttle opening",
                QuantityKind.FRACTION,
                THROTTLE,
                Double.NaN,
                THROTTLE_HYSTERESIS,
                1,
                "nitrous flow is constant while a closing throttle takes air and main fuel away; the boost gate says the same,"
                        + " later",
                "",
                Standing.COMMON_PRACTICE);
    }

    private static Gate lambda(Budget budget) {
        BuilderLimits allowed = budget.build().limits();
        return new Gate(
                "lambda",
                "mixture with nitrous on",
                QuantityKind.RATIO,
                allowed.lambdaLow(),
                allowed.lambdaHigh(),
                LAMBDA_HYSTERESIS,
                budget.peak().lambda(),
                "the builder's richest mixture: misfire, washed bores",
                "the builder's leanest mixture: knock, melted pistons",
                Standing.ASSUMED);
    }

    private static Gate edged(String key, String name, QuantityKind kind, Drift drift, Drifting input) {
        DriftEdge low = DriftEdge.find(drift, input, false);
        DriftEdge high = DriftEdge.find(drift, input, true);
        double planned = input.planned(drift);
        double room = Math.min(planned - low.value(), high.value() - planned);
        return new Gate(
                key,
                name,
                kind,
                low.found() ? low.value() : Double.NaN,
                high.found() ? high.value() : Double.NaN,
                BACK * room,
                planned,
                reason(low),
                reason(high),
                Standing.CALCULATED);
    }

    private static String reason(DriftEdge edge) {
        if (!edge.found()) {
            return "";
        }
        return edge.limit().map(l -> l.name() + " breaks: " + edge.reason()).orElse(edge.beyond());
    }

    /**
     * Looks a gate up.
     *
     * @param key its key
     * @return the gate, or empty when this window has none of that name
     */
    public Optional<Gate> find(String key) {
        return gates.stream().filter(g -> g.key().equals(key)).findFirst();
    }

    /**
     * How the written window compares with the computed one.
     *
     * @return one sentence
     */
    public String comparison() {
        Gate speed = find("rpm").orElseThrow();
        String ends = "The sheet opens the nitrous from " + rpm(written.rpmLow()) + " to " + rpm(written.rpmHigh())
                + "; every limit is kept from " + rpm(speed.low()) + " to " + rpm(speed.high()) + ": ";
        boolean low = written.rpmLow() >= speed.low();
        boolean high = written.rpmHigh() <= speed.high();
        if (low && high) {
            return ends + "the written window lies inside.";
        }
        return ends + "the written window reaches too far " + (low ? "up" : high ? "down" : "at both ends")
                + "; take it back to the computed one.";
    }

    private static String rpm(double value) {
        return QuantityKind.ROTATION.text(value, UnitSystem.SI);
    }
}
