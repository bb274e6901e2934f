package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;

/** The gas that may knock, and the index made of it, from moles counted by hand and from limiting cases. */
class EndGasBooksTest {
    private static final double NITROUS_ENTHALPY =
            NitrousOxide.saturatedLiquid(293.15).enthalpy();

    private record Case(Intake intake, Charge charge, TrappedCharge trapped, EndGas gas, CycleInput input) {}

    private static Case of(Fuel fuel, double lambda, double extra, double nitrous, double share, double late) {
        var supplied = new Intake.FuelSupplied(fuel, 298.15, share);
        Intake intake = new Intake(200e3, 340, 0.01, nitrous, NITROUS_ENTHALPY, supplied, lambda, supplied, extra);
        Charge charge = ChargeMixing.mix(intake, 0.22);
        TrappedCharge trapped =
                TrappedCharge.reacting(CylinderTest.ENGINE, 6000, charge, new TrappedCharge.Inside(2.4e5, 1100, late));
        CycleInput input = trapped.cycle(6000, BurnPhasing.USUAL.burning(0, 1), 450, 2.4e5, 95);
        return new Case(intake, charge, trapped, EndGas.of(intake, charge, trapped), input);
    }

    /**
     * Nitrous oxide falls apart into a mole of nitrogen and half a mole of oxygen. Moles for a kilogram of air by hand: air 34.525, of
     * which 0.2095 are oxygen; water, nitrous oxide and fuel by their molar masses.
     */
    @Test
    void oxygen_share_against_that_of_air() {
        Case shot = of(Fuels.ISO_OCTANE, 1.0, 0.003, 0.03, 0.3, 0);
        var m = shot.charge.mixture();
        double air = m.dryAir() * 34.525;
        double nitrous = 0.03 * 1e3 / 44.013;
        double fuel = (m.mainFlow() + 0.003) * 1e3 / 114.23;
        double water = m.dryAir() * 0.01 * 1e3 / 18.015;
        double share = (0.2095 * air + 0.5 * nitrous) / (air + 1.5 * nitrous + fuel + water);
        assertEquals(share / 0.2095, shot.gas.oxygenRatio(), 1e-3);
        assertTrue(shot.gas.nitrous());
        assertTrue(of(Fuels.ISO_OCTANE, 1.0, 0.003, 0, 0.3, 0).gas.nitrous(), "its fuel alone counts as well");
        assertFalse(of(Fuels.ISO_OCTANE, 1.0, 0, 0, 0.3, 0).gas.nitrous());
    }

    /** Complete evaporation is what a charge shows in which everything does evaporate: lean, warm, no walls. */
    @Test
    void full_cooling_is_the_drop_of_a_charge_that_evaporates_wholly() {
        Case plain = of(Fuels.ISO_OCTANE, 2.0, 0, 0, 1, 0);
        assertEquals(1, plain.charge.mainEvaporated());
        assertEquals(plain.gas.fullCooling(), 340 - plain.charge.temperature(), 0.03 * plain.gas.fullCooling());
        Case shot = of(Fuels.ISO_OCTANE, 2.0, 0.002, 0.03, 1, 0);
        assertEquals(1, shot.charge.nitrousEvaporated());
        assertEquals(shot.gas.fullCooling(), 340 - shot.charge.temperature(), 0.03 * shot.gas.fullCooling());
        assertTrue(shot.gas.fullCooling() > plain.gas.fullCooling() + 10);
        assertEquals(340, shot.gas.warm());
    }

    @Test
    void what_was_counted_is_taken_back_before_it_is_credited() {
        Case none = of(Fuels.ETHANOL, 1.0, 0, 0, 0.1, 0);
        assertEquals(none.charge.temperature(), none.gas.counted(), 1e-9, "nothing evaporates in the cylinder");
        Case late = of(Fuels.ETHANOL, 1.0, 0, 0, 0.1, 0.05);
        // the fresh charge alone would have cooled by the heat over its own capacity, about 1.1 kJ/(kg K)
        double drop = late.trapped.evaporated() / late.trapped.freshMass() / 1100;
        assertTrue(drop > 1, "drop " + drop);
        assertEquals(drop, late.charge.temperature() - late.gas.counted(), 0.1 * drop);
        assertEquals(late.trapped.freshMass() / late.trapped.mass(), late.gas.freshShare(), 1e-12);
        // credited as much as counted: nothing changes; ten kelvin less: warmer by the fresh share of ten
        double counted = 340 - late.gas.counted();
        assertEquals(300, late.gas.temperature(300, counted), 1e-9);
        assertEquals(300 + 10 * late.gas.freshShare(), late.gas.temperature(300, counted - 10), 1e-9);
    }

    /** Each power alone: an index of plain cycle, of oxygen, of richness and of pressure. */
    @Test
    void every_power_of_the_index_by_itself() {
        Case shot = of(Fuels.GASOLINE, 0.8, 0.003, 0.03, 0.3, 0);
        Cylinder cylinder = Cylinder.of(CylinderTest.ENGINE);
        double plain = index(cylinder, shot, 0, 0, 0);
        Cycle cycle = new KnockModel(0.65, 0.3, 0, 0, 0, 0).cycle(cylinder, shot.gas, shot.input);
        assertEquals(cycle.knockIntegral(), plain, 1e-12);
        assertEquals(shot.gas.oxygenRatio(), index(cylinder, shot, 1, 0, 0) / plain, 1e-9);
        assertEquals(1 / shot.charge.mixture().lambda(), index(cylinder, shot, 0, 1, 0) / plain, 1e-9);
        double closing = cylinder.trace(shot.input).pressure()[0] / 101_325;
        assertEquals(Math.pow(closing, -0.5), index(cylinder, shot, 0, 0, 0.5) / plain, 1e-6);
    }

    private static double index(Cylinder cylinder, Case c, double oxygen, double richness, double relief) {
        return new KnockModel(0.65, 0.3, oxygen, richness, relief, 0).index(cylinder, c.gas, c.input);
    }

    /** Douglas and Eyzat: the delay goes with the octane number to the power 3.402, so a number more is 3.6 % less at 95. */
    @Test
    void the_offset_of_the_octane_number_acts_with_nitrous_only() {
        Cylinder cylinder = Cylinder.of(CylinderTest.ENGINE);
        KnockModel zero = new KnockModel(0.65, 0.3, 0, 0, 0, 0);
        KnockModel worse = new KnockModel(0.65, 0.3, 0, 0, 0, -1);
        Case shot = of(Fuels.GASOLINE, 0.8, 0.003, 0.03, 0.3, 0);
        double octane = shot.gas.octane().orElseThrow();
        double ratio = worse.index(cylinder, shot.gas, shot.input) / zero.index(cylinder, shot.gas, shot.input);
        assertEquals(Math.pow((octane - 1) / octane, -3.402), ratio, 1e-9);
        Case plain = of(Fuels.GASOLINE, 0.8, 0, 0, 0.3, 0);
        assertEquals(zero.index(cylinder, plain.gas, plain.input), worse.index(cylinder, plain.gas, plain.input));
    }

    @Test
    void retard_brings_the_index_down_to_the_base() {
        Cylinder cylinder = Cylinder.of(CylinderTest.ENGINE);
        KnockModel model = KnockModel.BEST;
        Case shot = of(Fuels.GASOLINE, 0.8, 0.003, 0.03, 0.3, 0);
        double now = model.index(cylinder, shot.gas, shot.input);
        double retard = model.retard(cylinder, shot.gas, shot.input, 0.8 * now);
        Wiebe later = shot.input.burning().startingAt(shot.input.burning().start() + retard);
        assertTrue(retard > 0.5 && retard < 25, "retard " + retard);
        assertEquals(0.8, model.index(cylinder, shot.gas, shot.input.withBurning(later)) / now, 2e-3);
        assertEquals(0, model.retard(cylinder, shot.gas, shot.input, now));
        assertEquals(0, model.retard(cylinder, shot.gas, shot.input, 1.1 * now));
        assertEquals(Double.POSITIVE_INFINITY, model.retard(cylinder, shot.gas, shot.input, 1e-6 * now));
    }
}
