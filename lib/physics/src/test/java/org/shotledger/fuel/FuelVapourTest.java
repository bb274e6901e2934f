package org.shotledger.fuel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shotledger.fuel.FuelVapour.Component;

class FuelVapourTest {
    /** Normal boiling points, CRC Handbook, from memory: the constants must give one atmosphere there. */
    @Test
    void one_atmosphere_at_the_boiling_point() {
        Map<Component, Double> boiling = Map.of(
                Component.BUTANE, 272.65,
                Component.PENTANE, 309.2,
                Component.ISO_OCTANE, 372.4,
                Component.TOLUENE, 383.8,
                Component.DECANE, 447.3,
                Component.ETHANOL, 351.4,
                Component.METHANOL, 337.8);
        for (Component c : Component.values()) {
            assertEquals(1, c.pressure(boiling.get(c)) / 101325, 0.02, c.name());
        }
    }

    /** Vapour pressures at 0 C, CRC Handbook, from memory: ethanol 1.6 kPa, methanol 4.0 kPa; extrapolated, so 10 %. */
    @Test
    void cold_alcohols() {
        assertEquals(1.6e3, Component.ETHANOL.pressure(273.15), 160);
        assertEquals(4.0e3, Component.METHANOL.pressure(273.15), 400);
    }

    /**
     * Summer petrol has 45 to 60 kPa at 37.8 C (EN 228 class A, from memory), measured with four volumes of air and vapour over one
     * of liquid (ASTM D323); what evaporates is butane and pentane, 66 g/mol between them.
     */
    @Test
    void the_petrol_is_a_summer_petrol() {
        double p = 155e3;
        double t = 310.95;
        double gas = p * 4e-3 / (8.314462618 * t);
        double vapour = FuelVapour.of(Fuels.GASOLINE, Fuels.GASOLINE)
                        .possible(0.74, 0, gas, t, p)
                        .main()
                * 0.74
                / 66e-3;
        assertTrue(p * vapour / gas > 45e3 && p * vapour / gas < 60e3, "vapour pressure " + p * vapour / gas);
    }

    /** Liquid share of a fuel at lambda 0.80 in a kilogram of air. */
    private static double liquid(Fuel fuel, double t, double p) {
        double flow = Oxidisers.OXYGEN_IN_DRY_AIR / (0.8 * fuel.oxygenDemand());
        double gas = 1 / Oxidisers.DRY_AIR_MOLAR_MASS;
        return 1 - FuelVapour.of(fuel, fuel).possible(flow, 0, gas, t, p).main();
    }

    @Test
    void colder_denser_and_more_alcohol_leave_more_liquid() {
        assertEquals(0, liquid(Fuels.GASOLINE, 380, 1e5));
        double before = 0;
        for (double t = 340; t > 200; t -= 10) {
            double now = liquid(Fuels.GASOLINE, t, 2e5);
            assertTrue(now >= before);
            before = now;
        }
        assertTrue(liquid(Fuels.GASOLINE, 270, 3e5) > liquid(Fuels.GASOLINE, 270, 1e5));
        assertTrue(liquid(Fuels.ETHANOL, 280, 2e5) > liquid(Fuels.GASOLINE, 280, 2e5));
        assertTrue(liquid(Fuels.METHANOL, 220, 2e5) > 0.95);
    }

    /** Pure ethanol: a charge is saturated where its partial pressure is the vapour pressure. */
    @Test
    void a_pure_fuel_evaporates_up_to_its_partial_pressure() {
        double t = 290;
        double p = 2e5;
        double fuel = Oxidisers.OXYGEN_IN_DRY_AIR / (0.8 * Fuels.ETHANOL.oxygenDemand());
        double vapour = (1 - liquid(Fuels.ETHANOL, t, p)) * fuel / 46.07e-3;
        double gas = 1 / Oxidisers.DRY_AIR_MOLAR_MASS;
        assertEquals(Component.ETHANOL.pressure(t) / p, vapour / gas, 1e-4 * vapour / gas);
    }

    /** Two streams are one liquid: the same fuel in two parts evaporates as in one, and a light fuel before a heavy one. */
    @Test
    void two_streams_share_one_gas() {
        FuelVapour same = FuelVapour.of(Fuels.GASOLINE, Fuels.GASOLINE);
        double whole = same.possible(0.08, 0, 34, 260, 2e5).main();
        FuelVapour.Shares parts = same.possible(0.05, 0.03, 34, 260, 2e5);
        assertEquals(whole, parts.main(), 1e-9);
        assertEquals(whole, parts.extra(), 1e-9);
        FuelVapour.Shares mixed = FuelVapour.of(Fuels.GASOLINE, Fuels.METHANOL).possible(0.05, 0.05, 34, 260, 2e5);
        assertTrue(mixed.main() > mixed.extra(), mixed::toString);
    }
}
