package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Fuels;

class ColdChargeTest {
    private static Intake intake(double nitrous, Intake.Warming warming) {
        var fuel = new Intake.FuelSupplied(Fuels.GASOLINE, 298.15, 0.3);
        double enthalpy = NitrousOxide.saturatedLiquid(293.15).enthalpy();
        return new Intake(250e3, 320, 0.010, nitrous, enthalpy, fuel, 0.8, fuel, nitrous / 9).withWarming(warming);
    }

    private static Charge charge(double nitrous, Intake.Warming warming) {
        return ChargeMixing.mix(intake(nitrous, warming), 0.22);
    }

    /** Triple point 611.66 Pa; 12.84 Pa at -40 C over ice (WMO tables, from memory). */
    @Test
    void ice_has_its_vapour_pressure() {
        assertEquals(611.66, ColdCharge.saturation(273.159), 0.5);
        assertEquals(12.84, ColdCharge.saturation(233.15), 0.03);
        assertEquals(1, ColdCharge.saturation(273.1599) / ColdCharge.saturation(273.1601), 1e-3);
    }

    @Test
    void a_shot_in_humid_air_makes_frost_and_a_dry_one_none() {
        ColdCharge plain = ColdCharge.of(charge(0, Intake.Warming.USUAL));
        assertEquals(0, plain.condensed());
        ColdCharge shot = ColdCharge.of(charge(0.2, Intake.Warming.USUAL));
        assertTrue(shot.freezes() && shot.condensed() > 0, shot::toString);
        assertTrue(shot.liquidFuel() > plain.liquidFuel());
        assertTrue(
                shot.condensed() < charge(0.2, Intake.Warming.USUAL).mixture().waterVapour());
        assertFalse(plain.freezes());
    }

    /** What is warmed lies between no nitrous and everything evaporated without walls, and starts from nothing. */
    @Test
    void warming_lies_between_its_ends_without_a_jump() {
        double dry = charge(0, Intake.Warming.NONE).temperature();
        double before = dry;
        for (double nitrous = 0.001; nitrous < 0.15; nitrous *= 1.5) {
            double cold = charge(nitrous, Intake.Warming.NONE).temperature();
            double usual = charge(nitrous, Intake.Warming.USUAL).temperature();
            double warm = charge(nitrous, Intake.Warming.WARM).temperature();
            assertTrue(cold < usual && usual < warm && warm < dry, nitrous + ": " + cold + " " + usual + " " + warm);
            assertTrue(usual < before);
            before = usual;
        }
        assertEquals(dry, charge(1e-6, Intake.Warming.USUAL).temperature(), 1e-2);
    }

    /** Liquid nitrous oxide takes no room, so what is colder and what is less both change the air; the books must close. */
    @Test
    void the_air_fills_what_is_left() {
        Charge c = charge(0.06, Intake.Warming.USUAL);
        double gas = c.mixture().dryAir() / 28.9644e-3
                + c.mixture().waterVapour() / 18.015e-3
                + 0.9 * 0.06 / 44.013e-3
                + 0.3 * (c.mixture().mainFlow() + c.mixture().nitrousFuelFlow()) / Fuels.GASOLINE.molarMass();
        assertEquals(1, gas / c.gasFlow(), 1e-9);
    }
}
