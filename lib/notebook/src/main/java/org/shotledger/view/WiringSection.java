package org.shotledger.view;

import java.util.List;
import org.shotledger.document.DocumentContent;
import org.shotledger.document.Section;
import org.shotledger.plan.Plan;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;
import org.shotledger.wiring.Channels;
import org.shotledger.wiring.Sensor;
import org.shotledger.wiring.Signal;
import org.shotledger.wiring.Wiring;

/** The section on wiring, controller channels and sensors. */
final class WiringSection {
    private static final int TABLE_POINTS = 9;

    /** Charge that may be taken from a battery which must still start the engine: common practice, no source. */
    private static final double SPARED = 0.2;

    private WiringSection() {}

    static void write(DocumentContent.Builder builder, Plan plan) {
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
                        plan.job().day().rest()));
        builder.say(
                Section.WIRING,
                "With the engine off, heater and whatever else runs between passes take a fifth of the battery in "
                        + Math.round(wiring.waitingOnBattery(SPARED) / 60) + " minutes.");
        builder.rows(Section.WIRING, WiringTables.channels(wiring.channels()));
        builder.points(Section.WIRING, channelAdvice(wiring.channels()));
        builder.rows(Section.WIRING, WiringTables.checks(wiring));
        for (Sensor sensor : wiring.sensors()) {
            builder.rows(Section.WIRING, WiringTables.table(sensor, TABLE_POINTS));
            builder.say(Section.WIRING, "Law: " + sensor.law() + ". " + sensor.faults());
        }
    }

    private static List<String> channelAdvice(Channels channels) {
        List<String> advice = new java.util.ArrayList<>();
        for (Signal signal : channels.missing()) {
            advice.add("No channel is left for " + signal.name()
                    + ", without which the kit must not be armed: free one, or add a module.");
        }
        for (Channels.Place place : channels.places()) {
            if (place.fate() == Channels.Fate.MOVED) {
                advice.add(
                        place.signal().name() + " " + place.signal().instead().words() + ".");
            } else if (place.fate() == Channels.Fate.OUT && place.signal().need() != Signal.Need.MUST) {
                advice.add(place.signal().name() + " must go: no channel is left and no other way was named.");
            }
        }
        return advice;
    }
}
