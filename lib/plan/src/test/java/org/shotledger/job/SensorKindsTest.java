package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.sheet.SheetException;
import org.shotledger.wiring.Sensor;
import org.shotledger.wiring.SensorInput;

/** Data lines of sensors in a sheet become the table to enter. Every expected output follows by hand from its data line. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SensorKindsTest {
    private static final String MARK = "    exhaust-temperature: {kind: thermocouple-k";
    private final String demo = Files.readString(DemoSheetTest.DEMO);

    SensorKindsTest() throws IOException {}

    private SensorInput input(String line) {
        String sheet = demo.replace(MARK, "    probe: {" + line + "}\n" + MARK);
        return Job.read(sheet, DemoSheetTest.DEMO.getParent()).car().wiring().orElseThrow().inputs().stream()
                .filter(one -> one.name().equals("probe"))
                .findFirst()
                .orElseThrow();
    }

    /** SI value and output worked out by hand; type N, E, T and K: ITS-90 tables, NIST Monograph 175. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kind: ratiometric, measures: absolute-pressure, low: 20 kPa abs, high: 300 kPa abs, low-voltage: 0.4 V, high-voltage: 4.6 V | 160e3 | 2.5",
                "kind: ratiometric, high: 100 psi gauge | 344737.86 | 2.5",
                "kind: linear, measures: lambda, low: 0.5, high: 1.5, low-voltage: 0 V, high-voltage: 5 V | 0.8 | 1.5",
                "kind: throttle, closed: 4.4 V, open: 0.6 V | 0.5 | 2.5",
                "kind: resistance, measures: gauge-pressure, values: [0 bar gauge, 5 bar gauge, 10 bar gauge], resistances: [10 ohm, 90 ohm, 180 ohm], pull-up: 90 ohm | 5e5 | 2.5",
                "kind: thermistor, low: 0 degC, high: 100 degC, pull-up: 10 kohm, middle: 25 degC, middle-resistance: 10 kohm, beta: 3435 K | 298.15 | 2.5",
                "kind: thermocouple-n, high: 1000 degC | 773.15 | 0.016748",
                "kind: thermocouple-t, high: 300 degC | 373.15 | 0.004279",
                "kind: ethanol | 0.85 | 135",
                "kind: pulse-width | 315.65 | 3e-3",
                "kind: shaft-speed, teeth: 36, high: 8000 rpm | 1000 | 600",
                "kind: wheel-speed, teeth: 48, tyre-radius: 318.31 mm, high: 90 m/s | 20 | 480",
            })
    void every_kind_is_read_from_its_data_line(String line, double value, double output) {
        Sensor sensor = input(line).sensor();
        assertEquals(output, sensor.output(value), 5e-4 * output, line);
    }

    @Test
    void the_band_of_a_pull_up_counts_in_the_error_bar() {
        String plain =
                "kind: thermistor, low: 0 degC, high: 100 degC, middle: 25 degC, middle-resistance: 10 kohm, beta: 3435 K, pull-up: 10 kohm";
        assertEquals(0, input(plain).error(298.15).pullUp());
        double kelvin = input(plain + " +/- 5 %").error(298.15).pullUp();
        // d ln R = d ln Rp at the middle of the divider, and dT = T^2/beta d ln R
        assertEquals(298.15 * 298.15 / 3435 * 0.05, kelvin, 0.05 * kelvin);
    }

    @Test
    void a_sensor_that_leans_on_no_supply_has_no_error_by_it() {
        SensorInput lambda =
                input("kind: linear, measures: lambda, low: 0.5, high: 1.5, low-voltage: 0 V, high-voltage: 5 V");
        assertEquals(0, lambda.error(1.5).supply());
        assertEquals(0, lambda.error(0.5).supply());
    }

    @Test
    void a_straight_line_gets_points_spread_over_it() {
        SensorInput gauge = input("kind: ratiometric, high: 10 bar gauge, table-points: 5, table-spacing: free");
        assertEquals(5e5, gauge.table().points().get(2).value(), 1);
    }

    @Test
    void a_warm_idle_without_a_band_is_refused() {
        SheetException refused = assertThrows(
                SheetException.class, () -> input("kind: ratiometric, high: 10 bar gauge, warm-idle: 3 bar gauge"));
        assertTrue(refused.getMessage().contains("has no band; write it with \"+/-\""), refused.getMessage());
    }
}
