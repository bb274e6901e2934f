package org.shotledger.bottle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.fluid.NitrousOxide;

/** Heating and refilling against balances drawn up by hand. */
class BottleDayFiguresTest {
    private static final Bottle BOTTLE = new Bottle(6.7e-3, 7.1, 900);

    // first law, without loss to the air: power x time = what shell and contents gain; 350 W at 13.8 V take 25.4 A
    @Test
    void heaterTimeAndAmpereHoursFollowFromTheFirstLaw() {
        Charge cold = BOTTLE.charged(4.3, 285);
        HeatInput lossless = new HeatInput(HeatInput.USUAL_FLUID_COEFFICIENT, 0, 285, 0, 0, 0);
        HeaterTime heater = HeaterTime.to(cold, lossless, 350, 55e5, 13.8, 7200);
        Charge warm = heater.reached();
        double gain = 4.3 * (warm.state().internalEnergy() - cold.state().internalEnergy())
                + 7.1 * 900 * (warm.wallTemperature() - 285);
        assertEquals(1, gain / (350 * heater.seconds()), 1e-9);
        assertEquals(heater.seconds() * 350 / 13.8 / 3600, heater.ampereHours(), 1e-12);
        assertEquals(55e5, warm.pressure(), 10);
        assertFalse(heater.liquidFull());
    }

    @Test
    void coldAirNeverGetsThereAndAnOverfilledBottleGetsThereFull() {
        Charge charge = BOTTLE.charged(4.3, 285);
        HeatInput air = HeatInput.surroundings(286);
        assertTrue(Double.isNaN(HeaterTime.to(charge, air, 0, 60e5, 12, 3600).seconds()));
        assertEquals(0, HeaterTime.to(charge, air, 350, 30e5, 12, 3600).seconds());
        Charge dense = BOTTLE.charged(5.4, 285);
        assertTrue(HeaterTime.to(dense, air, 350, 60e5, 12, 7200).liquidFull());
    }

    // first law again: electric work of the time the heater was on, no loss to the air, is what shell and contents
    // gained
    @Test
    void aHeatedRestTakesWhatTheBottleGainsAndStopsAtItsSwitch() {
        Charge cold = BOTTLE.charged(3, 285);
        HeatedRest shortOne = HeatedRest.of(cold, 60, 285, 350, 300, 12.6);
        assertFalse(shortOne.enough());
        assertEquals(60, shortOne.heaterSeconds(), 1e-9);
        assertEquals(60 * 350 / 12.6 / 3600, shortOne.ampereHours(), 1e-12);
        HeatedRest longOne = HeatedRest.of(cold, 3600, 300, 350, 300, 12.6);
        assertTrue(longOne.enough() && longOne.seconds() < 1200, longOne::toString);
        assertEquals(NitrousOxide.saturationPressure(300), longOne.after().pressure(), 0.012e5 * 60);
        double gain =
                3 * (longOne.after().state().internalEnergy() - cold.state().internalEnergy())
                        + 7.1 * 900 * (longOne.after().wallTemperature() - 285);
        double fromAir = gain - 350 * longOne.heaterSeconds();
        assertTrue(fromAir > 0 && fromAir < 0.5 * gain, "from the air " + fromAir + " of " + gain);
        HeatedRest unheated = HeatedRest.of(cold, 600, 290, 0, 300, 12.6);
        assertEquals(0, unheated.ampereHours());
        assertTrue(!unheated.enough()
                && unheated.after().temperature() > 285
                && unheated.after().temperature() < 290);
        assertEquals(
                0,
                HeatedRest.of(BOTTLE.charged(3, 301), 60, 290, 350, 300, 12.6).seconds());
    }

    // what one loses the other gains, mass and energy
    @Test
    void refillKeepsMassAndEnergyAndStopsWherePressuresMeet() {
        Charge mother = new Bottle(30e-3, 30, 480).charged(18, 295);
        Charge own = BOTTLE.charged(0.6, 295);
        Refill warm = Refill.of(mother, own, 4.4);
        assertFalse(warm.reached());
        assertEquals(1, warm.own().pressure() / warm.mother().pressure(), 0.01);
        Charge chilled = BOTTLE.charged(0.6, Refill.chillTo(mother, own, 4.4));
        Refill cold = Refill.of(mother, chilled, 4.4);
        assertTrue(cold.reached());
        assertEquals(4.4, cold.own().mass(), 1e-9);
        assertEquals(18.6, cold.own().mass() + cold.mother().mass(), 1e-9);
        assertEquals(
                energy(mother) + energy(chilled), energy(cold.mother()) + energy(cold.own()), 1e-6 * energy(mother));
        assertTrue(chilled.temperature() < 290 && chilled.temperature() > NitrousOxide.TRIPLE_TEMPERATURE);
        assertThrows(IllegalArgumentException.class, () -> Refill.of(mother, own, 5));
    }

    private static double energy(Charge charge) {
        return charge.mass() * charge.state().internalEnergy();
    }
}
