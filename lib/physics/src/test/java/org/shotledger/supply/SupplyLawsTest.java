package org.shotledger.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.curve.Curve;

/** Laws of pumps, regulators and injectors on invented parts. */
class SupplyLawsTest {
    private static final double[] RISE = {0, 2e5, 4e5, 6e5, 8e5};
    private static final Pump PUMP = new Pump("invented", List.of(line(13.5, 1.0), line(11, 0.75)));

    private static Pump.Line line(double voltage, double share) {
        double[] flow = {110e-6, 95e-6, 80e-6, 62e-6, 40e-6};
        double[] current = {6, 8, 10, 12.5, 15};
        for (int i = 0; i < flow.length; i++) {
            flow[i] *= share;
        }
        return new Pump.Line(voltage, Curve.of("flow", RISE, flow), Curve.of("current", RISE, current));
    }

    @Test
    void flow_falls_with_pressure_and_with_low_voltage() {
        for (double rise = 0; rise < 7.9e5; rise += 1e5) {
            assertTrue(PUMP.flow(rise, 13) > PUMP.flow(rise + 1e4, 13));
            assertTrue(PUMP.flow(rise, 13) > PUMP.flow(rise, 12));
        }
        var low = assertThrows(IllegalArgumentException.class, () -> PUMP.flow(3e5, 9));
        assertTrue(low.getMessage().startsWith("The voltage at the pump invented is 9.0 V"), low.getMessage());
    }

    @Test
    void two_side_by_side_give_double_flow_and_two_in_a_row_the_same_flow_at_double_pressure() {
        var pair = new PumpGroup("pair", List.of(PUMP, PUMP), PumpGroup.Arrangement.PARALLEL, 0);
        var row = new PumpGroup("row", List.of(PUMP, PUMP), PumpGroup.Arrangement.SERIES, 0);
        assertEquals(2 * PUMP.flow(4e5, 13), pair.flow(4e5, 13), 1e-12);
        assertEquals(PUMP.flow(3e5, 13), row.flow(6e5, 13), 1e-9);
    }

    @Test
    void wiring_takes_its_share_of_the_voltage() {
        var group = new PumpGroup("one", List.of(PUMP), PumpGroup.Arrangement.PARALLEL, 0.05);
        double voltage = group.terminalVoltage(PUMP, 4e5, 13.0);
        assertEquals(13.0 - 0.05 * PUMP.current(4e5, voltage), voltage, 1e-8);
        assertTrue(group.flow(4e5, 13) < PUMP.flow(4e5, 13));
    }

    @Test
    void only_a_referenced_regulator_keeps_its_drop_under_boost() {
        var plain = new Regulator("plain", 3e5, 0);
        var referenced = new Regulator("referenced", 3e5, 1);
        assertEquals(3e5, referenced.dropIntoPlenum(1e5, 2.8e5), 1e-9);
        assertEquals(1.2e5, plain.dropIntoPlenum(1e5, 2.8e5), 1e-9);
        assertEquals(4e5, plain.railPressure(1e5, 2.8e5), 1e-9);
    }

    @Test
    void duty_comes_back_as_flow() {
        var injector = new Injector("i", 1050e-6 / 60, 3e5, 684, Curve.constant("dead time", 0.8e-3));
        double flow = 8e-3;
        double duty = injector.duty(flow, 7000, 780, 3.2e5, 13.5);
        double open = duty * 120 / 7000 - 0.8e-3;
        assertEquals(flow, injector.massFlow(780, 3.2e5) * open * 7000 / 120, 1e-15);
        assertThrows(IllegalArgumentException.class, () -> injector.massFlow(780, -1));
    }
}
