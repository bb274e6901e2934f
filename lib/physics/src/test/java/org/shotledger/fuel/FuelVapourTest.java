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

    /** Summer petrol has 48 to 62 kPa at 37.8 C (EN 228 class A is 45 to 60 kPa). */
    @Test
    void the_petrol_is_a_summer_petrol() {
        Mixture bubble = new Mixture(1e-9, 0, 0, Fuels.GASOLINE, 1, Fuels.GASOLINE, 0);
        assertTrue(FuelVapour.liquidShare(bubble, 310.95, 60e3) > 0.999);
        assertTrue(FuelVapour.liquidShare(bubble, 310.95, 45e3) < 0.999);
    }

    private static double liquid(Fuel fuel, double t, double p) {
        double oxygen = Oxidisers.OXYGEN_IN_DRY_AIR;
        return FuelVapour.liquidShare(new Mixture(1, 0, 0, fuel, oxygen / (0.8 * fuel.oxygenDemand()), fuel, 0), t, p);
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
        double oxygen = Oxidisers.OXYGEN_IN_DRY_AIR;
        double fuel = oxygen / (0.8 * Fuels.ETHANOL.oxygenDemand());
        double vapour = (1 - liquid(Fuels.ETHANOL, t, p)) * fuel / Component.ETHANOL.pressure(t);
        double air = 1 / Oxidisers.DRY_AIR_MOLAR_MASS;
        double moles = vapour * Component.ETHANOL.pressure(t) / 46.07e-3;
        assertEquals(Component.ETHANOL.pressure(t) / p, moles / (moles + air), 1e-4);
    }
}
