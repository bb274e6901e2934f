package org.shotledger.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.curve.Curve;

/** Reads between the lines of an invented pump, by hand: its tables have two rows, so each line is straight. */
class PumpTest {
    /** From 1 to 9 bar: 80 falling to 40 ml/s at 11 V, 120 to 60 at 13.5 V, 130 to 90 at 16 V. */
    private static final Pump PUMP = new Pump(
            "invented",
            List.of(line(16, 130e-6, 90e-6, 9, 17), line(11, 80e-6, 40e-6, 6, 10), line(13.5, 120e-6, 60e-6, 8, 14)));

    static Pump.Line line(double voltage, double most, double least, double current, double mostCurrent) {
        double[] rise = {1e5, 9e5};
        return new Pump.Line(
                voltage,
                Curve.of("flow", rise, new double[] {most, least}),
                Curve.of("current", rise, new double[] {current, mostCurrent}));
    }

    /** Half way from 1 to 9 bar the lines give 60, 90 and 110 ml/s and draw 8, 11 and 13 A. */
    @Test
    void between_two_lines_flow_and_current_are_shared_by_voltage() {
        // 12 V lies 0.4 of the way from 11 to 13.5 V: 60 + 0.4 x 30 = 72 ml/s, 8 + 0.4 x 3 = 9.2 A
        assertEquals(72e-6, PUMP.flow(5e5, 12), 1e-16);
        assertEquals(9.2, PUMP.current(5e5, 12), 1e-12);
        // 15 V lies 0.6 of the way from 13.5 to 16 V: 90 + 0.6 x 20 = 102 ml/s, 11 + 0.6 x 2 = 12.2 A
        assertEquals(102e-6, PUMP.flow(5e5, 15), 1e-16);
        assertEquals(12.2, PUMP.current(5e5, 15), 1e-12);
    }

    @Test
    void on_a_line_the_table_is_read_at_both_ends_of_voltage_too() {
        double[] voltages = {11, 13.5, 16};
        double[] flows = {60e-6, 90e-6, 110e-6};
        double[] currents = {8, 11, 13};
        for (int i = 0; i < 3; i++) {
            assertEquals(flows[i], PUMP.flow(5e5, voltages[i]), 1e-16);
            assertEquals(currents[i], PUMP.current(5e5, voltages[i]), 1e-12);
        }
        assertEquals(11, PUMP.lowestVoltage());
        assertEquals(16, PUMP.highestVoltage());
    }

    @Test
    void at_both_ends_of_pressure_the_table_is_read_and_beyond_it_is_not() {
        assertEquals(120e-6, PUMP.flow(1e5, 13.5), 1e-16);
        assertEquals(60e-6, PUMP.flow(9e5, 13.5), 1e-16);
        for (double rise : new double[] {0.99e5, 9.01e5}) {
            var e = assertThrows(IllegalArgumentException.class, () -> PUMP.flow(rise, 13.5));
            assertEquals(
                    "The pump invented would have to push against " + (rise < 5e5 ? "0.99" : "9.01")
                            + " bar; its table goes from 1.0 to 9.0 bar."
                            + " Check the pressure of the regulator, or extend the table.",
                    e.getMessage());
            assertThrows(IllegalArgumentException.class, () -> PUMP.current(rise, 13.5));
        }
    }

    @Test
    void a_voltage_beyond_the_lines_is_refused_with_the_lines_named() {
        for (double voltage : new double[] {10.99, 16.01}) {
            var e = assertThrows(IllegalArgumentException.class, () -> PUMP.current(5e5, voltage));
            assertEquals(
                    "The voltage at the pump invented is " + voltage + " V; its table goes from 11.0 to 16.0 V."
                            + " Check the supply voltage and the resistance of the pump's wiring, or extend the table.",
                    e.getMessage());
        }
    }

    @Test
    void what_is_no_pump_is_refused() {
        var none = assertThrows(IllegalArgumentException.class, () -> new Pump("p", List.of()));
        assertEquals("The pump p has no line of flow over pressure; give one.", none.getMessage());
        var line = line(12, 9e-5, 5e-5, 6, 9);
        var twice = assertThrows(IllegalArgumentException.class, () -> new Pump("p", List.of(line, line)));
        assertEquals("The pump p has two lines at 12.0 V; give each once.", twice.getMessage());
        // a flow that rises with pressure would let the rail settle at two pressures
        assertThrows(IllegalArgumentException.class, () -> line(12, 9e-5, 9.01e-5, 6, 9));
        line(12, 9e-5, 9e-5, 6, 9);
    }
}
