package org.shotledger.job;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.FREQUENCY;
import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;
import static org.shotledger.units.QuantityKind.LENGTH;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.RESISTANCE;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.SPEED;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.TEMPERATURE_DIFFERENCE;
import static org.shotledger.units.QuantityKind.TIME;
import static org.shotledger.units.QuantityKind.VOLTAGE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.shotledger.sheet.SheetSection;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitFactors;
import org.shotledger.wiring.EthanolSensor;
import org.shotledger.wiring.FrequencySensor;
import org.shotledger.wiring.LinearSensor;
import org.shotledger.wiring.PulseWidthSensor;
import org.shotledger.wiring.RatiometricSensor;
import org.shotledger.wiring.ResistanceSensor;
import org.shotledger.wiring.Sensor;
import org.shotledger.wiring.ThermistorSensor;
import org.shotledger.wiring.ThermistorSensor.Known;
import org.shotledger.wiring.ThermocoupleSensor;
import org.shotledger.wiring.ThermocoupleType;
import org.shotledger.wiring.ThrottleSensor;

/** Reads one sensor by its kind, from the figures of its data line. */
final class SensorSections {
    private static final String HABIT = "common practice, no source";
    private static final String USUAL_SUPPLY = "usual sensor supply";
    private static final Map<String, BiFunction<String, SheetSection, Sensor>> KINDS = kinds();
    private static final Map<String, QuantityKind> PRESSURES = pressures();
    private static final Map<String, QuantityKind> MEASURES = measures();

    private SensorSections() {}

    static Sensor sensor(String name, SheetSection s) {
        return s.choice("kind", KINDS).apply(name, s);
    }

    private static Sensor ratiometric(String name, SheetSection s) {
        QuantityKind kind = s.choiceOr("measures", PRESSURES, "gauge-pressure", "the usual kind");
        boolean gauge = kind == GAUGE_PRESSURE;
        double low = gauge ? s.figureOr("low", kind, -1e5, 1e8, 0, "begins at ambient") : s.figure("low", kind, 0, 1e8);
        double high = s.figure("high", kind, 1e4, 1e8);
        double supply = s.figureOr("supply", VOLTAGE, 1, 30, 5, USUAL_SUPPLY);
        double lowShare = share(s, "low", supply, 0.1, "usual, leaves room to see a broken wire");
        double highShare = share(s, "high", supply, 0.9, "usual, leaves room to see a short circuit");
        return s.make(() -> new RatiometricSensor(name, kind, low, high, supply, lowShare, highShare));
    }

    /** An end as a share of the supply, or as the volts that a data line gives at its own supply. */
    private static double share(SheetSection s, String end, double supply, double usual, String why) {
        return s.has(end + "-voltage")
                ? s.figure(end + "-voltage", VOLTAGE, 0, 30) / supply
                : s.figureOr(end + "-share", FRACTION, 0, 1, usual, why);
    }

    private static Sensor linear(String name, SheetSection s) {
        QuantityKind kind = s.choice("measures", MEASURES);
        double low = measured(s, "low", kind);
        double high = measured(s, "high", kind);
        double lowVolts = s.figure("low-voltage", VOLTAGE, 0, 10);
        double highVolts = s.figure("high-voltage", VOLTAGE, 0, 10);
        return s.make(() -> new LinearSensor(name, kind, low, high, lowVolts, highVolts));
    }

    private static double measured(SheetSection s, String key, QuantityKind kind) {
        return s.figure(key, kind, least(kind), most(kind));
    }

    private static double least(QuantityKind kind) {
        return switch (kind) {
            case TEMPERATURE -> 173.15;
            case GAUGE_PRESSURE -> -1.1e5;
            default -> 0;
        };
    }

    private static double most(QuantityKind kind) {
        return switch (kind) {
            case TEMPERATURE -> 1_900;
            case RATIO -> 20;
            case FRACTION -> 1;
            default -> 1e8;
        };
    }

    private static Sensor throttle(String name, SheetSection s) {
        double supply = s.figureOr("supply", VOLTAGE, 1, 30, 5, USUAL_SUPPLY);
        double closed = s.figure("closed", VOLTAGE, 0, 30);
        double open = s.figure("open", VOLTAGE, 0, 30);
        return s.make(() -> new ThrottleSensor(name, closed, open, supply));
    }

    private static Sensor resistance(String name, SheetSection s) {
        QuantityKind kind = s.choice("measures", MEASURES);
        List<Double> values = s.figures("values", kind, least(kind), most(kind));
        List<Double> ohms = s.figures("resistances", RESISTANCE, 0.01, 10e6);
        double pullUp = s.figure("pull-up", RESISTANCE, 10, 1e6);
        double supply = s.figureOr("supply", VOLTAGE, 1, 30, 5, USUAL_SUPPLY);
        return s.make(() -> new ResistanceSensor(name, kind, values, ohms, pullUp, supply));
    }

    private static Sensor thermistor(String name, SheetSection s) {
        double low = s.figure("low", TEMPERATURE, 203.15, 473.15);
        double high = s.figure("high", TEMPERATURE, 203.15, 473.15);
        double pullUp = s.figure("pull-up", RESISTANCE, 10, 1e6);
        double supply = s.figureOr("supply", VOLTAGE, 1, 30, 5, USUAL_SUPPLY);
        Known middle = known(s, "middle");
        double[] constants;
        if (s.has("beta")) {
            constants = ThermistorSensor.constants(middle, s.figure("beta", TEMPERATURE_DIFFERENCE, 1000, 10_000));
        } else {
            constants = ThermistorSensor.constants(List.of(known(s, "cold"), middle, known(s, "warm")));
        }
        return s.make(
                () -> new ThermistorSensor(name, low, high, constants[0], constants[1], constants[2], pullUp, supply));
    }

    private static Known known(SheetSection s, String which) {
        return new Known(
                s.figure(which, TEMPERATURE, 203.15, 473.15), s.figure(which + "-resistance", RESISTANCE, 1, 10e6));
    }

    private static BiFunction<String, SheetSection, Sensor> thermocouple(ThermocoupleType type) {
        return (name, s) -> {
            double freezing = Math.max(UnitFactors.ICE_POINT, type.low());
            double low = s.figureOr("low", TEMPERATURE, type.low(), type.high(), freezing, "begins at freezing");
            double high = s.figure("high", TEMPERATURE, type.low(), type.high());
            return s.make(() -> new ThermocoupleSensor(name, type, low, high));
        };
    }

    private static Sensor ethanol(String name, SheetSection s) {
        double none = s.figureOr("frequency-low", FREQUENCY, 1, 1e5, EthanolSensor.USUAL_NONE, HABIT);
        double pure = s.figureOr("frequency-high", FREQUENCY, 1, 1e5, EthanolSensor.USUAL_PURE, HABIT);
        return s.make(() -> new EthanolSensor(name, none, pure));
    }

    private static Sensor pulseWidth(String name, SheetSection s) {
        PulseWidthSensor usual = PulseWidthSensor.usual(name);
        double low = s.figureOr("low", TEMPERATURE, 200, 400, usual.low(), HABIT);
        double high = s.figureOr("high", TEMPERATURE, 200, 500, usual.high(), HABIT);
        double narrow = s.figureOr("narrow", TIME, 1e-5, 0.1, usual.narrow(), HABIT);
        double wide = s.figureOr("wide", TIME, 1e-5, 0.1, usual.wide(), HABIT);
        return s.make(() -> new PulseWidthSensor(name, low, high, narrow, wide));
    }

    private static Sensor shaftSpeed(String name, SheetSection s) {
        int teeth = s.count("teeth", 1, 1_000);
        double high = s.figure("high", ROTATION, 100, 300_000);
        return s.make(() -> FrequencySensor.shaft(name, teeth, high));
    }

    private static Sensor wheelSpeed(String name, SheetSection s) {
        int teeth = s.count("teeth", 1, 1_000);
        double radius = s.figure("tyre-radius", LENGTH, 0.15, 0.6);
        double high = s.figure("high", SPEED, 1, 200);
        return s.make(() -> FrequencySensor.wheel(name, teeth, radius, high));
    }

    private static Map<String, BiFunction<String, SheetSection, Sensor>> kinds() {
        Map<String, BiFunction<String, SheetSection, Sensor>> map = new LinkedHashMap<>();
        map.put("ratiometric", SensorSections::ratiometric);
        map.put("linear", SensorSections::linear);
        map.put("throttle", SensorSections::throttle);
        map.put("resistance", SensorSections::resistance);
        map.put("thermistor", SensorSections::thermistor);
        for (ThermocoupleType type : ThermocoupleType.values()) {
            map.put("thermocouple-" + type.name().toLowerCase(java.util.Locale.ROOT), thermocouple(type));
        }
        map.put("ethanol", SensorSections::ethanol);
        map.put("pulse-width", SensorSections::pulseWidth);
        map.put("shaft-speed", SensorSections::shaftSpeed);
        map.put("wheel-speed", SensorSections::wheelSpeed);
        return map;
    }

    private static Map<String, QuantityKind> pressures() {
        Map<String, QuantityKind> map = new LinkedHashMap<>();
        map.put("gauge-pressure", GAUGE_PRESSURE);
        map.put("absolute-pressure", ABSOLUTE_PRESSURE);
        return map;
    }

    private static Map<String, QuantityKind> measures() {
        Map<String, QuantityKind> map = new LinkedHashMap<>(pressures());
        map.put("temperature", TEMPERATURE);
        map.put("lambda", RATIO);
        map.put("share", FRACTION);
        return map;
    }
}
