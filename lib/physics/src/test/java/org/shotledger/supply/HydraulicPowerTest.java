package org.shotledger.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.shotledger.units.AllowedRange;

/** Power of pumps against a printed answer, a balance of energy and the laws of affinity. */
class HydraulicPowerTest {
    private static final double GALLON_PER_MINUTE = 3.785411784e-3 / 60;

    /** A. Esposito, Fluid Power with Applications, example 5-5 (quoted elsewhere): 1200 psi and 20 gal/min are 14 hp. */
    @Test
    void a_book_example_of_a_relief_valve() {
        assertEquals(14, HydraulicPower.of(20 * GALLON_PER_MINUTE, 1200 * 6894.757) / 745.69987, 0.005);
    }

    /** Energy: current times voltage times efficiency is pressure rise times volume flow. */
    @Test
    void electric_power_times_efficiency_is_hydraulic_power() {
        double current = HydraulicPower.current(80e-6, 5e5, 0.4, 12.5);
        assertEquals(80e-6 * 5e5, current * 12.5 * 0.4, 1e-10);
    }

    /** Crane TP-410, example 7.33 (quoted elsewhere): 400 gal/min, 126 ft and 17.5 hp at 3500 rpm fall to 194.3, 29.7 and 2 at 1700. */
    @Test
    void a_slower_pump_by_the_handbook() {
        double ratio = 1700.0 / 3500;
        assertEquals(194.3, HydraulicPower.scaled(400, ratio, 1), 0.05);
        assertEquals(29.7, HydraulicPower.scaled(126, ratio, 2), 0.05);
        assertEquals(2.0, HydraulicPower.scaled(17.5, ratio, 3), 0.01);
    }

    @Test
    void an_efficiency_lies_between_a_twentieth_and_one() {
        AllowedRange.check("efficiency of a pump", 0.05, 1, "", e -> HydraulicPower.current(80e-6, 5e5, e, 12));
    }
}
