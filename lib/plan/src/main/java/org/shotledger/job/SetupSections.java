package org.shotledger.job;

import static org.shotledger.units.QuantityKind.BORE;
import static org.shotledger.units.QuantityKind.CRANK_ANGLE;
import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.PRESSURE_DIFFERENCE;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.TIME;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.shotledger.car.Turbo;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.MixtureGoal;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.PassPlan;
import org.shotledger.setup.Setup;
import org.shotledger.setup.Target;
import org.shotledger.sheet.SheetSection;
import org.shotledger.supply.Regulator;

/**
 * Reads what is asked and what is set. What is set stands beside the part it is set on: fuel pressures with their supply, the
 * charge with the bottle, the speeds with the nitrous system, mixture and spark under "tune"; boost and jets under "setup".
 */
final class SetupSections {
    private final double lambda;
    private final double retard;
    final Regulator main;
    /** That of the nitrous system's own supply; empty on the main rail. */
    final Optional<Regulator> nitrous;

    private final ActivationWindow arming;
    private final Optional<Run> run;

    private record Run(Optional<BoostTarget> boost, Optional<JetPair> jets) {}

    SetupSections(SheetSection s, SheetSection tune, boolean onMainRail) {
        lambda = tune.figure("lambda", RATIO, 0.6, 1.1);
        retard = tune.figureOr("nitrous-retard", CRANK_ANGLE, 0, 30, 0, "no retard asked for");
        main = SupplySections.regulator(s.section("injection").section("regulator"), "main fuel regulator");
        SheetSection kit = s.section("nitrous-system");
        nitrous = onMainRail
                ? Optional.empty()
                : Optional.ofNullable(
                        SupplySections.regulator(kit.section("fuel").section("regulator"), "nitrous fuel regulator"));
        arming = arming(kit.section("arming"));
        run = s.sectionIf("setup").map(SetupSections::run);
    }

    /** The setup of the sheet; without a section "setup" with the boost ceiling and no jets. */
    Setup setup(Target target, Turbo turbo, BottleFill fill) {
        BoostTarget boost = run.flatMap(Run::boost).orElseGet(() -> BoostTarget.constant(turbo.boostCeiling()));
        return new Setup(
                boost,
                run.flatMap(Run::jets),
                main,
                nitrous,
                lambda,
                retard,
                arming,
                fill,
                new PassPlan(target.passes(), target.passSeconds()));
    }

    static Target target(SheetSection s, SheetSection tune, Set<String> conditions) {
        String where = EngineSections.conditions(s, conditions);
        double power = s.figure("wheel-power", POWER, 10e3, 3e6);
        double low = s.figure("rpm-low", ROTATION, 500, 20_000);
        double high = s.figure("rpm-high", ROTATION, 500, 20_000);
        int passes = s.count("passes", 1, 50);
        double seconds = s.figure("pass-time", TIME, 0.5, 300);
        KitSections.ordered(s, "rpm-low", low, "rpm-high", high);
        Supplier<MixtureGoal> goal = goal(tune);
        return s.make(() -> new Target(where, power, low, high, passes, seconds, goal.get()));
    }

    /** One of three ways to say it; the first is asked for when none stands there. */
    private static Supplier<MixtureGoal> goal(SheetSection s) {
        boolean ratio = s.has("nitrous-ratio");
        boolean circuit = s.has("nitrous-circuit-lambda");
        if ((ratio || circuit) && (s.has("nitrous-lambda") || (ratio && circuit))) {
            s.report(
                    ratio ? "nitrous-ratio" : "nitrous-circuit-lambda",
                    "The mixture with nitrous is asked for in more than one way; keep one of nitrous-lambda,"
                            + " nitrous-ratio and nitrous-circuit-lambda.");
        }
        if (ratio) {
            double value = s.figure("nitrous-ratio", RATIO, 1, 15);
            return () -> MixtureGoal.ratio(value);
        }
        if (circuit) {
            double value = s.figure("nitrous-circuit-lambda", RATIO, 0.5, 1.2);
            return () -> MixtureGoal.circuit(value);
        }
        double value = s.figure("nitrous-lambda", RATIO, 0.6, 1.0);
        return () -> MixtureGoal.total(value);
    }

    private static ActivationWindow arming(SheetSection s) {
        double low = s.figure("rpm-low", ROTATION, 500, 20_000);
        double high = s.figure("rpm-high", ROTATION, 500, 20_000);
        return s.make(() -> new ActivationWindow(low, high));
    }

    private static Run run(SheetSection s) {
        boolean withJets = s.has("nitrous-jet") || s.has("fuel-jet");
        double nitrous = withJets ? s.figure("nitrous-jet", BORE, 1e-4, 0.01) : Double.NaN;
        double fuel = withJets ? s.figure("fuel-jet", BORE, 1e-4, 0.01) : Double.NaN;
        Supplier<Optional<BoostTarget>> boost = boost(s);
        return s.make(
                () -> new Run(boost.get(), withJets ? Optional.of(new JetPair(nitrous, fuel)) : Optional.empty()));
    }

    private static Supplier<Optional<BoostTarget>> boost(SheetSection s) {
        if (s.has("boost")) {
            for (String table : List.of("boost-armed", "boost-off", "boost-tolerance")) {
                if (s.has(table)) {
                    s.report(
                            table,
                            "\"boost\" says one boost for every speed, \"" + table + "\" another; keep one of them.");
                }
            }
            double gauge = s.figure("boost", GAUGE_PRESSURE, 0, 6e5);
            return () -> Optional.of(BoostTarget.constant(gauge));
        }
        Optional<BoostTable> armed = s.sectionIf("boost-armed").map(SetupSections::table);
        Optional<BoostTable> off = s.sectionIf("boost-off").map(SetupSections::table);
        double tolerance = s.figureOr(
                "boost-tolerance",
                PRESSURE_DIFFERENCE,
                0,
                1e5,
                BoostTarget.USUAL_TOLERANCE,
                "common practice, no source");
        for (String alone : List.of("boost-off", "boost-tolerance")) {
            if (s.has(alone) && !s.has("boost-armed")) {
                s.report(
                        alone,
                        "\"" + alone
                                + "\" goes with a table \"boost-armed\", which does not stand here; add it, or write one"
                                + " \"boost\" for every speed.");
            }
        }
        return () -> armed.map(table -> new BoostTarget(off.orElse(table), table, tolerance));
    }

    private static BoostTable table(SheetSection s) {
        List<Double> rpm = s.figures("engine-speed", ROTATION, 300, 20_000);
        List<Double> boost = s.figures("boost", GAUGE_PRESSURE, -0.5e5, 6e5);
        if (rpm.size() != boost.size()) {
            s.report(
                    "boost",
                    "The table has " + rpm.size() + " engine speeds and " + boost.size()
                            + " boosts; give one boost for each speed.");
        }
        return s.make(() -> BoostTable.of(
                rpm.stream().mapToDouble(d -> d).toArray(),
                boost.stream().mapToDouble(d -> d).toArray()));
    }
}
