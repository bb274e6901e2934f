package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Fuels;

class ChargeMixingTest {
    private static Intake intake(double nitrous, double evaporated) {
        var fuel = new Intake.FuelSupplied(Fuels.GASOLINE, 298.15, evaporated);
        double enthalpy = NitrousOxide.saturatedLiquid(293.15).enthalpy();
        return new Intake(250e3, 320, 0, nitrous, enthalpy, fuel, Double.POSITIVE_INFINITY, fuel, 0);
    }

    /** Volume that breathes 0.60 kg/s of dry air at 320 K and 250 kPa. */
    private static final double VOLUME = 0.60 / 28.9644e-3 * 8.31446261815324 * 320 / 250e3;

    @Test
    void displacement_and_cooling_of_a_shot_nearly_cancel() {
        // 0.0363 kg/s of N2O in 0.60 kg/s of air: mole ratio (0.0363/44.013)/(0.60/28.9644) = 3.98 %.
        Charge charge = ChargeMixing.mix(intake(0.0363, 0), VOLUME);
        assertEquals(-0.0398, charge.displacement(), 2e-4);
        assertEquals(0.05, charge.cooling(), 0.01);
        assertTrue(Math.abs(charge.netAirChange()) < 0.02);
    }

    @Test
    void air_alone_keeps_its_temperature() {
        Charge charge = ChargeMixing.mix(intake(0, 0), VOLUME);
        assertEquals(0.60, charge.mixture().dryAir(), 0.60 * 1e-9);
        assertEquals(0, charge.netAirChange(), 0);
    }

    @Test
    void more_nitrous_oxide_than_the_engine_can_breathe_is_refused() {
        var thrown = assertThrows(IllegalArgumentException.class, () -> ChargeMixing.mix(intake(3, 0), VOLUME));
        assertTrue(thrown.getMessage().startsWith("The charge has no balance"), thrown.getMessage());
    }
}
