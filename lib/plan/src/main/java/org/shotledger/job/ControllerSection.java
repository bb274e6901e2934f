package org.shotledger.job;

import static org.shotledger.units.QuantityKind.CURRENT;
import static org.shotledger.units.QuantityKind.FREQUENCY;
import static org.shotledger.units.QuantityKind.RESISTANCE;
import static org.shotledger.units.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.shotledger.car.Controller;
import org.shotledger.sheet.SheetSection;
import org.shotledger.wiring.BreakPoints;
import org.shotledger.wiring.InputStage;
import org.shotledger.wiring.Pin;
import org.shotledger.wiring.PinExpander;
import org.shotledger.wiring.PinKind;

/** Reads the controller: its free channels, counted or pin by pin, what may be bought, and how it reads sensors. */
final class ControllerSection {
    private static final int MOST_PINS = 60;
    private static final Map<String, BiFunction<String, SheetSection, Pin>> KINDS = kinds();

    private ControllerSection() {}

    static Controller controller(SheetSection s) {
        List<Pin> pins = new ArrayList<>();
        boolean described = s.has("pins");
        if (described) {
            pins.addAll(pins(s.section("pins")));
        }
        int inputs = count(s, "inputs", described);
        int inputsUsed = count(s, "inputs-used", described);
        int outputs = count(s, "outputs", described);
        int outputsUsed = count(s, "outputs-used", described);
        int pulsing = count(s, "pulsing-outputs", described);
        int pulsingUsed = s.countOr(
                "pulsing-outputs-used", 0, 500, Math.min(pulsing, outputsUsed), "taken as used first, the safe side");
        List<PinExpander> expanders = new ArrayList<>();
        s.sectionIf("expanders")
                .ifPresent(e -> e.namedSections().forEach((key, one) -> expanders.add(expander(words(key), one))));
        InputStage stage =
                s.sectionIf("sensor-inputs").map(ControllerSection::stage).orElse(InputStage.USUAL);
        return s.make(() ->
                new Controller(inputs, inputsUsed, outputs, outputsUsed, pulsing, pulsingUsed, pins, expanders, stage));
    }

    /** Counts are asked for where no pins are described. */
    private static int count(SheetSection s, String key, boolean described) {
        return described ? s.countOr(key, 0, 500, 0, "the pins are described") : s.count(key, 0, 500);
    }

    private static InputStage stage(SheetSection s) {
        InputStage usual = InputStage.USUAL;
        String habit = "common practice, no source";
        double supply = s.figureOr("supply", VOLTAGE, 1, 30, 5, "usual sensor supply");
        double width = s.halfWidth("supply");
        boolean shared = s.yesOr("shared-reference", usual.sharedReference(), "taken as apart, the safe side");
        int bits = s.countOr("converter-bits", 1, 32, usual.bits(), habit);
        double range = s.figureOr("converter-range", VOLTAGE, 0.01, 30, usual.range(), habit);
        int points = s.countOr("table-points", 2, 128, usual.points(), habit);
        BreakPoints.Spacing spacing = s.choiceOr(
                "table-spacing",
                SensorInputs.SPACINGS,
                SensorInputs.word(usual.spacing()),
                "the least that controllers do");
        return s.make(() -> new InputStage(
                Double.isNaN(width) ? usual.supplyTolerance() : width / supply, shared, bits, range, points, spacing));
    }

    private static List<Pin> pins(SheetSection s) {
        List<Pin> pins = new ArrayList<>();
        s.namedSections().forEach((key, one) -> {
            int count = one.countOr("count", 1, MOST_PINS, 1, "one pin");
            Pin pin = pin(words(key), one);
            for (int i = 1; pin != null && i <= count; i++) {
                pins.add(count == 1 ? pin : pin.named(pin.name() + " " + i));
            }
        });
        return pins;
    }

    private static Pin pin(String name, SheetSection s) {
        return s.choice("kind", KINDS).apply(name, s);
    }

    private static PinExpander expander(String name, SheetSection s) {
        double price = s.figureOr("price", org.shotledger.units.QuantityKind.RATIO, 0, 1e6, 0, "not given");
        double frames = s.figure("frames", FREQUENCY, 0.1, 10_000);
        double rate = s.figure("rate", FREQUENCY, 0.1, 10_000);
        List<Pin> pins = pins(s.section("pins"));
        return s.make(() -> new PinExpander(name, price, frames, rate, pins));
    }

    static String words(String key) {
        return key.replace('-', ' ');
    }

    private static Pin output(String name, SheetSection s, PinKind kind) {
        double current = s.figure("current", CURRENT, 0.01, 200);
        double pulses = s.figureOr("pulses", FREQUENCY, 0, 1e6, 0, "on and off only");
        return s.make(() -> Pin.output(name, kind, current, pulses));
    }

    private static Map<String, BiFunction<String, SheetSection, Pin>> kinds() {
        Map<String, BiFunction<String, SheetSection, Pin>> map = new LinkedHashMap<>();
        map.put("analogue", (name, s) -> s.make(() -> Pin.analogue(name)));
        map.put("pull-up", (name, s) -> {
            double ohm = s.figure("pull-up", RESISTANCE, 10, 1e6);
            boolean off = s.yesOr("switchable", false, "its pull-up stays");
            return s.make(() -> Pin.pullUp(name, ohm, off));
        });
        map.put("thermocouple", (name, s) -> s.make(() -> Pin.thermocouple(name)));
        map.put("frequency", (name, s) -> {
            double threshold = s.figureOr("threshold", VOLTAGE, 0, 30, 2.5, "common practice, no source");
            double edges = s.figureOr("edges", FREQUENCY, 0.1, 1e6, 1_000, "common practice, no source");
            return s.make(() -> Pin.frequency(name, threshold, edges));
        });
        map.put("digital", (name, s) -> {
            double threshold = s.figureOr("threshold", VOLTAGE, 0, 30, 2.5, "common practice, no source");
            return s.make(() -> new Pin(name, java.util.Set.of(PinKind.DIGITAL), 0, threshold, 0, 0));
        });
        map.put("low-side", (name, s) -> output(name, s, PinKind.LOW_SIDE));
        map.put("high-side", (name, s) -> output(name, s, PinKind.HIGH_SIDE));
        map.put("half-bridge", (name, s) -> output(name, s, PinKind.HALF_BRIDGE));
        map.put("bus", (name, s) -> {
            double frames = s.figureOr("frames", FREQUENCY, 1, 10_000, 200, "common practice, no source");
            return s.make(() -> Pin.bus(name, frames));
        });
        return map;
    }
}
