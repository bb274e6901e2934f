package org.shotledger.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.curve.Curve;

/** Pumps together, each from a balance written out by hand: straight lines make every answer a linear equation. */
class PumpGroupTest {
    /** Straight from 1 bar, where it gives the first flow, to 9 bar; the current does not depend on pressure. */
    private static Pump straight(double most, double least) {
        double[] rise = {1e5, 9e5};
        Curve flow = Curve.of("flow", rise, new double[] {most, least});
        return new Pump(
                "straight",
                List.of(
                        new Pump.Line(11, flow, Curve.of("current", rise, new double[] {8, 8})),
                        new Pump.Line(13.5, flow, Curve.of("current", rise, new double[] {11, 11}))));
    }

    private static PumpGroup group(PumpGroup.Arrangement arrangement, Pump... pumps) {
        return new PumpGroup("group", List.of(pumps), arrangement, 0);
    }

    /**
     * From the first to the last row, over 8 bar, one falls by 80 and the other by 40 ml/s. With 3 bar more on the first than its table's
     * beginning it gives 120 - 30 = 90, so has the second with 110 - 20 = 90 at 4 bar more: 4 + 5 = 9 bar together.
     */
    @Test
    void two_unlike_pumps_in_a_row_pass_one_flow_and_share_the_pressure() {
        PumpGroup row = group(PumpGroup.Arrangement.SERIES, straight(120e-6, 40e-6), straight(110e-6, 70e-6));
        assertEquals(90e-6, row.flow(9e5, 12), 1e-14);
        PumpGroup turned = group(PumpGroup.Arrangement.SERIES, straight(110e-6, 70e-6), straight(120e-6, 40e-6));
        assertEquals(90e-6, turned.flow(9e5, 12), 1e-14);
    }

    @Test
    void two_unlike_pumps_side_by_side_add_their_flows() {
        PumpGroup pair = group(PumpGroup.Arrangement.PARALLEL, straight(120e-6, 40e-6), straight(110e-6, 70e-6));
        // at 5 bar, half way: 80 + 90 ml/s
        assertEquals(170e-6, pair.flow(5e5, 12), 1e-15);
    }

    @Test
    void side_by_side_the_capacity_ends_where_the_table_ends() {
        Pump pump = straight(120e-6, 40e-6);
        PumpGroup pair = group(PumpGroup.Arrangement.PARALLEL, pump, pump);
        assertEquals(80e-6, pair.capacity(9e5, 12), 1e-15, "the last row counts");
        assertEquals(0, pair.capacity(9.001e5, 12));
        assertEquals(240e-6, pair.capacity(1e5, 12), 1e-15);
        assertEquals(240e-6, pair.capacity(0, 12), 1e-15, "below the first row no more is promised");
    }

    /** Two equal pumps in a row pass at a rise what one passes at half of it; their table runs from 2 to 18 bar. */
    @Test
    void in_a_row_the_capacity_ends_where_both_tables_end() {
        Pump pump = straight(120e-6, 40e-6);
        PumpGroup row = group(PumpGroup.Arrangement.SERIES, pump, pump);
        for (double half : new double[] {1.5e5, 4e5, 5e5, 7e5, 8.999e5}) {
            assertEquals(pump.flow(half, 12), row.capacity(2 * half, 12), 1e-14, half + " Pa each");
        }
        assertEquals(0, row.capacity(18.001e5, 12));
        assertEquals(120e-6, row.capacity(2e5, 12), 1e-14);
        assertEquals(120e-6, row.capacity(0, 12), 1e-14, "below the first rows no more is promised");
    }

    /**
     * The pump draws 8 A at 11 V and 11 A at 13.5 V, so I = 8 + 1.2 (U - 11). With 0.1 ohm and 13 V before it,
     * U = 13 - 0.1 (8 + 1.2 (U - 11)), so 1.12 U = 13.52.
     */
    @Test
    void voltage_and_current_at_the_pump_agree_by_ohms_law() {
        Pump pump = straight(120e-6, 40e-6);
        PumpGroup wired = new PumpGroup("wired", List.of(pump), PumpGroup.Arrangement.PARALLEL, 0.1);
        assertEquals(13.52 / 1.12, wired.terminalVoltage(pump, 4e5, 13), 1e-8);
        PumpGroup bare = new PumpGroup("bare", List.of(pump), PumpGroup.Arrangement.PARALLEL, 0);
        assertEquals(13, bare.terminalVoltage(pump, 4e5, 13));
    }

    @Test
    void a_group_without_a_pump_is_refused() {
        var e = assertThrows(IllegalArgumentException.class, () -> group(PumpGroup.Arrangement.SERIES));
        assertEquals("The pump group group has no pump; give one.", e.getMessage());
    }
}
