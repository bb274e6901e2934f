package org.shotledger.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shotledger.wiring.CheckValue.State.ENGINE_OFF;
import static org.shotledger.wiring.CheckValue.State.PEDAL_DOWN;
import static org.shotledger.wiring.CheckValue.State.PRIME;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.units.QuantityKind;
import org.shotledger.wiring.ThermistorSensor.Known;

/** Faults are put in by the laws of circuits, not by the code under test: a divider {@code U R/(R + R_p)}, a line over the supply. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SensorCheckTest {
    /** Sea level less 1600 m, about. */
    private static final double BAROMETER = 83_500;

    private static final double AIR = 293.15;
    private static final double[] LAW = ThermistorSensor.constants(new Known(298.15, 10_000), 3_435);
    private static final Sensor BOTTLE = new RatiometricSensor("bottle", 0, 110e5, 5, 0.1, 0.9);
    private static final Sensor RAIL = new RatiometricSensor("rail", 0, 10e5, 5, 0.1, 0.9);
    private static final Sensor PLENUM =
            new RatiometricSensor("plenum", QuantityKind.ABSOLUTE_PRESSURE, 20e3, 400e3, 5, 0.08, 0.92);
    private static final Sensor COOLANT = new ThermistorSensor("coolant", 240, 400, LAW[0], LAW[1], 0, 2_490, 5);
    private static final Sensor THROTTLE = new ThrottleSensor("throttle", 0.6, 4.3, 5);
    private static final List<Sensor> ALL = List.of(BOTTLE, RAIL, PLENUM, COOLANT, THROTTLE);

    @Test
    void a_healthy_car_is_good_throughout() {
        List<SensorVerdict> verdicts = judge(
                read(BOTTLE, ENGINE_OFF, 3e4),
                read(PLENUM, ENGINE_OFF, 83e3),
                read(COOLANT, ENGINE_OFF, AIR + 2.5),
                read(THROTTLE, ENGINE_OFF, 0.005),
                read(THROTTLE, PEDAL_DOWN, 1));
        assertEquals(4, verdicts.size());
        verdicts.forEach(
                verdict -> assertTrue(verdict.good() && verdict.causes().isEmpty(), verdict.toString()));
    }

    @Test
    void a_supply_five_per_cent_low_is_named() {
        double volts = 0.95 * 5 * (0.08 + 0.84 * (BAROMETER - 20e3) / 380e3);
        double shown = 20e3 + 380e3 * (volts / 5 - 0.08) / 0.84;
        assertEquals("sensor supply 5 % low", first(read(PLENUM, ENGINE_OFF, shown)));
    }

    @Test
    void a_wrong_pull_up_is_named_with_its_value() {
        double ohm = 10_000 * Math.exp(3_435 * (1 / AIR - 1 / 298.15));
        double volts = 5 * ohm / (ohm + 1_000);
        double seen = 2_490 * volts / (5 - volts);
        double shown = 1 / (1 / 298.15 + Math.log(seen / 10_000) / 3_435);
        assertTrue(Math.abs(shown - AIR) > 10);
        assertEquals("pull-up is 1000 ohm, table made for 2490 ohm", first(read(COOLANT, ENGINE_OFF, shown)));
    }

    @Test
    void gauge_and_absolute_taken_for_each_other_differ_by_the_barometer_of_the_place() {
        assertEquals(
                "absolute sensor entered as gauge",
                first(read(RAIL, ENGINE_OFF, BAROMETER), read(RAIL, PRIME, 3e5 + BAROMETER)));
        assertEquals("gauge sensor entered as absolute", first(read(PLENUM, ENGINE_OFF, 20e3)));
    }

    @Test
    void exchanged_plugs_are_named_on_both_and_need_a_state_in_which_both_differ() {
        List<SensorVerdict> verdicts = judge(
                read(RAIL, ENGINE_OFF, 0),
                read(RAIL, PRIME, 0),
                read(BOTTLE, ENGINE_OFF, 0),
                read(BOTTLE, PRIME, 33e5));
        assertEquals("plug exchanged with rail", verdicts.get(0).causes().get(0).what());
        assertEquals(
                "plug exchanged with bottle", verdicts.get(1).causes().get(0).what());
        assertTrue(judge(read(RAIL, ENGINE_OFF, 0), read(BOTTLE, ENGINE_OFF, 0)).stream()
                .allMatch(SensorVerdict::good));
    }

    @Test
    void a_throttle_the_wrong_way_round_is_named_and_nonsense_has_no_cause() {
        assertEquals(
                "closed and open end entered the wrong way round",
                first(read(THROTTLE, ENGINE_OFF, 1), read(THROTTLE, PEDAL_DOWN, 0)));
        SensorVerdict odd = judge(read(RAIL, ENGINE_OFF, 5e5)).get(0);
        assertFalse(odd.good());
        assertEquals(List.of(), odd.causes());
    }

    private static String first(SensorReading... readings) {
        SensorVerdict verdict = judge(readings).get(0);
        assertFalse(verdict.good());
        return verdict.causes().get(0).what();
    }

    private static SensorReading read(Sensor sensor, CheckValue.State state, double value) {
        return new SensorReading(sensor.name(), state, value);
    }

    private static List<SensorVerdict> judge(SensorReading... readings) {
        List<CheckValue> values = new ArrayList<>();
        for (Sensor sensor : ALL) {
            double error = switch (sensor.kind()) {
                case TEMPERATURE -> 1.0;
                case FRACTION -> 0.02;
                default -> 0.01 * (sensor.high() - sensor.low());
            };
            if (sensor == PLENUM) {
                error = 1_000;
            }
            values.addAll(CheckValue.engineOff(sensor, BAROMETER, AIR, error));
        }
        values.add(new CheckValue("rail", PRIME, 3e5, 1e4, "regulator"));
        values.add(new CheckValue("bottle", PRIME, 0, 1e5, "bottle closed"));
        return new SensorCheck(ALL, values, false, BAROMETER, AIR).judge(List.of(readings));
    }
}
