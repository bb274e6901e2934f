package org.shotledger.job;

import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.FREQUENCY;
import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;
import static org.shotledger.units.QuantityKind.RESISTANCE;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.TEMPERATURE_DIFFERENCE;
import static org.shotledger.units.QuantityKind.VOLTAGE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.shotledger.sheet.Section;
import org.shotledger.wiring.EthanolSensor;
import org.shotledger.wiring.RatiometricSensor;
import org.shotledger.wiring.Sensor;
import org.shotledger.wiring.ThermistorSensor;
import org.shotledger.wiring.ThermistorSensor.Known;
import org.shotledger.wiring.ThermocoupleSensor;

/** Reads one sensor by its kind. */
final class SensorSections {
    private static final Map<String, BiFunction<String, Section, Sensor>> KINDS = kinds();

    private SensorSections() {}

    static Sensor sensor(String name, Section s) {
        return s.choice("kind", KINDS).apply(name, s);
    }

    private static Sensor ratiometric(String name, Section s) {
        double low = s.figureOr("low", GAUGE_PRESSURE, -1e5, 1e8, 0, "begins at ambient");
        double high = s.figure("high", GAUGE_PRESSURE, 1e4, 1e8);
        double supply = s.figureOr("supply", VOLTAGE, 1, 30, 5, "usual sensor supply");
        double lowShare = s.figureOr("low-share", FRACTION, 0, 1, 0.1, "usual, leaves room to see a broken wire");
        double highShare = s.figureOr("high-share", FRACTION, 0, 1, 0.9, "usual, leaves room to see a short circuit");
        return s.make(() -> new RatiometricSensor(name, low, high, supply, lowShare, highShare));
    }

    private static Sensor thermistor(String name, Section s) {
        double low = s.figure("low", TEMPERATURE, 203.15, 473.15);
        double high = s.figure("high", TEMPERATURE, 203.15, 473.15);
        double pullUp = s.figure("pull-up", RESISTANCE, 10, 1e6);
        double supply = s.figureOr("supply", VOLTAGE, 1, 30, 5, "usual sensor supply");
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

    private static Known known(Section s, String which) {
        return new Known(
                s.figure(which, TEMPERATURE, 203.15, 473.15), s.figure(which + "-resistance", RESISTANCE, 1, 10e6));
    }

    private static Sensor thermocouple(String name, Section s) {
        double low = s.figureOr("low", TEMPERATURE, 273.15, 1645.15, 273.15, "begins at freezing");
        double high = s.figure("high", TEMPERATURE, 273.15, 1645.15);
        return s.make(() -> new ThermocoupleSensor(name, low, high));
    }

    private static Sensor ethanol(String name, Section s) {
        String habit = "common practice, no source";
        double none = s.figureOr("frequency-low", FREQUENCY, 1, 1e5, EthanolSensor.USUAL_NONE, habit);
        double pure = s.figureOr("frequency-high", FREQUENCY, 1, 1e5, EthanolSensor.USUAL_PURE, habit);
        return s.make(() -> new EthanolSensor(name, none, pure));
    }

    private static Map<String, BiFunction<String, Section, Sensor>> kinds() {
        Map<String, BiFunction<String, Section, Sensor>> map = new LinkedHashMap<>();
        map.put("ratiometric", SensorSections::ratiometric);
        map.put("thermistor", SensorSections::thermistor);
        map.put("thermocouple-k", SensorSections::thermocouple);
        map.put("ethanol", SensorSections::ethanol);
        return map;
    }
}
