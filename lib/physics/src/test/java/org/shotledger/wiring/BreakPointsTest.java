package org.shotledger.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.units.QuantityKind;
import org.shotledger.wiring.BreakPoints.Spacing;
import org.shotledger.wiring.ThermistorSensor.Known;

@DisplayNameGeneration(ReplaceUnderscores.class)
class BreakPointsTest {
    private static final double[] LAW = ThermistorSensor.constants(new Known(298.15, 10_000), 3_435);
    private static final Sensor THERMISTOR = new ThermistorSensor("t", 253.15, 333.15, LAW[0], LAW[1], 0, 2_490, 5);

    /** ITS-90 reference tables (NIST Monograph 175), mV printed to three places (values from memory of the printed tables). */
    @ParameterizedTest
    @CsvSource({
        "J,-100,-4.633",
        "J,100,5.269",
        "J,500,27.393",
        "J,1000,57.953",
        "K,-100,-3.554",
        "K,500,20.644",
        "K,1000,41.276",
        "N,-100,-2.407",
        "N,100,2.774",
        "N,500,16.748",
        "N,1000,36.256",
        "T,-100,-3.379",
        "T,100,4.279",
        "T,300,14.862",
        "T,400,20.872",
        "E,-100,-5.237",
        "E,100,6.319",
        "E,500,37.005",
        "E,1000,76.373"
    })
    void thermocouples_give_the_voltages_of_the_reference_tables(
            ThermocoupleType type, double celsius, double millivolt) {
        assertEquals(millivolt, 1000 * type.voltage(celsius + 273.15), 6e-4);
    }

    /** A sheet read twice has equal inputs, whether or not their tables were asked for; a table that cannot be is refused at once. */
    @Test
    void an_input_chooses_its_table_when_asked_and_once() {
        for (Spacing spacing : Spacing.values()) {
            TableChoice asked = TableChoice.of(THERMISTOR, 8, spacing);
            assertEquals(BreakPoints.of(THERMISTOR, 8, spacing), asked.points());
            assertSame(asked.points(), asked.points());
            TableChoice other = TableChoice.of(THERMISTOR, 8, spacing);
            assertEquals(asked, other);
            assertEquals(asked.hashCode(), other.hashCode());
            assertNotEquals(asked, TableChoice.of(THERMISTOR, 9, spacing));
            assertThrows(IllegalArgumentException.class, () -> TableChoice.of(THERMISTOR, 1, spacing));
        }
        assertNotEquals(TableChoice.of(THERMISTOR, 8, Spacing.FREE), TableChoice.of(THERMISTOR, 8, Spacing.EVEN_VALUE));
        Sensor wider = new ThermistorSensor("t", 250, 333.15, LAW[0], LAW[1], 0, 2_490, 5);
        assertNotEquals(TableChoice.of(THERMISTOR, 8, Spacing.FREE), TableChoice.of(wider, 8, Spacing.FREE));
    }

    @Test
    void the_error_stated_is_the_largest_found_on_a_fine_net() {
        for (Spacing spacing : Spacing.values()) {
            BreakPoints table = BreakPoints.of(THERMISTOR, 8, spacing);
            assertEquals(8, table.points().size());
            double worst = 0;
            for (double t = 253.15; t <= 333.15; t += 0.01) {
                worst = Math.max(worst, Math.abs(table.value(THERMISTOR.output(t)) - t));
            }
            assertEquals(worst, table.error(), 0.02 * worst + 1e-9, spacing.toString());
        }
    }

    /** No other choice of inner points does better: 2000 random ones, and the even ones. */
    @Test
    void free_points_leave_less_error_than_any_other_choice() {
        BreakPoints free = BreakPoints.of(THERMISTOR, 5, Spacing.FREE);
        assertTrue(free.error()
                <= BreakPoints.of(THERMISTOR, 5, Spacing.EVEN_OUTPUT).error());
        assertTrue(free.error()
                <= BreakPoints.of(THERMISTOR, 5, Spacing.EVEN_VALUE).error());
        java.util.Random random = new java.util.Random(3);
        for (int i = 0; i < 2_000; i++) {
            double[] inner = random.doubles(3, 253.15, 333.15).sorted().toArray();
            List<Sensor.Point> points = java.util.stream.DoubleStream.of(253.15, inner[0], inner[1], inner[2], 333.15)
                    .mapToObj(t -> new Sensor.Point(t, THERMISTOR.output(t)))
                    .toList();
            BreakPoints other = new BreakPoints(points, Spacing.FREE, 0, 0);
            double worst = 0;
            for (double t = 253.15; t <= 333.15; t += 0.4) {
                worst = Math.max(worst, Math.abs(other.value(THERMISTOR.output(t)) - t));
            }
            // the choice is among 257 points, so a free one may be better by the width of that net
            assertTrue(worst >= 0.97 * free.error(), worst + " " + free.error());
        }
    }

    @Test
    void a_straight_line_needs_two_points() {
        Sensor rail = new RatiometricSensor("rail", 0, 10e5, 5, 0.1, 0.9);
        assertEquals(0, BreakPoints.of(rail, 2, Spacing.FREE).error(), 1e-6);
    }

    /** {@code dT = T^2/beta * dRp/Rp} for a divider whose supply is right: the reading's resistance scales as the pull-up's inverse. */
    @Test
    void the_pull_ups_tolerance_is_the_derivative_of_the_law() {
        InputAccuracy accuracy = new InputAccuracy(0.05, true, 0.01, 5, 12, 0);
        ErrorBar bar = ErrorBar.of(THERMISTOR, 298.15, accuracy, BreakPoints.of(THERMISTOR, 16, Spacing.FREE));
        assertEquals(298.15 * 298.15 / 3_435 * 0.01, bar.pullUp(), 0.01 * bar.pullUp());
        assertEquals(0, bar.supply());
        double slope = THERMISTOR.output(298.25) - THERMISTOR.output(298.05);
        assertEquals(Math.abs(0.2 / slope) * 0.5 * 5 / 4096, bar.converter(), 0.01 * bar.converter());
        assertEquals(Math.hypot(Math.hypot(bar.pullUp(), bar.converter()), bar.table()), bar.total(), 1e-12);
    }

    /** A line over the supply: a supply off by 1 % moves the reading by 1 % of the output over the slope. */
    @Test
    void the_supplys_tolerance_counts_only_with_a_reference_of_its_own() {
        Sensor bottle = new RatiometricSensor("bottle", 0, 100e5, 5, 0.1, 0.9);
        BreakPoints table = BreakPoints.of(bottle, 2, Spacing.FREE);
        ErrorBar bar = ErrorBar.of(bottle, 50e5, new InputAccuracy(0.01, false, 0, 5, 16, 1e5), table);
        assertEquals(0.01 * 0.5 / 0.8 * 100e5, bar.supply(), 1);
        assertEquals(1e5, bar.sensor());
        assertEquals(
                0,
                ErrorBar.of(bottle, 50e5, new InputAccuracy(0.01, true, 0, 5, 16, 1e5), table)
                        .supply());
    }

    @Test
    void lines_tables_and_pulses_are_read_back() {
        Sensor lambda = new LinearSensor("lambda", QuantityKind.RATIO, 0.68, 1.36, 0, 5);
        assertEquals(0.85, lambda.value(1.25), 1e-9);
        Sensor fuel = PulseWidthSensor.usual("fuel");
        assertEquals(233.15 + 165.0 / 4, fuel.value(2e-3), 1e-6);
        assertEquals(100, FrequencySensor.shaft("shaft", 36, 200_000).value(60), 1e-6);
        assertEquals(20, FrequencySensor.wheel("wheel", 48, 0.32, 100).value(48 * 20 / (2 * Math.PI * 0.32)), 1e-6);
        Sensor level = new ResistanceSensor(
                "level", QuantityKind.FRACTION, List.of(0.0, 0.5, 1.0), List.of(10.0, 90.0, 180.0), 220, 5);
        assertEquals(5 * 50.0 / 270, level.output(0.25), 1e-12);
        assertEquals(0.25, level.value(5 * 50.0 / 270), 1e-8);
        Sensor table = new ResistanceSensor(
                "table",
                QuantityKind.TEMPERATURE,
                List.of(273.15, 298.15, 323.15),
                List.of(ohm(273.15), ohm(298.15), ohm(323.15)),
                2_490,
                5);
        assertEquals(THERMISTOR.output(285), table.output(285), 1e-9, "one-constant law is met exactly between points");
        assertTrue(assertThrows(
                        IllegalArgumentException.class,
                        () -> new ResistanceSensor(
                                "x", QuantityKind.FRACTION, List.of(0.0, 0.5, 1.0), List.of(1.0, 3.0, 2.0), 220, 5))
                .getMessage()
                .contains("point 3"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new ThrottleSensor("x", 1, 1.5, 5))
                .getMessage()
                .contains("learn both again"));
    }

    private static double ohm(double t) {
        return 10_000 * Math.exp(3_435 * (1 / t - 1 / 298.15));
    }
}
