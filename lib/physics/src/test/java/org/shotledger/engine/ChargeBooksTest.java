package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.fuel.Mixture;
import org.shotledger.gas.Element;
import org.shotledger.gas.GasPolynomial;

/** Books of mass, atoms and energy over what the engine breathes, worked out another way. */
class ChargeBooksTest {
    private static final double VOLUME = 0.22;
    private static final double HUMIDITY = 0.012;
    private static final double NITROUS_ENTHALPY =
            NitrousOxide.saturatedLiquid(293.15).enthalpy();

    private static Charge charge(
            Fuel fuel, double lambda, double extra, double nitrous, double share, Intake.Warming w) {
        var supplied = new Intake.FuelSupplied(fuel, 298.15, share);
        return ChargeMixing.mix(
                new Intake(250e3, 330, HUMIDITY, nitrous, NITROUS_ENTHALPY, supplied, lambda, supplied, extra, w),
                VOLUME);
    }

    private static TrappedCharge trapped(Charge charge) {
        return TrappedCharge.reacting(CylinderTest.ENGINE, 6000, charge, new TrappedCharge.Inside(2.6e5, 1150, 0.5));
    }

    /**
     * A fuel cools, fills and burns the same whichever circuit brings it. Where the charge holds all the vapour that is stated this is
     * exact; where it is full of vapour the main fuel's share is found in two passes, good to a tenth of a kelvin.
     */
    @Test
    void it_does_not_matter_which_circuit_brings_the_fuel() {
        for (Fuel fuel : List.of(Fuels.GASOLINE, Fuels.METHANOL, Fuels.ethanolBlend(0.85))) {
            for (double share : new double[] {0.05, 0.9}) {
                double near = share < 0.1 ? 1e-5 : 1e-3;
                Charge main = charge(fuel, 0.9, 0, 0, share, Intake.Warming.NONE);
                double flow = main.mixture().mainFlow();
                Charge second = charge(fuel, Double.POSITIVE_INFINITY, flow, 0, share, Intake.Warming.NONE);
                assertEquals(main.temperature(), second.temperature(), 100 * near, fuel.name());
                assertEquals(1, second.mixture().dryAir() / main.mixture().dryAir(), near, fuel.name());
                assertEquals(1, second.liquidHeat() / main.liquidHeat(), near, fuel.name());
                assertEquals(main.mainEvaporated(), second.nitrousEvaporated(), near);
                TrappedCharge a = trapped(main);
                TrappedCharge b = trapped(second);
                assertEquals(1, b.mass() / a.mass(), near);
                assertEquals(a.temperature(), b.temperature(), 100 * near + 2e-3);
                assertEquals(1, b.heat() / a.heat(), near);
                assertEquals(1, b.unburned().heatCapacity(600) / a.unburned().heatCapacity(600), near);
                assertEquals(1, b.burned().heatCapacity(1500) / a.burned().heatCapacity(1500), near);
                assertEquals(
                        ColdCharge.of(main).liquidFuel(), ColdCharge.of(second).liquidFuel(), near);
            }
        }
    }

    /** Liquid of 1.17 MJ/kg (methanol at 25 degC, handbook) boils off 0.02 kg in each kg of air: 23 K at 1.006 kJ/(kg K). */
    @Test
    void evaporation_takes_its_heat_from_the_charge() {
        Charge dry = charge(Fuels.METHANOL, 1.0, 0, 0, 0, Intake.Warming.NONE);
        double fuelPerAir = dry.mixture().mainFlow() / dry.mixture().dryAir();
        double share = 0.02 / fuelPerAir;
        Charge wet = charge(Fuels.METHANOL, 1.0, 0, 0, share, Intake.Warming.NONE);
        assertEquals(share, wet.mainEvaporated(), 1e-12, "all that is stated can evaporate");
        // liquid and steam are cooled too: 0.135 of 2.5 and 0.012 of 1.87 kJ/(kg K)
        double capacity = 1006 + HUMIDITY * 1870 + (fuelPerAir - 0.02) * 2530 + 0.02 * 1400;
        assertEquals(0.02 * 1.17e6 / capacity, dry.temperature() - wet.temperature(), 1.2);
        // and the liquid of 298 K has itself cooled the charge of 330 K
        assertEquals(fuelPerAir * 2530 * (dry.temperature() - 298.15) / 1028, 330 - dry.temperature(), 0.5);
    }

    /** Warm walls make good their share of the drop, liquid nitrous oxide keeps its heat of vaporisation. */
    @Test
    void walls_and_drops_warm_by_their_share() {
        double plain = charge(Fuels.GASOLINE, 0.8, 0, 0, 0, Intake.Warming.NONE).temperature();
        double cold =
                charge(Fuels.GASOLINE, 0.8, 0, 0.04, 0, Intake.Warming.NONE).temperature();
        double walls = charge(Fuels.GASOLINE, 0.8, 0, 0.04, 0, new Intake.Warming(1, 0.25))
                .temperature();
        double drop = plain - cold;
        assertTrue(drop > 10, "drop " + drop);
        // heat w C (T0 - T) against C' (T - T_cold), C' with fuel and water some tenth above C
        assertEquals(drop / (1 + 0.25 / 1.12), plain - walls, 0.03 * drop);
        double drops = charge(Fuels.GASOLINE, 0.8, 0, 0.04, 0, new Intake.Warming(0.75, 0))
                .temperature();
        // real fluid, from the bottle's liquid: a kilogram to gas at 250 kPa and 310 K, a quarter only to liquid
        // boiling at 250 kPa
        double gas = NitrousOxide.atTemperaturePressure(310, 250e3).enthalpy() - NITROUS_ENTHALPY;
        double liquid = NitrousOxide.saturatedLiquid(NitrousOxide.saturationTemperature(250e3))
                        .enthalpy()
                - NITROUS_ENTHALPY;
        assertEquals(0.75 + 0.25 * liquid / gas, (plain - drops) / drop, 0.03, "a quarter stays liquid");
    }

    /** What comes in goes on: the same masses and, by the atomic weights (IUPAC), the same atoms. */
    @Test
    void atoms_are_kept() {
        Charge c = charge(Fuels.ethanolBlend(0.85), 0.85, 0.006, 0.04, 0.3, Intake.Warming.USUAL);
        Mixture m = c.mixture();
        Map<Element, Double> atoms = ChargeGas.atoms(m);
        double mass = 12.011e-3 * atoms.get(Element.C)
                + 1.008e-3 * atoms.get(Element.H)
                + 15.999e-3 * atoms.get(Element.O)
                + 14.007e-3 * atoms.get(Element.N)
                + 39.948e-3 * atoms.get(Element.AR);
        assertEquals(1, mass / m.totalFlow(), 2e-4);
        // hydrogen: two in each water, and those of the fuels
        double fuels =
                (m.mainFlow() + m.nitrousFuelFlow()) * m.mainFuel().elements().hydrogen() / 1.008e-3;
        assertEquals(fuels + 2 * m.waterVapour() / 18.015e-3, atoms.get(Element.H), 1e-4 * fuels);
        double carbon =
                (m.mainFlow() + m.nitrousFuelFlow()) * m.mainFuel().elements().carbon() / 12.011e-3;
        assertEquals(carbon + m.dryAir() / 28.965e-3 * 0.000314, atoms.get(Element.C), 1e-3 * carbon);
    }

    /** Molar heat capacities at 298 K, J/(mol K): N2 29.12, O2 29.38, Ar 20.79, H2O 33.6, N2O 38.6 (CRC Handbook, from memory). */
    @Test
    void heat_capacity_of_a_charge_is_the_sum_of_its_gases() {
        Mixture m = new Mixture(1, 0.05, 0.4, Fuels.GASOLINE, 0, Fuels.GASOLINE, 0);
        double air = 1 / 28.965e-3;
        double water = 0.05 / 18.015e-3;
        double nitrous = 0.4 / 44.013e-3;
        double molar = air * (0.7808 * 29.12 + 0.2095 * 29.38 + 0.0093 * 20.79 + 0.0004 * 37.1)
                + water * 33.6
                + nitrous * 38.6;
        GasPolynomial gas = ChargeGas.add(new GasPolynomial.Builder(), m).build();
        assertEquals(1, 1.45 * gas.gasConstant() / ((air + water + nitrous) * 8.31446), 1e-4);
        assertEquals(1, 1.45 * (gas.heatCapacity(298.15) + gas.gasConstant()) / molar, 3e-3);
    }

    /** At the 330 K at which it is stated, each kilogram of fuel vapour adds the fuel's own heat capacity. */
    @Test
    void fuel_vapour_adds_its_own_heat_capacity() {
        Mixture air = new Mixture(1, 0, 0, Fuels.GASOLINE, 0, Fuels.GASOLINE, 0);
        double plain = capacity(air);
        for (Fuel fuel :
                List.of(Fuels.ISO_OCTANE, Fuels.GASOLINE, Fuels.ethanolBlend(0.5), Fuels.ETHANOL, Fuels.METHANOL)) {
            Mixture main = new Mixture(1, 0, 0, fuel, 0.2, fuel, 0);
            Mixture second = new Mixture(1, 0, 0, Fuels.GASOLINE, 0, fuel, 0.2);
            assertEquals(0.2 * fuel.vapourHeatCapacity(), capacity(main) - plain, 2e-3 * plain, fuel.name());
            assertEquals(0.2 * fuel.vapourHeatCapacity(), capacity(second) - plain, 2e-3 * plain, fuel.name());
            GasPolynomial gas = ChargeGas.add(new GasPolynomial.Builder(), main).build();
            double moles = 1 / 28.965e-3 + 0.2 / fuel.molarMass();
            assertEquals(1, 1.2 * gas.gasConstant() / (moles * 8.31446), 2e-3, fuel.name());
        }
    }

    /** Heat capacity at constant pressure of the whole mixture, J/K. */
    private static double capacity(Mixture m) {
        GasPolynomial gas = ChargeGas.add(new GasPolynomial.Builder(), m).build();
        return m.totalFlow() * (gas.heatCapacity(330) + gas.gasConstant());
    }

    /** Residual gas fills the clearance at its own pressure and temperature: m = p V/(R T), some 287 J/(kg K). */
    @Test
    void residual_gas_fills_the_clearance() {
        Charge c = charge(Fuels.GASOLINE, 0.85, 0, 0, 0.3, Intake.Warming.NONE);
        TrappedCharge t = trapped(c);
        double clearance = CylinderTest.ENGINE.clearance();
        assertEquals(2.6e5 * clearance / (t.burned().gasConstant() * 1150), t.residualMass(), 1e-12);
        assertEquals(290, t.burned().gasConstant(), 12);
        // six cylinders fill fifty times a second each
        assertEquals(c.mixture().totalFlow() / 300, t.freshMass(), 1e-12);
        assertEquals(t.freshMass() + t.residualMass(), t.mass(), 1e-15);
        // without late evaporation the mixture warms by the residual's enthalpy: 1.2 of its share times the difference,
        // as burned gas of
        // 300 to 1150 K has a mean heat capacity some 1.2 times that of the charge
        TrappedCharge dry =
                TrappedCharge.reacting(CylinderTest.ENGINE, 6000, c, new TrappedCharge.Inside(2.6e5, 1150, 0));
        double share = dry.residualMass() / dry.mass();
        double rise = share * 1.2 * (1150 - c.temperature());
        assertTrue(rise > 15, "rise " + rise);
        assertEquals(rise, dry.temperature() - c.temperature(), 0.1 * rise);
        assertTrue(t.temperature() < dry.temperature() - 5, "evaporation in the cylinder cools");
        assertEquals(1, dry.heatLeft() * (dry.heat() + c.liquidHeat() / 300) / dry.heat(), 1e-9);
    }

    /**
     * Lean, everything burns: the heat of a cycle is the heating value of its fuel, counted with the fuel as vapour and less what the
     * liquid takes, so that of the liquid fuel within two per cent; a mole of nitrous oxide adds 82.05 kJ (heat of formation, handbook).
     */
    @Test
    void heat_of_a_lean_charge_is_the_heating_value() {
        Charge plain = charge(Fuels.ETHANOL, 1.3, 0, 0, 0.1, Intake.Warming.NONE);
        double cycles = 300;
        double value = plain.mixture().mainFlow() * Fuels.ETHANOL.lowerHeatingValue() / cycles;
        assertEquals(1, trapped(plain).heat() / value, 0.02);
        Charge shot = charge(Fuels.ETHANOL, 1.3, 0, 0.04, 0.1, Intake.Warming.NONE);
        double own = shot.mixture().mainFlow() * Fuels.ETHANOL.lowerHeatingValue() / cycles;
        double freed = (trapped(shot).heat() - own * trapped(plain).heat() / value) * cycles;
        assertEquals(82.05e3 * 0.04 / 44.013e-3, freed, 0.1 * freed);
    }

    /** Room taken and cold brought act one after the other: (1 + displacement)(1 + cooling) is the air there is over that without. */
    @Test
    void the_net_change_of_air_is_both_effects_together() {
        Charge shot = charge(Fuels.GASOLINE, 0.8, 0.004, 0.09, 0.1, Intake.Warming.USUAL);
        Charge plain = charge(Fuels.GASOLINE, 0.8, 0, 0, 0.1, Intake.Warming.NONE);
        assertEquals(shot.mixture().dryAir() / plain.mixture().dryAir() - 1, shot.netAirChange(), 1e-6);
        assertEquals((1 + shot.displacement()) * (1 + shot.cooling()) - 1, shot.netAirChange(), 1e-9);
        assertTrue(shot.displacement() < -0.03 && shot.cooling() > 0.03, shot::toString);
    }

    /** Twice of everything gives twice the work, and the same for each kilogram of air; of residual gas no more than it dilutes. */
    @Test
    void a_cycle_of_twice_the_charge_gives_twice_the_work() {
        Mixture one = new Mixture(1, 0.01, 0.1, Fuels.GASOLINE, 0.08, Fuels.ETHANOL, 0.01);
        Mixture two = new Mixture(2, 0.02, 0.2, Fuels.GASOLINE, 0.16, Fuels.ETHANOL, 0.02);
        for (double residual : new double[] {0, 0.05}) {
            FuelAirCycle small = FuelAirCycle.of(one, 330, 2e5, 9, residual);
            FuelAirCycle large = FuelAirCycle.of(two, 330, 2e5, 9, residual);
            assertEquals(2, large.work() / small.work(), 1e-6);
            assertEquals(small.workPerAir(), large.workPerAir(), 1e-6 * small.workPerAir());
            assertEquals(small.work(), small.workPerAir(), 1e-6 * small.work(), "a kilogram of air");
            assertEquals(small.workPerOxygen(), large.workPerOxygen(), 1e-6 * small.workPerOxygen());
        }
    }
}
