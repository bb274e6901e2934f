package org.shotledger.explore;

import org.shotledger.plan.Plan;
import org.shotledger.units.Amount;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** The cell that repeats a position: the same setup in the same case, so the same outcome. */
final class CellCode {
    private final Position now;
    private final Position start;
    private final UnitSystem system;

    private CellCode(Position now, UnitSystem system) {
        this.now = now;
        this.start = Start.of(now.plan(), now);
        this.system = system;
    }

    /**
     * The cell.
     *
     * @param first the plan that was given
     * @param now where the sliders stand, for that plan or one for another target
     * @param system units of the figures in it
     * @return lines of Java; {@code plan} in them is the plan that was given
     */
    static String of(Plan first, Position now, UnitSystem system) {
        CellCode code = new CellCode(now, system);
        boolean planned = !now.plan().equals(first);
        String name = planned ? "other" : "plan";
        String plan = planned
                ? "var other = Plan.find(plan.job().with(plan.job().target().withWheelPower("
                        + Written.power(system)
                                .code(new Amount(
                                        QuantityKind.POWER, now.plan().target().wheelPower()))
                        + ".si())));\n"
                : "";
        return "// plan is the plan that was explored\n" + plan + "var setup = " + name + ".setup()" + code.setup()
                + ";\nvar at = " + name + ".job().stated()" + code.at() + ";\nEvaluate.of(" + name
                + ".car(), setup, at)";
    }

    private String setup() {
        StringBuilder out = new StringBuilder();
        if (now.nitrous() && !(start.nitrous() && now.jetsAre(start))) {
            var bore = Written.bore(system);
            call(out, "withJets", bore.code(now.nitrousJet()) + ", " + bore.code(now.fuelJet()));
        } else if (!now.nitrous() && start.nitrous()) {
            call(out, "withoutJets", "");
        }
        if (!now.boost().equals(start.boost())) {
            call(out, "withHighestBoost", Written.gauge(system).code(now.boost()));
        }
        if (!now.fuelPressure().equals(start.fuelPressure())) {
            call(out, "withNitrousFuelPressure", Written.gauge(system).code(now.fuelPressure()));
        }
        if (!now.bottle().equals(start.bottle())) {
            call(out, "withBottleTemperature", Written.temperature(system).code(now.bottle()));
        }
        if (now.retard() != start.retard()) {
            call(out, "withRetard", Written.number(now.retard()));
        }
        return out.toString();
    }

    private String at() {
        StringBuilder out = new StringBuilder();
        if (!now.air().equals(start.air())) {
            call(out, "withAirTemperature", Written.temperature(system).code(now.air()));
        }
        if (!now.altitude().equals(start.altitude())) {
            call(out, "withAltitude", Written.altitude(system).code(now.altitude()));
        }
        if (Double.compare(now.ethanol(), start.ethanol()) != 0) {
            call(out, "withFuel", Written.number(now.ethanol()));
        }
        if (!now.moment().equals(start.moment())) {
            call(
                    out,
                    "withBottle",
                    switch (now.moment().moment()) {
                        case FIRST_OPENING -> "BottleState.FULL";
                        case END_OF_LAST_PASS -> "BottleState.LAST";
                        case GIVEN -> "BottleState.at(" + now.moment().temperature() + ")";
                    });
        }
        return out.toString();
    }

    private static void call(StringBuilder out, String name, String argument) {
        out.append("\n    .").append(name).append('(').append(argument).append(')');
    }
}
