package org.shotledger.job;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.LENGTH;
import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.SPECIFIC_HEAT;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.TIME;
import static org.shotledger.units.QuantityKind.VOLUME;
import static org.shotledger.units.QuantityKind.VOLUME_FLOW;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.shotledger.bottle.Bottle;
import org.shotledger.bottle.FillingCheck;
import org.shotledger.car.BottleSheet;
import org.shotledger.car.BuilderLimits;
import org.shotledger.car.FuelStreams;
import org.shotledger.evaluate.BothUnits;
import org.shotledger.flow.FlowBand;
import org.shotledger.flow.NitrousJet;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.nitrous.FuelCell;
import org.shotledger.nitrous.FuelCircuit;
import org.shotledger.nitrous.FuelJet;
import org.shotledger.nitrous.JetLadder;
import org.shotledger.nitrous.NitrousCircuit;
import org.shotledger.nitrous.NozzlePassages;
import org.shotledger.nitrous.NozzlePosition;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.nitrous.WetKit;
import org.shotledger.setup.BottleFill;
import org.shotledger.sheet.SheetSection;
import org.shotledger.supply.PumpGroup;
import org.shotledger.units.UnitSystem;

/** Reads wet kit and bottle. */
final class KitSections {
    private static final String HABIT = "common practice, no source";
    /** One standard deviation, relative, of a measured flow factor that states no band: our choice. */
    private static final double UNSTATED_MEASUREMENT = 0.03;
    /** 50 degC, K. */
    private static final double USUAL_SOAK = 323.15;

    /** Kv is counted in m3/h. */
    private static final double HOUR = 3600;

    /** Service pressure 1800 psi gauge, the least of 49 CFR 173.304a(a)(2), Pa absolute. */
    private static final double USUAL_MARKING = 125.1e5;

    /** Filling from which no temperature has a pressure within the equation of state, kg for each m3. */
    private static final double MOST_FILLED = 1000;

    /** What a nitrous system on the main rail does not have, and why it would count twice. */
    private static final Map<String, String> OWN_SUPPLY = ownSupply();

    private KitSections() {}

    private static Map<String, String> ownSupply() {
        Map<String, String> why = new LinkedHashMap<>();
        why.put("pumps", "the pumps of \"injection\" give both fuels and would count twice");
        why.put("regulator", "the regulator of \"injection\" holds the pressure of both and would count twice");
        why.put("cell-volume", "the fuel comes out of the car's own tank");
        return why;
    }

    static WetKit nitrousSystem(SheetSection s, boolean onMainRail) {
        s.readElsewhere("arming");
        Map<String, NozzlePosition> positions = new LinkedHashMap<>();
        positions.put("plenum", NozzlePosition.PLENUM);
        positions.put("before-throttle", NozzlePosition.BEFORE_THROTTLE);
        positions.put("runner", NozzlePosition.RUNNER);
        NozzlePosition position = s.choice("position", positions);
        int nozzles = s.count("nozzles", 1, 16);
        NitrousCircuit nitrous = nitrous(s.section("nitrous"));
        FuelCircuit fuel = fuel(s.section("fuel"), onMainRail);
        Optional<JetLadder> ladder = s.table("jet-ladder", Tables.JET_LADDER).map(Tables::ladder);
        Optional<NozzlePassages> passages = s.sectionIf("nozzle").map(KitSections::passages);
        return s.make(() -> new WetKit(position, nozzles, nitrous, fuel, ladder.orElseThrow(), passages));
    }

    private static NozzlePassages passages(SheetSection s) {
        double nitrous = EngineSections.hole(s, "nitrous-passage");
        double fuel = EngineSections.hole(s, "fuel-passage");
        return s.make(() -> new NozzlePassages(nitrous, fuel));
    }

    private static NitrousCircuit nitrous(SheetSection stated) {
        SheetSection s = CatalogueParts.hose(stated);
        double valve = s.figure("valve-kv", VOLUME_FLOW, 0.05 / HOUR, 20 / HOUR) * HOUR;
        double hoseBore = EngineSections.hole(s, "hose-bore");
        double hoseLength = s.figure("hose-length", LENGTH, 0.1, 20);
        double filter = s.figureOr("filter-loss", RATIO, 0, 100, 2, HABIT);
        Solenoid solenoid = solenoid(CatalogueParts.solenoid(s.section("solenoid"), "nitrous"));
        double lineBore = EngineSections.hole(s, "line-bore");
        double lineLength = s.figure("line-length", LENGTH, 0, 5);
        NitrousJet jet = JetSections.nitrous(s);
        Optional<FlowBand> measured = measured(s);
        return s.make(() -> new NitrousCircuit(
                valve,
                hoseBore,
                hoseLength,
                filter,
                solenoid,
                lineBore,
                lineLength,
                measured.map(jet::withMeasured).orElse(jet)));
    }

    /** What the jets were found to pass over what their law says, with its band; empty where nobody has measured it. */
    private static Optional<FlowBand> measured(SheetSection s) {
        if (!s.has("jet-flow-factor")) {
            return Optional.empty();
        }
        double factor = s.figure("jet-flow-factor", RATIO, 0.3, 2);
        double standard = s.uncertainty("jet-flow-factor");
        return Optional.ofNullable(s.make(
                () -> FlowBand.around(factor, Double.isNaN(standard) ? UNSTATED_MEASUREMENT : standard / factor)));
    }

    /** Whether the nitrous fuel comes from the main rail. */
    static boolean onMainRail(SheetSection fuel) {
        Map<String, Boolean> supplies = new LinkedHashMap<>();
        supplies.put("own-cell", false);
        supplies.put("main-rail", true);
        return Boolean.TRUE.equals(fuel.choiceOr("supply", supplies, "own-cell", "a cell with pumps of its own"));
    }

    private static FuelCircuit fuel(SheetSection s, boolean onMainRail) {
        s.readElsewhere("supply", "regulator");
        if (onMainRail) {
            s.readElsewhere("pumps", "cell-volume");
            OWN_SUPPLY.forEach((key, why) -> {
                if (s.has(key)) {
                    s.report(
                            key,
                            "\"" + key + "\" belongs to a supply of its own, but \"supply: main-rail\" stands here: "
                                    + why + "; take it out, or write \"supply: own-cell\".");
                }
            });
        }
        Supplier<Optional<FuelCell>> cell = onMainRail ? Optional::empty : cell(s);
        Solenoid solenoid = solenoid(CatalogueParts.solenoid(s.section("solenoid"), "fuel"));
        FuelJet jet = JetSections.fuel(s);
        Optional<FlowBand> measured = measured(s);
        return s.make(() -> new FuelCircuit(
                cell.get(), solenoid, measured.map(jet::withMeasured).orElse(jet)));
    }

    private static Supplier<Optional<FuelCell>> cell(SheetSection s) {
        PumpGroup pumps = SupplySections.pumps(s.section("pumps"), "nitrous fuel pump");
        double volume = s.figure("cell-volume", VOLUME, 1e-4, 0.2);
        return () -> Optional.of(new FuelCell(pumps, volume));
    }

    /** The main rail has one fuel: that of the tank. */
    static void oneFuel(SheetSection nitrousFuel, boolean onMainRail, FuelStreams fuels) {
        if (onMainRail && fuels != null && fuels.ownNitrous().isPresent()) {
            nitrousFuel.report(
                    "kind",
                    "\"nitrous-system.fuel.supply: main-rail\" gives the nitrous system the fuel of the tank; write \"same\" here,"
                            + " or give the nitrous fuel a cell of its own.");
        }
    }

    private static Solenoid solenoid(SheetSection s) {
        double bore = EngineSections.hole(s, "bore");
        double coefficient = s.figureOr("discharge-coefficient", RATIO, 0.1, 1, 0.65, HABIT);
        double opening = s.figureOr("opening-delay", TIME, 0, 0.5, 0.012, HABIT);
        double closing = s.figureOr("closing-delay", TIME, 0, 0.5, 0.010, HABIT);
        return s.make(() -> new Solenoid(bore, coefficient, opening, closing));
    }

    /** The bottle, and how it is filled. */
    record Bottled(BottleSheet bottle, BottleFill fill) {}

    static Bottled bottle(SheetSection stated, double ambient) {
        SheetSection s = CatalogueParts.bottle(stated);
        double capacity = s.figure("water-capacity", VOLUME, 2e-4, 0.1);
        double shell = s.figure("shell-mass", MASS, 0.1, 100);
        double heat = s.figureOr("shell-specific-heat", SPECIFIC_HEAT, 100, 2000, 900, "aluminium, handbook value");
        double charge = s.figure("charge", MASS, 0.05, 60);
        double start = temperature(s, "start", 233.15, ambient);
        double heater = s.figureOr("heater-power", POWER, 0, 3000, 0, "no heater");
        double heaterOff = heaterOff(s, heater, ambient);
        double service = s.has("service-pressure")
                ? s.pressure("service-pressure", 80e5, 400e5, ambient)
                : s.figureOr(
                        "service-pressure",
                        ABSOLUTE_PRESSURE,
                        80e5,
                        400e5,
                        USUAL_MARKING,
                        "assumed: the least marking that is filled with nitrous oxide, 1800 psi");
        double relief = s.pressure("relief-pressure", 80e5, 300e5, ambient);
        // a sheet may be stricter, never less strict
        double hottest =
                s.figureOr("hottest-soak", TEMPERATURE, USUAL_SOAK, 353, USUAL_SOAK, HABIT + ": a boot in the sun");
        if (charge > MOST_FILLED * capacity) {
            s.report(
                    "charge",
                    "A charge of " + BothUnits.text(MASS, charge) + " stands in " + VOLUME.text(capacity, UnitSystem.SI)
                            + " of \"water-capacity\" as liquid under more than any cylinder bears; 49 CFR 173.304a allows "
                            + BothUnits.text(MASS, 1000 * FillingCheck.LARGEST_DENSITY * capacity)
                            + ", change the charge or the bottle.");
        }
        return s.make(() -> {
            Bottle vessel = new Bottle(capacity, shell, heat);
            vessel.charged(charge, start);
            return new Bottled(
                    new BottleSheet(vessel, heater, heaterOff, service, relief, hottest),
                    new BottleFill(charge, start));
        });
    }

    /** The setting is checked, but means nothing, where the heater has no power. */
    private static double heaterOff(SheetSection s, double heater, double ambient) {
        boolean stated = s.has("heater-off-temperature") || s.has("heater-off-pressure");
        double off = heater > 0 || stated ? temperature(s, "heater-off", 275, ambient) : Double.NaN;
        return heater > 0 ? off : Double.NaN;
    }

    /** A temperature, or the pressure that nitrous oxide has at it while there is liquid in the bottle. */
    private static double temperature(SheetSection s, String what, double low, double ambient) {
        String pressureKey = what + "-pressure";
        String temperatureKey = what + "-temperature";
        if (!s.has(pressureKey)) {
            return s.figure(temperatureKey, TEMPERATURE, low, NitrousOxide.CRITICAL_TEMPERATURE);
        }
        if (s.has(temperatureKey)) {
            s.report(
                    temperatureKey,
                    "\"" + temperatureKey + "\" and \"" + pressureKey + "\" both stand here; a bottle with liquid in it"
                            + " has one pressure for each temperature, keep one of them.");
        }
        double pressure = s.pressure(pressureKey, 10e5, NitrousOxide.CRITICAL_PRESSURE, ambient);
        return Double.isNaN(pressure) ? Double.NaN : NitrousOxide.saturationTemperature(pressure);
    }

    /** A heater that turns off only above the pressure the builder allows heats the bottle beyond it. */
    static void heaterWithin(SheetSection s, Bottled bottled, BuilderLimits limits) {
        if (bottled == null || limits == null || Double.isNaN(bottled.bottle.heaterOff())) {
            return;
        }
        BottleSheet bottle = bottled.bottle;
        double pressure = NitrousOxide.saturationPressure(bottle.heaterOff());
        if (pressure > limits.bottlePressureHigh()) {
            s.report(
                    s.has("heater-off-pressure") ? "heater-off-pressure" : "heater-off-temperature",
                    "The heater turns off at " + TEMPERATURE.text(bottle.heaterOff(), UnitSystem.SI)
                            + ", where the bottle holds " + ABSOLUTE_PRESSURE.text(pressure, UnitSystem.SI)
                            + "; limits.bottle-pressure-high allows "
                            + ABSOLUTE_PRESSURE.text(limits.bottlePressureHigh(), UnitSystem.SI)
                            + ", lower the setting.");
        }
    }

    static BuilderLimits limits(SheetSection s, double ambient) {
        double peak = s.figure("peak-pressure", ABSOLUTE_PRESSURE, 30e5, 400e5);
        double torque = s.figure("crank-torque", org.shotledger.units.QuantityKind.TORQUE, 50, 5000);
        double piston = s.figureOr("piston-speed", org.shotledger.units.QuantityKind.SPEED, 10, 35, 25, HABIT);
        double low = s.figure("lambda-low", RATIO, 0.5, 1.2);
        double high = s.figure("lambda-high", RATIO, 0.5, 1.2);
        double duty = s.figureOr("injector-duty", FRACTION, 0.3, 1, 0.85, HABIT);
        double reserve = s.figureOr("pump-reserve", FRACTION, 0, 0.9, 0.15, HABIT);
        double surge = s.figureOr("surge-margin", FRACTION, 0, 0.5, 0.1, HABIT);
        double choke = s.figureOr("choke-margin", FRACTION, 0, 0.5, 0.05, HABIT);
        double bottleLow = s.pressure("bottle-pressure-low", 20e5, 72e5, ambient);
        double bottleHigh = s.pressure("bottle-pressure-high", 20e5, 100e5, ambient);
        double solenoid = s.figureOr("solenoid-share", FRACTION, 0.1, 2, 0.8, HABIT);
        double feed = s.figureOr("feed-loss", FRACTION, 0.02, 0.9, 0.25, HABIT);
        double passage = s.figureOr("passage-share", FRACTION, 0.1, 1, 0.8, HABIT);
        double exhaust = s.has("exhaust-temperature")
                ? s.figure("exhaust-temperature", TEMPERATURE, 900, 1700)
                : Double.POSITIVE_INFINITY;
        double disc =
                s.figureOr("relief-share", FRACTION, 0.3, FillingCheck.DISC_SHARE, FillingCheck.DISC_SHARE, HABIT);
        ordered(s, "lambda-low", low, "lambda-high", high);
        ordered(s, "bottle-pressure-low", bottleLow, "bottle-pressure-high", bottleHigh);
        return s.make(() -> new BuilderLimits(
                peak,
                torque,
                piston,
                low,
                high,
                duty,
                reserve,
                surge,
                choke,
                bottleLow,
                bottleHigh,
                solenoid,
                feed,
                passage,
                exhaust,
                disc));
    }

    static void ordered(SheetSection s, String lowKey, double low, String highKey, double high) {
        if (low >= high) {
            s.report(highKey, "\"" + highKey + "\" is not above \"" + lowKey + "\"; exchange or mend them.");
        }
    }
}
