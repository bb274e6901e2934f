package org.shotledger.budget;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.BORE;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.TEMPERATURE;

import org.shotledger.build.Build;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.MixtureGoal;

/** The wish, the settings chosen for it, and what surrounds the engine. */
final class WishEntries {
    private WishEntries() {}

    static void write(LedgerPen pen, LedgerSubject from) {
        Evaluation peak = from.peak();
        Build build = from.build();
        Wish wish = from.wish();
        pen.asked(
                "wish",
                "wheel power asked for",
                "P",
                POWER,
                wish.wheelPower(),
                build.target().wheelPower(),
                "target.wheel-power");
        mixtureGoal(pen, build, wish);
        pen.chosen("engine-speed", "engine speed of most power", "N", ROTATION, peak.rpm());
        pen.chosen("boost", "boost held", "p_b", GAUGE_PRESSURE, peak.gaugePressure(), "wish");
        JetPair jets = peak.demand().jets().orElseThrow();
        pen.chosen("nitrous-jet", "nitrous jet", "d_N", BORE, jets.nitrousBore(), "wish", "boost");
        pen.chosen("fuel-jet", "fuel jet", "d_F", BORE, jets.fuelBore(), "nitrous-jet", "mixture-wanted");

        var air = peak.conditions().air();
        String place = "conditions." + wish.conditions() + ".";
        pen.sheet(
                "ambient-temperature",
                "ambient temperature",
                "T_a",
                TEMPERATURE,
                air.temperature(),
                place + "temperature");
        pen.sheet("humidity", "relative humidity", "phi", FRACTION, air.relativeHumidity(), place + "humidity");
        pen.calculated("ambient-pressure", "ambient pressure", "p_a", ABSOLUTE_PRESSURE, air.pressure())
                .by("standard atmosphere at the altitude, or the station pressure where it is given", "ISO 2533 (1975)")
                .on();
        pen.calculated(
                        "plenum-pressure",
                        "plenum pressure",
                        "p_m",
                        ABSOLUTE_PRESSURE,
                        peak.demand().plenumPressure())
                .by("ambient pressure plus boost", "definition")
                .on("ambient-pressure", "boost");
    }

    /** The goal in the words in which it was asked; the sheet's unless the wish has its own. */
    private static void mixtureGoal(LedgerPen pen, Build build, Wish wish) {
        MixtureGoal written = build.tune().goal();
        MixtureGoal goal = wish.mixture().orElse(written);
        String path = switch (goal.kind()) {
            case TOTAL_LAMBDA -> "tune.nitrous-lambda";
            case CIRCUIT_RATIO -> "tune.nitrous-ratio";
            case CIRCUIT_LAMBDA -> "tune.nitrous-circuit-lambda";
        };
        double inSheet = goal.kind() == written.kind() ? written.value() : Double.NaN;
        pen.asked(
                "mixture-wanted", "mixture asked for, " + goal.kind().words(), "", RATIO, goal.value(), inSheet, path);
    }
}
