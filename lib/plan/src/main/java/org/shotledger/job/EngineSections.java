package org.shotledger.job;

import static org.shotledger.units.QuantityKind.BORE;
import static org.shotledger.units.QuantityKind.DENSITY;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.LENGTH;
import static org.shotledger.units.QuantityKind.PRESSURE_DIFFERENCE;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.SPECIFIC_ENERGY;
import static org.shotledger.units.QuantityKind.TEMPERATURE;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shotledger.car.FuelStreams;
import org.shotledger.curve.Curve;
import org.shotledger.engine.ChenFlynn;
import org.shotledger.engine.Engine;
import org.shotledger.engine.Intake;
import org.shotledger.engine.NitrousFactor;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.fuel.Octane;
import org.shotledger.sheet.SheetSection;
import org.shotledger.units.Excerpt;

/** Reads engine and fuels. */
final class EngineSections {
    /** Half-width of the share of nitrous work where a sheet states the share alone: our choice. */
    private static final double PULL_BAND = 0.05;

    private EngineSections() {}

    static Engine engine(SheetSection s) {
        String name = s.textOr("name", "engine");
        int cylinders = s.count("cylinders", 1, 16);
        double bore = s.figure("bore", LENGTH, 0.04, 0.16);
        double stroke = s.figure("stroke", LENGTH, 0.03, 0.18);
        double rod = s.figure("rod-length", LENGTH, 0.05, 0.3);
        double ratio = s.figure("compression-ratio", RATIO, 5, 20);
        double redLine = s.figure("red-line", ROTATION, 1000, 20_000);
        Optional<Curve> ve = s.table("volumetric-efficiency", Tables.VOLUMETRIC_EFFICIENCY)
                .map(t -> Tables.curve("volumetric efficiency", t, "engine speed", "volumetric efficiency"));
        s.sectionIf("friction");
        return s.make(() -> new Engine(name, cylinders, bore, stroke, rod, ratio, ve.orElseThrow(), redLine));
    }

    /** Share of the nitrous work that arrives; a pull that states no band is taken to know it within 0.05, our choice. */
    static NitrousFactor nitrousWork(SheetSection engine) {
        NitrousFactor usual = NitrousFactor.NOT_MEASURED;
        double share = engine.figureOr(
                "nitrous-work",
                FRACTION,
                0.5,
                1.1,
                usual.value(),
                "not measured, our choice within a band of 88 to 100 %");
        if (!engine.has("nitrous-work") || Double.isNaN(share)) {
            return usual;
        }
        double stated = engine.halfWidth("nitrous-work");
        double band = Double.isNaN(stated) ? PULL_BAND : stated;
        return new NitrousFactor(share, Math.max(0.5, share - band), Math.min(1.1, share + band));
    }

    static ChenFlynn friction(SheetSection engine) {
        Optional<SheetSection> given = engine.sectionIf("friction");
        if (given.isEmpty()) {
            return ChenFlynn.TYPICAL;
        }
        SheetSection s = given.get();
        double constant = s.figure("constant", PRESSURE_DIFFERENCE, 0, 2e5);
        double pressure = s.figure("share-of-peak-pressure", RATIO, 0, 0.02);
        double speed = s.figure("per-piston-speed", RATIO, 0, 30e3);
        double square = s.figure("per-piston-speed-squared", RATIO, 0, 2e3);
        return s.make(() -> new ChenFlynn(constant, pressure, speed, square));
    }

    static String conditions(SheetSection s, Set<String> known) {
        String where = s.text("conditions");
        if (!where.isEmpty() && !known.contains(where)) {
            s.report(
                    "conditions",
                    Excerpt.quoted(where) + " is not among the conditions of the sheet; it has "
                            + String.join(", ", known) + ".");
        }
        return where;
    }

    @SuppressWarnings("ReferenceEquality") // "same" gives the main fuel itself; a second tank may hold an equal one
    static FuelStreams fuels(SheetSection s) {
        SheetSection mainSection = s.section("main");
        Fuel main = fuel(mainSection, null);
        Optional<FuelStreams.Blend> blend = Optional.ofNullable(main)
                .filter(fuel -> mainSection.has("ethanol"))
                .map(fuel -> blended(mainSection));
        Fuel nitrous = fuel(s.section("nitrous"), main);
        boolean same = nitrous != null && nitrous == main;
        double temperature = s.figure("temperature", TEMPERATURE, 230, 360);
        double mainShare = s.figureOr("main-evaporated", FRACTION, 0, 1, 0.5, "assumed, no source");
        double nitrousShare = s.figureOr("nitrous-evaporated", FRACTION, 0, 1, 0.3, "assumed, no source");
        Intake.Warming usual = Intake.Warming.USUAL;
        double oxide = s.figureOr(
                "nitrous-oxide-evaporated", FRACTION, 0.5, 1, usual.nitrousEvaporated(), "our choice, no source");
        double walls = s.figureOr("wall-heat", FRACTION, 0, 0.6, usual.wallShare(), "our choice, no source");
        return s.make(() -> new FuelStreams(
                main,
                blend,
                same ? Optional.empty() : Optional.of(nitrous),
                temperature,
                mainShare,
                nitrousShare,
                new Intake.Warming(oxide, walls)));
    }

    static Fuel fuel(SheetSection s, Fuel main) {
        Map<String, String> kinds = new LinkedHashMap<>();
        for (String kind : new String[] {"ethanol-blend", "gasoline", "methanol", "ethanol"}) {
            kinds.put(kind, kind);
        }
        if (!s.path().endsWith("main")) {
            kinds.put("same", "same");
        }
        return switch (s.choice("kind", kinds)) {
            case "same" -> s.make(() -> main);
            case "methanol" -> s.make(() -> Fuels.METHANOL);
            case "ethanol" -> s.make(() -> Fuels.ETHANOL);
            case "gasoline" -> gasoline(s);
            default -> blend(s);
        };
    }

    private static Fuel blend(SheetSection s) {
        FuelStreams.Blend blend = blended(s);
        return s.make(() -> blend.at(blend.ethanol()));
    }

    private static FuelStreams.Blend blended(SheetSection s) {
        double ethanol = s.figure("ethanol", FRACTION, 0, 1);
        double water = s.figureOr("water", FRACTION, 0, 0.1, 0, "taken as dry");
        return new FuelStreams.Blend(ethanol, water, Fuels.GASOLINE);
    }

    private static Fuel gasoline(SheetSection s) {
        String name = s.textOr("name", "gasoline");
        double hydrogen = s.figureOr("hydrogen-to-carbon", RATIO, 1.2, 2.5, 1.87, "US DOE fuel property table");
        double density = s.figureOr("density", DENSITY, 650, 850, 745, "US DOE fuel property table");
        double heat =
                s.figureOr("lower-heating-value", SPECIFIC_ENERGY, 38e6, 46e6, 43.4e6, "US DOE fuel property table");
        Optional<Octane> octane = Optional.empty();
        if (s.has("research-octane")) {
            double research = s.figure("research-octane", RATIO, 60, 130);
            double motor = s.figure("motor-octane", RATIO, 60, 130);
            octane = Optional.ofNullable(octane(research, motor));
        }
        Optional<Octane> known = octane;
        return s.make(() -> Fuels.gasoline(name, hydrogen, density, heat, known, "job sheet"));
    }

    private static Octane octane(double research, double motor) {
        return Double.isNaN(research + motor) ? null : new Octane(research, motor);
    }

    static double hole(SheetSection s, String key) {
        return s.figure(key, BORE, 1e-4, 0.05);
    }
}
