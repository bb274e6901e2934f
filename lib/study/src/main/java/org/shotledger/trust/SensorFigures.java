package org.shotledger.trust;

import java.nio.file.Path;
import java.util.List;
import org.shotledger.units.UnitFactors;
import org.shotledger.wiring.ThermistorSensor;
import org.shotledger.wiring.ThermistorSensor.Known;
import org.shotledger.wiring.ThermocoupleSensor;

/** Sensors against the reference table of thermocouples and a measured thermistor. */
final class SensorFigures {

    private SensorFigures() {}

    static List<Comparison> all(Path data) {
        List<List<String>> rows = Cells.of(data.resolve("published/sensors.csv"));
        double[] constants = ThermistorSensor.constants(rows.stream()
                .filter(row -> row.get(0).equals("thermistor") && allowed(row) == 0)
                .map(row -> new Known(UnitFactors.ICE_POINT + celsius(row), output(row)))
                .toList());
        ThermistorSensor thermistor =
                new ThermistorSensor("thermistor", 240, 370, constants[0], constants[1], constants[2], 2490, 5);
        ThermocoupleSensor thermocouple = new ThermocoupleSensor("type K", UnitFactors.ICE_POINT, 1645.15);
        return rows.stream()
                .filter(row -> allowed(row) > 0)
                .map(row -> {
                    double kelvin = UnitFactors.ICE_POINT + celsius(row);
                    boolean couple = row.get(0).equals("type K");
                    double predicted = couple ? 1e3 * thermocouple.output(kelvin) : thermistor.resistance(kelvin);
                    return Comparison.within(
                            couple ? "ITS-90, NIST Monograph 175" : "measured thermistor, a manual's table",
                            row.get(0) + " at " + row.get(1) + " degC",
                            output(row),
                            predicted,
                            allowed(row) / output(row));
                })
                .toList();
    }

    private static double celsius(List<String> row) {
        return Double.parseDouble(row.get(1));
    }

    private static double output(List<String> row) {
        return Double.parseDouble(row.get(2));
    }

    private static double allowed(List<String> row) {
        return Double.parseDouble(row.get(3));
    }
}
