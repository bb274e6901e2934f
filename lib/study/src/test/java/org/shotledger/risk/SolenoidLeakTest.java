package org.shotledger.risk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.fuel.Fuels;

/** Nitrous oxide that seeps into a standing engine. */
class LeakThroughTest {

    @Test
    void an_intake_holds_what_the_gas_law_says() {
        SolenoidLeak leak = SolenoidLeak.of(Whimbrel.PLAN, 0.1e-3, 6e-3, 600);
        var air = Whimbrel.PLAN.stated().at().air();
        double moles = air.pressure() * 6e-3 / (8.314462618 * air.temperature());
        assertEquals(moles * 44.013e-3, leak.fillMass(), 1e-4 * leak.fillMass());
        assertEquals(leak.fillMass() / leak.flow(), leak.fillSeconds(), 1e-9);
    }

    @Test
    void four_times_the_hole_fills_sixteen_times_faster() {
        double one = SolenoidLeak.of(Whimbrel.PLAN, 0.1e-3, 6e-3, 600).fillSeconds();
        double four = SolenoidLeak.of(Whimbrel.PLAN, 0.4e-3, 6e-3, 600).fillSeconds();
        assertEquals(16, one / four, 1e-9);
    }

    @Test
    void a_closed_fire_keeps_its_gas_law_and_is_hotter_with_more_heat() {
        ConstantVolumeCombustion fire = ConstantVolumeCombustion.of(Fuels.ISO_OCTANE, 298.15, 101_325);
        // flames of nitrous oxide with hydrocarbons reach 2900 to 3100 K at constant pressure (Lewis and von Elbe,
        // Combustion,
        // Flames and Explosions of Gases, from memory); with the volume kept they are hotter, below 3800 K by
        // dissociation
        assertTrue(fire.temperature() > 3100 && fire.temperature() < 3800, fire.temperature() + " K");
        // mole numbers rise by about two fifths and the temperature twelvefold
        double ratio = fire.pressure() / 101_325;
        assertTrue(ratio > fire.temperature() / 298.15, "products are more moles than the gas that burned");
        ConstantVolumeCombustion warmer = ConstantVolumeCombustion.of(Fuels.ISO_OCTANE, 350, 101_325);
        assertTrue(warmer.pressure() < fire.pressure(), "warmer gas at one pressure is less gas");
    }
}
