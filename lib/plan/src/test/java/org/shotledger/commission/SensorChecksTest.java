package org.shotledger.commission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.job.Job;
import org.shotledger.wiring.CheckValue;
import org.shotledger.wiring.CheckValue.State;
import org.shotledger.wiring.SensorReading;
import org.shotledger.wiring.SensorVerdict;
import org.shotledger.workshop.Readings;
import org.shotledger.workshop.Workshop;

/** What each sensor of the demonstration car must show and how far off it may be, by the figures of its sheet; anew in every test. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SensorChecksTest {
    private static final Path FOLDER = Path.of("../../data/whimbrel");
    private static final Job JOB = Job.load(FOLDER);

    private static SensorChecks checks(Job job) {
        return SensorChecks.of(job, job.setup());
    }

    /** The demonstration sheet with some of it written otherwise, in pairs of old and new. */
    private static Job changed(String... pairs) {
        try {
            String sheet = Files.readString(FOLDER.resolve("job.yaml"));
            for (int i = 0; i < pairs.length; i += 2) {
                assertTrue(sheet.contains(pairs[i]), pairs[i]);
                sheet = sheet.replace(pairs[i], pairs[i + 1]);
            }
            return Job.read(sheet, FOLDER);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static CheckValue value(SensorChecks checks, String sensor, State state) {
        List<CheckValue> found = checks.values().stream()
                .filter(value -> value.sensor().equals(sensor) && value.state() == state)
                .toList();
        assertEquals(1, found.size(), sensor + " " + state);
        return found.get(0);
    }

    private static void assertValue(
            SensorChecks checks, String sensor, State state, double expected, double known, double digit) {
        CheckValue value = value(checks, sensor, state);
        assertEquals(expected, value.expected(), 1e-9 * Math.max(1, expected), sensor);
        double bar = Math.max(checks.input(sensor).error(expected).total(), digit);
        assertEquals(Math.hypot(bar, known), value.halfWidth(), 1e-9 * value.halfWidth(), sensor);
    }

    /** After a night temperatures are known to 3 K and the throttle to a fiftieth; a pressure open to the air as well as it is read. */
    @Test
    void with_the_engine_off_the_state_itself_is_known_so_well() {
        SensorChecks checks = checks(JOB);
        assertValue(checks, "coolant temperature", State.ENGINE_OFF, 291.15, 3, 0);
        assertValue(checks, "bottle temperature", State.ENGINE_OFF, 291.15, 3, 0);
        assertValue(checks, "plenum pressure", State.ENGINE_OFF, 99_000, 0, 0);
        assertValue(checks, "main fuel pressure", State.ENGINE_OFF, 0, 0, 0);
        assertValue(checks, "throttle", State.ENGINE_OFF, 0, 0.02, 0);
        assertValue(checks, "throttle", State.PEDAL_DOWN, 1, 0.02, 0);
    }

    /**
     * A regulator is set to 3 %: 9 kPa of 3 bar and 10.5 kPa of 3.5 bar; a content that nobody measured to 3 points, where a display
     * shows a thousandth of its range.
     */
    @Test
    void at_prime_the_regulators_and_the_fuel_are_known_so_well() {
        SensorChecks checks = checks(JOB);
        assertValue(checks, "main fuel pressure", State.PRIME, 3.0e5, 9_000, 0);
        assertValue(checks, "nitrous fuel pressure", State.PRIME, 3.5e5, 10_500, 0);
        assertValue(checks, "ethanol content", State.PRIME, 0.78, 0.03, 1e-3);
    }

    /** A sensor of absolute pressure shows the air on top of the 3 bar that the regulator holds, which alone is set to 3 %. */
    @Test
    void an_absolute_sensor_shows_the_air_as_well() {
        Job absolute = changed(
                "main-fuel-pressure: {kind: ratiometric, high: 10 bar gauge, class: 1 %}",
                "main-fuel-pressure: {kind: ratiometric, measures: absolute-pressure, low: 0 bar abs, high: 11 bar abs, class: 1 %}",
                "main-fuel-pressure: 0.03 bar gauge",
                "main-fuel-pressure: 0.99 bar abs",
                "main-fuel-pressure: 3.02 bar gauge",
                "main-fuel-pressure: 4.0 bar abs");
        SensorChecks checks = checks(absolute);
        assertValue(checks, "main fuel pressure", State.PRIME, 3.99e5, 9_000, 0);
        assertValue(checks, "main fuel pressure", State.ENGINE_OFF, 99_000, 0, 0);
    }

    /** 900 rpm and the lambda of the sheet with its own width; 90 degrees to 12; a car that stands does not move. */
    @Test
    void at_warm_idle_what_the_sheet_and_the_trade_know_is_expected() {
        Job moving = changed(
                "    engine-speed: {kind: shaft-speed,",
                "    car-speed: {kind: wheel-speed, teeth: 48, tyre-radius: 320 mm, high: 300 km/h}\n"
                        + "    engine-speed: {kind: shaft-speed,");
        SensorChecks checks = checks(moving);
        assertValue(checks, "engine speed", State.WARM_IDLE, 900, 150, 9);
        assertValue(checks, "lambda", State.WARM_IDLE, 1.0, 0.04, 0.65e-3);
        assertValue(checks, "coolant temperature", State.WARM_IDLE, 363.15, 12, 0);
        assertEquals(0, value(checks, "car speed", State.WARM_IDLE).expected());
        assertTrue(checks.values().stream()
                .noneMatch(value ->
                        value.state() == State.WARM_IDLE && value.sensor().equals("bottle temperature")));
    }

    /** What nobody read is that of the target's place. */
    @Test
    void without_readings_of_the_day_the_air_is_that_of_the_job() {
        Workshop own = JOB.workshop();
        SensorChecks unread = checks(JOB.with(new Workshop(own.track(), Readings.NONE, own.parts())));
        var air = JOB.stated().air();
        assertEquals(air.pressure(), unread.barometer());
        assertEquals(air.temperature(), unread.air());
        assertEquals(
                air.pressure(),
                value(unread, "plenum pressure", State.ENGINE_OFF).expected());
        SensorChecks read = checks(JOB);
        assertEquals(99_000, read.barometer(), 1e-6);
        assertEquals(291.15, read.air(), 1e-9);
        assertEquals(List.of(), unread.judge());
    }

    /**
     * A supply a tenth low makes 1.53 V of the 1.7 V at 3 bar (0.5 to 4.5 V over 10 bar), which is read as 2.575 bar; where the converter
     * measures against the same supply that cannot be, and the cause must not be offered.
     */
    @Test
    void a_low_supply_explains_a_reading_only_where_the_converter_does_not_share_it() {
        List<SensorReading> low = List.of(new SensorReading("main fuel pressure", State.PRIME, 2.575e5));
        assertTrue(blamesTheSupply(JOB, low));
        Job shared = changed("    converter-bits: 12\n", "    converter-bits: 12\n    shared-reference: yes\n");
        assertTrue(!blamesTheSupply(shared, low));
    }

    private static boolean blamesTheSupply(Job job, List<SensorReading> readings) {
        List<SensorVerdict> verdicts = checks(job).judge(new Readings(Double.NaN, Double.NaN, readings));
        assertEquals(1, verdicts.size());
        assertTrue(!verdicts.get(0).good(), verdicts.toString());
        return verdicts.get(0).causes().stream().anyMatch(cause -> cause.what().equals("sensor supply 10 % low"));
    }

    /** Just inside and just outside of the width that the regulator and the input leave. */
    @Test
    void a_reading_is_good_up_to_its_width() {
        SensorChecks checks = checks(JOB);
        CheckValue value = value(checks, "main fuel pressure", State.PRIME);
        for (double side : new double[] {-1, 1}) {
            assertTrue(good(checks, value.expected() + side * 0.999 * value.halfWidth()));
            assertTrue(!good(checks, value.expected() + side * 1.001 * value.halfWidth()));
        }
    }

    private static boolean good(SensorChecks checks, double shown) {
        SensorReading reading = new SensorReading("main fuel pressure", State.PRIME, shown);
        return checks.judge(new Readings(Double.NaN, Double.NaN, List.of(reading)))
                .get(0)
                .good();
    }

    @Test
    void a_sensor_is_found_by_its_name_and_an_unknown_one_is_told() {
        SensorChecks checks = checks(JOB);
        assertEquals("throttle", checks.input("throttle").name());
        String said = assertThrows(IllegalArgumentException.class, () -> checks.input("oil pressure"))
                .getMessage();
        assertTrue(said.contains("\"oil pressure\"") && said.contains("throttle") && said.contains("lambda"), said);
    }
}
