package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.ALTITUDE;
import static org.shotledger.units.QuantityKind.BORE;
import static org.shotledger.units.QuantityKind.CRANK_ANGLE;
import static org.shotledger.units.QuantityKind.DENSITY;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.VOLTAGE;

import org.shotledger.car.SheetPaths;
import org.shotledger.engine.MoistAir;
import org.shotledger.engine.StandardAtmosphere;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.MixtureGoal;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.Target;

/** What is asked, what is set and what surrounds the engine. */
final class SetupEntries {
    private static final String SET = "this setup";

    private SetupEntries() {}

    static void target(LedgerPen pen, Target target) {
        pen.given(
                        "target",
                        "wheel power asked for",
                        "P",
                        POWER,
                        target.wheelPower(),
                        SheetPaths.TARGET_POWER,
                        "asked here")
                .enter();
        MixtureGoal goal = target.mixture();
        String path = switch (goal.kind()) {
            case TOTAL_LAMBDA -> SheetPaths.NITROUS_LAMBDA;
            case CIRCUIT_RATIO -> SheetPaths.NITROUS_RATIO;
            case CIRCUIT_LAMBDA -> SheetPaths.CIRCUIT_LAMBDA;
        };
        String name = "mixture asked for, " + goal.kind().words();
        pen.given("mixture-asked", name, "", RATIO, goal.value(), path, "asked here")
                .enter();
    }

    static void write(LedgerPen pen, Subject from) {
        set(pen, from);
        weather(pen, from);
        boost(pen, from);
    }

    private static void set(LedgerPen pen, Subject from) {
        OperatingPoint p = from.point();
        pen.calculated("engine-speed", "engine speed of most power", "N", ROTATION, p.rpm())
                .by("the speed of most power at the wheels among those of the outcome", SET)
                .enter();
        if (from.nitrous()) {
            JetPair jets = from.setup().jets().orElseThrow();
            pen.given("nitrous-jet", "nitrous jet", "d_N", BORE, jets.nitrousBore(), SheetPaths.NITROUS_JET, SET)
                    .enter();
            pen.given("fuel-jet", "fuel jet", "d_F", BORE, jets.fuelBore(), SheetPaths.FUEL_JET, SET)
                    .enter();
        }
        pen.given(
                        "lambda-main",
                        "mixture of the main fuel",
                        "lambda_0",
                        RATIO,
                        from.setup().mixture(),
                        SheetPaths.MAIN_LAMBDA,
                        SET)
                .enter();
        double retard = p.cylinder().retard();
        pen.given("spark-retard", "spark later than the builder's own", "", CRANK_ANGLE, retard, SheetPaths.RETARD, SET)
                .enter();
        double volts = from.at().voltage();
        pen.given("voltage", "supply voltage", "U", VOLTAGE, volts, SheetPaths.VOLTAGE, from.byCase())
                .enter();
    }

    private static void weather(LedgerPen pen, Subject from) {
        MoistAir air = from.point().air();
        String name = from.at().name();
        String warm = SheetPaths.conditions(name, "temperature");
        pen.given(
                        "ambient-temperature",
                        "ambient temperature",
                        "T_a",
                        TEMPERATURE,
                        air.temperature(),
                        warm,
                        from.byCase())
                .enter();
        String damp = SheetPaths.conditions(name, "humidity");
        pen.given("humidity", "relative humidity", "phi", FRACTION, air.relativeHumidity(), damp, from.byCase())
                .enter();
        pressure(pen, from, air, name);
        pen.calculated("humidity-ratio", "water carried by the dry air, kg per kg", "w", RATIO, air.humidityRatio())
                .by("0.622 p_w / (p_a - p_w), p_w = phi p_sat(T_a)", "definition")
                .on("ambient-pressure", "ambient-temperature", "humidity")
                .from(x -> new MoistAir(x[0], x[1], x[2]).humidityRatio());
        pen.calculated("ambient-density", "density of the ambient air", "rho_a", DENSITY, air.density())
                .by("p M / (R T) of the moist air", "ideal gas")
                .on("ambient-pressure", "ambient-temperature", "humidity")
                .from(x -> new MoistAir(x[0], x[1], x[2]).density());
    }

    private static void pressure(LedgerPen pen, Subject from, MoistAir air, String place) {
        var altitude = from.car()
                .origin(SheetPaths.conditions(place, "altitude"))
                .filter(o -> Math.abs(StandardAtmosphere.pressure(o.value()) / air.pressure() - 1) < Entry.ROUNDING);
        if (altitude.isEmpty()) {
            String path = SheetPaths.conditions(place, "pressure");
            pen.given(
                            "ambient-pressure",
                            "ambient pressure",
                            "p_a",
                            ABSOLUTE_PRESSURE,
                            air.pressure(),
                            path,
                            from.byCase())
                    .enter();
            return;
        }
        pen.sheet(
                "altitude",
                "altitude",
                "h",
                ALTITUDE,
                altitude.get().value(),
                altitude.get().path());
        pen.calculated("ambient-pressure", "ambient pressure", "p_a", ABSOLUTE_PRESSURE, air.pressure())
                .by("standard atmosphere at the altitude", "ISO 2533 (1975)")
                .on("altitude")
                .from(x -> StandardAtmosphere.pressure(x[0]));
    }

    /** The boost there is: what is set, or less where the turbocharger gives less. */
    private static void boost(LedgerPen pen, Subject from) {
        OperatingPoint p = from.point();
        BoostTable table = from.nitrous()
                ? from.setup().boost().armed()
                : from.setup().boost().off();
        pen.calculated("boost-target", "boost set at that speed", "", GAUGE_PRESSURE, table.at(p.rpm()))
                .by("boost target table, straight lines between its speeds", SET)
                .on("engine-speed")
                .from(x -> table.at(x[0]));
        var plenum = pen.calculated("plenum-pressure", "plenum pressure", "p_m", ABSOLUTE_PRESSURE, p.plenumPressure());
        if (p.plenumPressure() == p.wanted()) {
            plenum.by("ambient pressure plus boost", "definition")
                    .on("ambient-pressure", "boost-target")
                    .from(x -> x[0] + x[1]);
        } else {
            plenum.by(
                            "the highest below the boost set that the turbocharger gives",
                            "compressor map and turbine balance")
                    .on("engine-speed", "boost-target")
                    .from(x -> Evaluate.at(from.car(), from.setup(), from.at(), x[0])
                            .orElseThrow()
                            .plenumPressure());
        }
        pen.calculated("boost", "boost held", "p_b", GAUGE_PRESSURE, p.gaugePressure())
                .by("p_m - p_a", "definition")
                .on("plenum-pressure", "ambient-pressure")
                .from(x -> x[0] - x[1]);
    }
}
