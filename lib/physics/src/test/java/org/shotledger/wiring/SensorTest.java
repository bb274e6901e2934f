package org.shotledger.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.wiring.ThermistorSensor.Known;

@DisplayNameGeneration(ReplaceUnderscores.class)
class SensorTest {

    /**
     * A printed worked example of the three-constant law: a common 10 kohm thermistor measured at seven temperatures, the law said
     * to be off by less than 0.01 K (application note on the Steinhart-Hart equation in a laboratory instrument's manual, table A.1;
     * resistances printed to one ohm). The row of 40 degC is left out: the resistance printed there, 5331 ohm, does not lie on a
     * smooth curve through its neighbours.
     */
    @ParameterizedTest
    @CsvSource({"32128,0", "19549,10", "12262,20", "9814,25", "7908,30", "3542,50"})
    void the_three_constant_law_meets_a_measured_thermistor(double ohm, double celsius) {
        ThermistorSensor sensor = sensor(ThermistorSensor.constants(
                List.of(new Known(273.15, 32_128), new Known(298.15, 9_814), new Known(323.15, 3_542))));
        assertEquals(celsius, sensor.temperature(ohm) - 273.15, 0.03);
        assertEquals(ohm, sensor.resistance(celsius + 273.15), 1.5e-3 * ohm);
    }

    @Test
    void resistance_and_temperature_are_each_others_inverse() {
        ThermistorSensor sensor = sensor(ThermistorSensor.constants(new Known(298.15, 10_000), 3435));
        for (double t = 240; t < 370; t += 7) {
            assertEquals(t, sensor.temperature(sensor.resistance(t)), 1e-9);
        }
    }

    /** The definition of beta, IEC 60539-1: {@code B = T1 T2/(T2 - T1) ln(R1/R2)}. */
    @Test
    void one_constant_is_the_beta_of_the_standard() {
        ThermistorSensor sensor = sensor(ThermistorSensor.constants(new Known(298.15, 10_000), 3977));
        double warm = sensor.resistance(358.15);
        assertEquals(3977, 298.15 * 358.15 / 60 * Math.log(10_000 / warm), 1e-6);
    }

    @Test
    void points_that_no_thermistor_has_are_refused() {
        double[] wrong = ThermistorSensor.constants(
                List.of(new Known(273.15, 1_000), new Known(298.15, 9_814), new Known(323.15, 30_000)));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> sensor(wrong))
                .getMessage()
                .startsWith("The points of the thermistor bottle do not lie on the curve of one"));
    }

    @Test
    void half_the_supply_stands_where_the_thermistor_equals_its_pull_up() {
        ThermistorSensor sensor = sensor(ThermistorSensor.constants(new Known(298.15, 2_490), 3435));
        assertEquals(2.5, sensor.output(298.15), 1e-9);
    }

    /** ITS-90 reference table of type K (NIST Monograph 175), mV printed to three places. */
    @ParameterizedTest
    @CsvSource({
        "0,0.000",
        "25,1.000",
        "100,4.096",
        "200,8.138",
        "300,12.209",
        "500,20.644",
        "800,33.275",
        "1000,41.276",
        "1300,52.410"
    })
    void thermocouple_voltages_are_those_of_the_reference_table(double celsius, double millivolt) {
        ThermocoupleSensor sensor = new ThermocoupleSensor("probe", 273.15, 1645.15);
        assertEquals(millivolt, 1000 * sensor.output(celsius + 273.15), 6e-4);
    }

    @Test
    void a_ratiometric_sensor_is_a_line_between_its_ends() {
        RatiometricSensor sensor = new RatiometricSensor("rail", 0, 10e5, 5, 0.1, 0.9);
        assertEquals(0.5, sensor.output(0), 1e-12);
        assertEquals(4.5, sensor.output(10e5), 1e-12);
        assertEquals(2.5, sensor.output(5e5), 1e-12);
        assertEquals(5, sensor.table(5).size());
        assertEquals(1.5, sensor.table(5).get(1).output(), 1e-12);
        assertEquals(0.5, sensor.checks().get(0).output(), 1e-12);
        assertEquals(3.5, sensor.checks().get(1).output(), 1e-12);
    }

    /** Common practice, no source: 50 Hz without ethanol, 150 Hz in pure ethanol, a straight line between. */
    @ParameterizedTest
    @CsvSource({"0,50", "10,60", "50,100", "85,135", "100,150"})
    void an_ethanol_sensor_gives_one_hertz_for_each_per_cent_above_fifty(double percent, double hertz) {
        EthanolSensor sensor = new EthanolSensor("fuel", EthanolSensor.USUAL_NONE, EthanolSensor.USUAL_PURE);
        assertEquals(hertz, sensor.output(percent / 100), 1e-9);
    }

    @Test
    void an_ethanol_sensor_is_checked_at_two_points_in_hertz() {
        EthanolSensor sensor = new EthanolSensor("fuel", 50, 150);
        assertEquals(org.shotledger.units.QuantityKind.FREQUENCY, sensor.outputKind());
        assertEquals(
                List.of(50.0, 135.0),
                sensor.checks().stream().map(Sensor.Check::output).toList());
        assertEquals(
                "The frequency in pure ethanol of fuel is 40.0 Hz; allowed is 51.0 to 100000.0 Hz. Check the value and its unit.",
                assertThrows(IllegalArgumentException.class, () -> new EthanolSensor("fuel", 50, 40))
                        .getMessage());
    }

    private static ThermistorSensor sensor(double[] k) {
        return new ThermistorSensor("bottle", 240, 370, k[0], k[1], k[2], 2_490, 5);
    }
}
