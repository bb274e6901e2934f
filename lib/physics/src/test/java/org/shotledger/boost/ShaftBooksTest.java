package org.shotledger.boost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Balances of mass and energy around a turbine and its wastegate. */
class ShaftBooksTest {
    private static final FlowLoss NONE = new FlowLoss("none", 0, 1, 1);
    private static final Turbine TURBINE = new Turbine("invented", 9e-4, 0.7, 0.97, NONE);
    private static final ExhaustGas GAS = new ExhaustGas(0.4, 1150, 290, 1.3);

    /** First law: what the gas loses on its way to the temperature after the turbine is what shaft and bearings get. */
    @Test
    void power_is_the_fall_of_enthalpy() {
        ShaftBalance b = ShaftBalance.solve(TURBINE, GAS, 30e3, 1.1e5);
        double after = Turbine.outletTemperature(1150, b.expansionRatio(), 0.7, 1.3);
        // cp = 290 x 1.3 / 0.3 = 1256.67 J/(kg K)
        assertEquals(30e3, 0.97 * b.turbineFlow() * 1256.6667 * (1150 - after), 0.01);
        assertEquals(b.expansionRatio() * 1.1e5, b.exhaustPressure(), 1e-6);
    }

    @Test
    void turbine_and_wastegate_pass_the_whole_exhaust() {
        ShaftBalance b = ShaftBalance.solve(TURBINE, GAS, 30e3, 1.1e5);
        assertEquals(0.4, b.turbineFlow() + 0.4 * b.wastegateShare(), 1e-12);
        assertTrue(b.wastegateShare() > 0 && b.holdsBoost());
    }

    @Test
    void boost_holds_while_the_wastegate_has_anything_left() {
        assertTrue(new ShaftBalance(2, 2.2e5, 0.4, 0).holdsBoost());
        assertFalse(new ShaftBalance(2, 2.2e5, 0.4, -1e-9).holdsBoost());
    }

    /** Nothing to drive needs no expansion; more than the gas holds cannot be had at any. */
    @Test
    void limits_of_the_expansion_ratio() {
        assertEquals(1, ShaftBalance.expansionRatio(0, GAS, 0.7, 0.97), 1e-12);
        double all = 0.97 * 0.7 * 0.4 * 1256.6667 * 1150;
        assertEquals(Double.POSITIVE_INFINITY, ShaftBalance.expansionRatio(1.0001 * all, GAS, 0.7, 0.97));
        assertTrue(ShaftBalance.expansionRatio(0.9 * all, GAS, 0.7, 0.97) > 12);
        var e = assertThrows(IllegalArgumentException.class, () -> ShaftBalance.solve(TURBINE, GAS, 1e6, 1.1e5));
        assertTrue(e.getMessage().startsWith("The turbine invented cannot give 1000000.0 W"), e.getMessage());
    }

    /**
     * With the wastegate shut the turbine must swallow everything. A choked turbine passes 0.6673 A p / sqrt(R T) for k = 1.3
     * (NACA 1135, from memory), so 0.4 kg/s need 4.0 / 9 x 1e4 / 0.6673 x sqrt(290 x 1150) Pa before it.
     */
    @Test
    void a_choked_turbine_sets_its_pressure_by_the_flow() {
        double before = 0.4 / 9e-4 / 0.6673 * Math.sqrt(290 * 1150);
        assertTrue(before > 2.5 * 1.1e5, "choked");
        assertEquals(before / 1.1e5, ShaftBalance.swallowingRatio(TURBINE, GAS, 1.1e5), 2e-4 * before / 1.1e5);
        // twice the area, half the pressure, still choked
        Turbine twice = new Turbine("twice", 18e-4, 0.7, 0.97, NONE);
        double half = before / 2 / 0.5e5;
        assertEquals(half, ShaftBalance.swallowingRatio(twice, GAS, 0.5e5), 2e-4 * half);
    }

    @Test
    void a_turbine_far_too_small_stands_at_the_highest_ratio_looked_at() {
        Turbine small = new Turbine("small", 1e-4, 0.7, 0.97, NONE);
        assertEquals(12, ShaftBalance.swallowingRatio(small, GAS, 1.1e5));
        ExhaustGas none = new ExhaustGas(0, 1150, 290, 1.3);
        assertEquals(1, ShaftBalance.swallowingRatio(TURBINE, none, 1.1e5), 1e-8);
    }
}
