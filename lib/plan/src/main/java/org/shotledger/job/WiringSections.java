package org.shotledger.job;

import static org.shotledger.units.QuantityKind.CURRENT;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.LENGTH;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.TIME;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import org.shotledger.car.BottleSheet;
import org.shotledger.car.Controller;
import org.shotledger.car.Electrical;
import org.shotledger.car.Injection;
import org.shotledger.car.Turbo;
import org.shotledger.nitrous.FuelCell;
import org.shotledger.nitrous.WetKit;
import org.shotledger.sheet.SheetSection;
import org.shotledger.supply.PumpGroup;
import org.shotledger.supply.Regulator;
import org.shotledger.units.UnitFactors;
import org.shotledger.wiring.Cable;
import org.shotledger.wiring.InputStage;
import org.shotledger.wiring.Load;
import org.shotledger.wiring.PinSignal;
import org.shotledger.wiring.PinTask;
import org.shotledger.wiring.PowerSupply;
import org.shotledger.wiring.SafetyChain;
import org.shotledger.wiring.SensorInput;
import org.shotledger.wiring.Wiring;

/** Reads loads and signals of the wiring, and puts the sensors beside them. */
final class WiringSections {
    private static final String HABIT = "common practice, no source";
    private static final Map<String, Load.Phase> PHASES = phases();

    private final Injection injection;
    private final WetKit kit;
    private final Regulator mainRegulator;
    private final Optional<Regulator> nitrousRegulator;
    private final BottleSheet bottle;
    private final double boost;

    /** Takes the parts whose current stands elsewhere in the sheet; each may be null when its own section was wrong. */
    WiringSections(SetupSections setups, Injection injection, WetKit kit, KitSections.Bottled bottled, Turbo turbo) {
        this.mainRegulator = setups.main;
        this.nitrousRegulator = setups.nitrous;
        this.bottle = bottled == null ? null : bottled.bottle();
        this.injection = injection;
        this.kit = kit;
        this.boost = turbo == null ? 0 : turbo.boostCeiling();
    }

    Wiring wiring(SheetSection s, Electrical electrical, Controller controller) {
        double temperature =
                s.figureOr("copper-temperature", TEMPERATURE, 253.15, 423.15, 353.15, "a warm engine bay, assumed");
        double drop = s.figureOr("voltage-drop", FRACTION, 0.005, 0.2, 0.03, HABIT);
        int bundled = s.countOr("bundled", 1, 50, 3, HABIT);
        double output = s.figure("output-current", CURRENT, 0.05, 50);
        double share = s.figureOr("alternator-share", FRACTION, 0.3, 1, 0.8, HABIT + "; a hot alternator gives less");
        List<Load> loads = loads(s.section("loads"));
        List<PinSignal> signals = new SignalSections().signals(s.section("signals"));
        List<SensorInput> inputs = new ArrayList<>();
        InputStage stage = controller == null ? InputStage.USUAL : controller.stage();
        s.section("sensors").namedSections().forEach((key, one) -> {
            SensorInput input = SensorInputs.input(ControllerSection.words(key), one, stage);
            if (input != null) {
                inputs.add(input);
            }
        });
        Optional<SafetyChain> safety = s.sectionIf("safety").map(SafetySection::chain);
        if (electrical == null || controller == null) {
            s.report("loads", "The wiring leans on the sections \"electrical\" and \"controller\"; add or mend them.");
        }
        if (injection == null) {
            s.report("loads", "The wiring leans on the section \"injection\"; add or mend it.");
        }
        return s.make(() -> {
            PinTask task = new PinTask(controller.freePins(output), signals, controller.expanders());
            Wiring wiring = new Wiring(
                    new Cable.Rules(injection.voltage(), temperature, drop, bundled),
                    output,
                    new PowerSupply(
                            electrical.alternatorCurrent(),
                            share,
                            electrical.batteryCharge(),
                            electrical.overSpeed(),
                            electrical.idleRpm()),
                    loads,
                    task,
                    task.asBuilt(),
                    inputs,
                    safety);
            wiring.cables();
            return wiring;
        });
    }

    private List<Load> loads(SheetSection s) {
        List<Load> loads = new ArrayList<>();
        s.namedSections().forEach((key, one) -> loads.add(load(ControllerSection.words(key), one)));
        return loads;
    }

    private Load load(String name, SheetSection s) {
        double current = current(s);
        double surge = s.has("surge") ? s.figure("surge", CURRENT, 0.01, 5000) : current;
        double surgeTime = s.figureOr("surge-time", TIME, 0, 10, 0, "no surge");
        double duty = s.figureOr("duty", FRACTION, 0, 1, 1, "on all the time in its phase");
        double length = s.figure("length", LENGTH, 0.05, 30);
        boolean engine = s.yesOr("engine-space", false, "its cable lies outside the engine space");
        boolean coil = s.yesOr("coil", false, "not a coil");
        boolean pulsed = s.yesOr("pulsed", false, "switched, not pulsed");
        Load.Phase phase = s.choice("on", PHASES);
        return s.make(() -> new Load(name, current, surge, surgeTime, duty, length, engine, coil, pulsed, phase));
    }

    /** A current as written, or that of a part which the sheet describes elsewhere: no figure stands twice. */
    private double current(SheetSection s) {
        if (!s.has("part")) {
            return s.figure("current", CURRENT, 0.01, 500);
        }
        if (s.has("current")) {
            s.report("current", "Current and part both stand here; the part brings its own current, keep one of them.");
        }
        Map<String, DoubleSupplier> parts = new LinkedHashMap<>();
        parts.put("main-pump", () -> pump(injection.pumps(), mainRegulator));
        parts.put("nitrous-pump", this::nitrousPump);
        parts.put("bottle-heater", () -> bottle.heaterPower() / injection.voltage());
        DoubleSupplier part = s.choice("part", parts);
        if (injection == null || kit == null || bottle == null || mainRegulator == null) {
            return 1; // their own sections have said why there is no job
        }
        try {
            return part.getAsDouble();
        } catch (IllegalArgumentException e) {
            s.report("part", e.getMessage());
            return 1;
        }
    }

    private double nitrousPump() {
        PumpGroup pumps = kit.fuel()
                .cell()
                .map(FuelCell::pumps)
                .orElseThrow(() -> new IllegalArgumentException(
                        "The nitrous fuel comes from the main rail and has no pump of its own; take this load out: the main pump"
                                + " carries both."));
        return nitrousRegulator.map(regulator -> pump(pumps, regulator)).orElse(1.0);
    }

    private double pump(PumpGroup group, Regulator regulator) {
        double ambient = UnitFactors.ATMOSPHERE;
        double rise = regulator.railPressure(ambient, ambient + boost) - ambient;
        var pump = group.pumps().get(0);
        return pump.current(rise, group.terminalVoltage(pump, rise, injection.voltage()));
    }

    private static Map<String, Load.Phase> phases() {
        Map<String, Load.Phase> map = new LinkedHashMap<>();
        map.put("always", Load.Phase.ALWAYS);
        map.put("pass", Load.Phase.PASS);
        map.put("waiting", Load.Phase.WAITING);
        return map;
    }
}
