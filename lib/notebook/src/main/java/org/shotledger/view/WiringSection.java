package org.shotledger.view;

import org.shotledger.document.DocumentContent;
import org.shotledger.document.Section;
import org.shotledger.plan.Plan;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;
import org.shotledger.wiring.Importance;
import org.shotledger.wiring.SensorInput;
import org.shotledger.wiring.Wiring;

/** The section on wiring, controller channels and sensors. */
final class WiringSection {

    /** Charge that may be taken from a battery which must still start the engine: common practice, no source. */
    private static final double SPARED = 0.2;

    private WiringSection() {}

    static void write(DocumentContent.Builder builder, Plan plan, UnitSystem units) {
        if (plan.car().wiring().isEmpty()) {
            builder.say(
                    Section.WIRING,
                    "The job sheet has no section \"wiring\": loads, channels and sensors are not planned here.");
            return;
        }
        Wiring wiring = plan.car().wiring().get();
        builder.say(
                Section.WIRING,
                "Each fuse is the smallest blade fuse (ISO 8820-3) that carries its load at 75 % of its rating and its"
                        + " surge; each wire carries its fuse after 33 CFR 183.425, Table 5 (105 \u00b0C insulation; a"
                        + " table made for boats, no open one for cars was found), less for warm places and bundles, and"
                        + " loses no more than "
                        + QuantityKind.FRACTION.text(wiring.rules().allowedDrop(), UnitSystem.SI) + " of "
                        + QuantityKind.VOLTAGE.text(wiring.rules().voltage(), UnitSystem.SI)
                        + " there and back (ASTM B258 wire, copper at "
                        + Both.of(QuantityKind.TEMPERATURE, wiring.rules().temperature()) + ").");
        builder.rows(Section.WIRING, WiringTables.cables(wiring));
        builder.rows(Section.WIRING, WiringTables.switching(wiring));
        builder.rows(
                Section.WIRING,
                WiringTables.balances(
                        wiring,
                        plan.setup().passes().seconds(),
                        passRpm(plan),
                        plan.job().day().rest()));
        builder.say(
                Section.WIRING,
                "With the engine off, heater and whatever else runs between passes take a fifth of the battery in "
                        + Math.round(wiring.waitingOnBattery(SPARED) / 60) + " minutes.");
        builder.rows(Section.WIRING, PinTables.of(wiring.pins()));
        Listing remedies = PinTables.remedies(wiring.pinTask());
        if (!remedies.isEmpty()) {
            builder.rows(Section.WIRING, remedies);
            builder.rows(
                    Section.WIRING,
                    PinTables.changes(wiring.pins(), wiring.pinTask().cheapest(Importance.COULD)));
        }
        wiring.safety().ifPresent(chain -> builder.rows(Section.WIRING, PinTables.of(chain)));
        builder.rows(Section.WIRING, WiringTables.checks(wiring));
        builder.rows(Section.WIRING, SensorTables.errors(wiring));
        for (SensorInput input : wiring.inputs()) {
            SensorTables.across(input, units).forEach(table -> builder.rows(Section.WIRING, table));
            builder.say(
                    Section.WIRING,
                    "Law: " + input.sensor().law() + ". " + input.sensor().faults());
        }
    }

    private static double passRpm(Plan plan) {
        return (plan.setup().arming().rpmLow() + plan.setup().arming().rpmHigh()) / 2;
    }
}
