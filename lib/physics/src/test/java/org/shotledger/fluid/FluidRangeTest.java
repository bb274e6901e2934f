package org.shotledger.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class FluidRangeTest {

    private static void says(String sentence, Executable call) {
        assertEquals(
                sentence, assertThrows(IllegalArgumentException.class, call).getMessage());
    }

    @Test
    void temperature_and_pressure_outside_the_equation_are_named_with_the_range() {
        says(
                "Nitrous oxide temperature 180.0 K is outside 182.33 to 525 K, the range of the equation of state.",
                () -> NitrousOxide.atTemperaturePressure(180, 1e5));
        says(
                "Nitrous oxide pressure 6.0E7 Pa absolute is outside 0 (exclusive) to 50 MPa, the range of the equation"
                        + " of state.",
                () -> NitrousOxide.atTemperaturePressure(300, 6e7));
        says(
                "Nitrous oxide temperature NaN K is outside 182.33 to 525 K, the range of the equation of state.",
                () -> NitrousOxide.atTemperatureDensity(Double.NaN, 10));
    }

    @Test
    void above_critical_there_is_no_saturated_state() {
        var error = assertThrows(IllegalArgumentException.class, () -> NitrousOxide.saturationPressure(310));
        assertTrue(error.getMessage().endsWith("(triple to critical point): there is no saturated state."));
        assertThrows(IllegalArgumentException.class, () -> NitrousOxide.saturationTemperature(8e6));
        assertThrows(IllegalArgumentException.class, () -> NitrousOxide.mixture(310, 0.5));
        says(
                "Vapour quality 1.1 is outside 0 (saturated liquid) to 1 (saturated vapour).",
                () -> NitrousOxide.mixture(290, 1.1));
    }

    @Test
    void an_unreachable_enthalpy_entropy_or_energy_names_the_end_of_the_range() {
        var error = assertThrows(IllegalArgumentException.class, () -> NitrousOxide.atPressureEnthalpy(1e6, 2e6));
        assertTrue(error.getMessage().startsWith("Nitrous oxide enthalpy 2000000.0 J/kg at 1000000.0 Pa is above "));
        assertTrue(error.getMessage().contains("its value at 525.0 K"));
        error = assertThrows(IllegalArgumentException.class, () -> NitrousOxide.atPressureEntropy(1e6, -900));
        assertTrue(error.getMessage().contains("is below"), error.getMessage());
        error = assertThrows(IllegalArgumentException.class, () -> NitrousOxide.atDensityEnergy(800, -1e6));
        assertTrue(error.getMessage().contains("at 800.0 kg/m3 is below"), error.getMessage());
        assertThrows(IllegalArgumentException.class, () -> NitrousOxide.atPressureEnthalpy(1e6, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> NitrousOxide.atDensityEnergy(1400, 1e5));
    }

    @Test
    void density_and_temperature_that_need_more_than_fifty_megapascal_are_refused() {
        assertThrows(IllegalArgumentException.class, () -> NitrousOxide.atTemperatureDensity(500, 1200));
    }

    @Test
    void quality_tells_the_phase() {
        FluidState liquid = NitrousOxide.atTemperaturePressure(290, 6e6);
        assertTrue(Double.isNaN(liquid.quality()));
        assertFalse(liquid.isSaturated());
        assertFalse(liquid.isTwoPhase());
        assertEquals(0, NitrousOxide.saturatedLiquid(290).quality());
        assertTrue(NitrousOxide.saturatedVapour(290).isSaturated());
        FluidState wet = NitrousOxide.mixture(290, 0.4);
        assertTrue(wet.isTwoPhase());
        assertTrue(Double.isNaN(wet.cp()));
        assertTrue(wet.soundSpeed() < NitrousOxide.saturatedVapour(290).soundSpeed());
        assertEquals(1 / wet.density(), wet.specificVolume());
    }

    @Test
    void exactly_on_the_saturation_line_the_liquid_is_returned_and_just_below_it_the_vapour() {
        double p = NitrousOxide.saturationPressure(290);
        assertEquals(NitrousOxide.saturatedLiquid(290), NitrousOxide.atTemperaturePressure(290, p));
        double below = NitrousOxide.atTemperaturePressure(290, Math.nextDown(p)).density();
        assertEquals(NitrousOxide.saturatedVapour(290).density(), below, 1e-9 * below);
    }
}
