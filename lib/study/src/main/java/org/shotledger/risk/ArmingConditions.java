package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.car.BuilderLimits;
import org.shotledger.limits.Provenance;
import org.shotledger.plan.Plan;
import org.shotledger.risk.Interlock.Kept;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * The conditions under which the nitrous may be on. Engine speeds and boost tolerance are those of the setup, bottle band and mixture
 * those of the car's limits; fuel pressure, closing boost, voltage and gear are worked out. Beside each stands where every limit is kept.
 *
 * @param interlocks the conditions; all must be met
 * @param cutTime time from a value outside an interlock to the end of nitrous flow, without the sensor's own delay, s
 */
public record ArmingConditions(List<Interlock> interlocks, double cutTime) {
    /** Throttle opening above which the plenum hardly knows the throttle: common practice, no source. */
    private static final double THROTTLE = 0.9;

    /** Of full travel: our choice, above the noise of a pedal held still. */
    private static final double THROTTLE_HYSTERESIS = 0.05;

    /** Hysteresis as a share of the way from the plan to the bound: common practice, no source. */
    private static final double BACK = 0.25;

    /** Our choice, above the noise of a probe. */
    private static final double LAMBDA_HYSTERESIS = 0.01;

    public ArmingConditions {
        interlocks = List.copyOf(interlocks);
    }

    /**
     * The conditions of a plan.
     *
     * @param plan the plan
     * @return the conditions
     */
    public static ArmingConditions of(Plan plan) {
        return of(plan, Drift.of(plan));
    }

    /**
     * The conditions of a plan, with a drift that serves other questions too.
     *
     * @param plan the plan
     * @param drift its drift
     * @return the conditions
     */
    public static ArmingConditions of(Plan plan, Drift drift) {
        CutOff cut = CutOff.of(plan);
        List<Interlock> all = new ArrayList<>();
        GearInterlock gear = GearInterlock.of(plan, cut.time());
        all.add(new SpeedInterlock(plan).interlock(gear.overshoot()));
        all.add(throttle());
        all.add(boost(plan, drift));
        all.add(lambda(plan));
        all.add(fuel(drift));
        all.add(bottle(plan, drift));
        all.add(VoltageInterlock.of(drift));
        gear.interlock().ifPresent(all::add);
        return new ArmingConditions(all, cut.time());
    }

    private static Interlock throttle() {
        return new Interlock(
                "throttle",
                "throttle opening",
                QuantityKind.FRACTION,
                THROTTLE,
                Double.NaN,
                THROTTLE_HYSTERESIS,
                1,
                Kept.UNKNOWN,
                "nitrous flow is constant while a closing throttle takes air and main fuel away; the boost says the same,"
                        + " later",
                "",
                Provenance.COMMON_PRACTICE);
    }

    private static Interlock lambda(Plan plan) {
        BuilderLimits allowed = plan.car().limits();
        return new Interlock(
                "lambda",
                "mixture with nitrous on",
                QuantityKind.RATIO,
                allowed.lambdaLow(),
                allowed.lambdaHigh(),
                LAMBDA_HYSTERESIS,
                plan.stated().strongest().orElseThrow().lambda(),
                new Kept(allowed.lambdaLow(), allowed.lambdaHigh()),
                "the builder's richest mixture: misfire, washed bores",
                "the builder's leanest mixture: knock, melted pistons",
                plan.car().provenance("limits.lambda-high"));
    }

    /** It closes where a limit breaks, and opens only within the tolerance that the setup states for the moment of opening. */
    private static Interlock boost(Plan plan, Drift drift) {
        Edges edges = Edges.of(drift, Drifting.BOOST);
        double high = edges.kept().high();
        return new Interlock(
                "boost",
                "boost above its table",
                QuantityKind.PRESSURE_DIFFERENCE,
                edges.kept().low(),
                high,
                Double.isNaN(high)
                        ? BACK * edges.room()
                        : Math.max(0, high - plan.setup().boost().tolerance()),
                0,
                edges.kept(),
                reason(edges.low()),
                reason(edges.high()),
                Provenance.CALCULATED);
    }

    private static Interlock fuel(Drift drift) {
        Edges edges = Edges.of(drift, Drifting.FUEL);
        return new Interlock(
                "fuel-pressure",
                drift.sound().onMainRail() ? "fuel pressure of the main rail" : "nitrous fuel pressure",
                QuantityKind.GAUGE_PRESSURE,
                edges.kept().low(),
                edges.kept().high(),
                BACK * edges.room(),
                drift.fuelPressure(),
                edges.kept(),
                reason(edges.low()),
                reason(edges.high()),
                Provenance.CALCULATED);
    }

    private static Interlock bottle(Plan plan, Drift drift) {
        BuilderLimits limits = plan.car().limits();
        Edges edges = Edges.of(drift, Drifting.BOTTLE);
        double planned = drift.bottlePressure();
        double room = Math.min(planned - limits.bottlePressureLow(), limits.bottlePressureHigh() - planned);
        return new Interlock(
                "bottle-pressure",
                "bottle pressure",
                QuantityKind.ABSOLUTE_PRESSURE,
                limits.bottlePressureLow(),
                limits.bottlePressureHigh(),
                Math.max(0, BACK * room),
                planned,
                edges.kept(),
                reason(edges.low()),
                reason(edges.high()),
                plan.car().provenance("limits.bottle-pressure-low"));
    }

    private record Edges(DriftEdge low, DriftEdge high, double planned) {
        static Edges of(Drift drift, Drifting input) {
            return new Edges(
                    DriftEdge.find(drift, input, false), DriftEdge.find(drift, input, true), input.planned(drift));
        }

        Kept kept() {
            return new Kept(low.found() ? low.value() : Double.NaN, high.found() ? high.value() : Double.NaN);
        }

        double room() {
            return Math.min(planned - low.value(), high.value() - planned);
        }
    }

    private static String reason(DriftEdge edge) {
        if (!edge.found()) {
            return "every limit is kept as far as the models go";
        }
        return edge.limit().map(l -> l.name() + " breaks: " + edge.reason()).orElse(edge.beyond());
    }

    /**
     * Looks an interlock up.
     *
     * @param key its key
     * @return the interlock, or empty when there is none of that name
     */
    public Optional<Interlock> find(String key) {
        return interlocks.stream().filter(g -> g.key().equals(key)).findFirst();
    }

    /**
     * Where the stated conditions let the nitrous be on although a limit breaks there.
     *
     * @return one sentence for each bound that reaches too far; empty when none does
     */
    public List<String> reachingTooFar() {
        List<String> all = new ArrayList<>();
        for (Interlock i : interlocks) {
            if (i.opensTooLow()) {
                all.add(sentence(i, "down to ", i.low(), i.kept().low(), i.lowReason()));
            }
            if (i.opensTooHigh()) {
                all.add(sentence(i, "up to ", i.high(), i.kept().high(), i.highReason()));
            }
        }
        return all;
    }

    private static String sentence(Interlock i, String way, double set, double kept, String reason) {
        return "The nitrous may be on " + way + text(i, set) + " of " + i.name() + ", but every limit is kept only "
                + way + text(i, kept) + " (" + reason + "); take the condition back to that.";
    }

    /**
     * How the engine speeds that are set compare with those at which every limit is kept.
     *
     * @return one sentence
     */
    public String comparison() {
        Interlock speed = find("rpm").orElseThrow();
        String ends = "The setup opens the nitrous from " + text(speed, speed.low()) + " to "
                + text(speed, speed.high())
                + "; every limit is kept from " + text(speed, speed.kept().low()) + " to "
                + text(speed, speed.kept().high()) + ": ";
        if (!speed.opensTooLow() && !speed.opensTooHigh()) {
            return ends + "the speeds that are set lie inside.";
        }
        boolean both = speed.opensTooLow() && speed.opensTooHigh();
        return ends + "the speeds that are set reach too far "
                + (both ? "at both ends" : speed.opensTooLow() ? "down" : "up") + "; take them back.";
    }

    private static String text(Interlock i, double value) {
        return i.kind().text(value, UnitSystem.SI);
    }
}
