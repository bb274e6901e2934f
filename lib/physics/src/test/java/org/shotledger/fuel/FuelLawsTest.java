package org.shotledger.fuel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.shotledger.gas.Element;
import org.shotledger.gas.Equilibrium;
import org.shotledger.gas.GasMixture;
import org.shotledger.gas.Gases;

class FuelLawsTest {
    private static Mixture random(SplittableRandom r, double lambda) {
        Fuel main = Fuels.ethanolBlend(r.nextDouble(0, 0.98), r.nextDouble(0, 0.02), Fuels.GASOLINE);
        Fuel extra = r.nextBoolean() ? Fuels.METHANOL : Fuels.ISO_OCTANE;
        double air = r.nextDouble(0.05, 0.8);
        double nitrous = r.nextDouble(0, 0.08);
        double oxygen = air * Oxidisers.OXYGEN_IN_DRY_AIR + nitrous * Oxidisers.OXYGEN_IN_NITROUS_OXIDE;
        double share = r.nextDouble(0.1, 1);
        return new Mixture(
                air,
                air * r.nextDouble(0, 0.02),
                nitrous,
                main,
                share * oxygen / lambda / main.oxygenDemand(),
                extra,
                (1 - share) * oxygen / lambda / extra.oxygenDemand());
    }

    @Test
    void atoms_and_mass_are_kept_by_the_exhaust_of_any_mixture() {
        SplittableRandom r = new SplittableRandom(3);
        for (int i = 0; i < 2000; i++) {
            Mixture m = random(r, r.nextDouble(0.6, 1.4));
            FrozenProducts p = FrozenProducts.of(m, 3.5);
            double carbon = m.mainFlow() * m.mainFuel().elements().carbonMoles()
                    + m.nitrousFuelFlow() * m.nitrousFuel().elements().carbonMoles();
            assertEquals(carbon, p.carbonDioxide() + p.carbonMonoxide(), 1e-10 * carbon);
            double hydrogen = m.mainFlow() * m.mainFuel().elements().hydrogenMoles()
                    + m.nitrousFuelFlow() * m.nitrousFuel().elements().hydrogenMoles()
                    + 2 * m.waterVapour() / Oxidisers.WATER_MOLAR_MASS;
            assertEquals(hydrogen, 2 * (p.steam() + p.hydrogen()), 1e-10 * hydrogen);
            double mass = p.carbonDioxide() * 44.009e-3
                    + p.carbonMonoxide() * 28.010e-3
                    + p.steam() * 18.015e-3
                    + p.hydrogen() * 2.016e-3
                    + p.oxygen() * 31.998e-3
                    + p.nitrogen() * 28.014e-3
                    + p.argon() * 39.948e-3;
            assertEquals(m.totalFlow(), mass, 1e-4 * mass, "mass, to the digits of the molar mass of nitrous oxide");
            if (m.lambda() < 1) {
                double k = p.carbonMonoxide() * p.steam() / (p.carbonDioxide() * p.hydrogen());
                assertEquals(3.5, k, 1e-8);
            }
        }
    }

    @Test
    void lambda_comes_back_from_the_flows() {
        SplittableRandom r = new SplittableRandom(4);
        for (int i = 0; i < 500; i++) {
            double lambda = r.nextDouble(0.6, 1.4);
            assertEquals(lambda, random(r, lambda).lambda(), 1e-12);
        }
    }

    @Test
    void more_fuel_on_a_rich_mixture_never_frees_more_heat() {
        double before = Double.POSITIVE_INFINITY;
        for (double fuel = 0.071; fuel < 0.11; fuel += 0.001) {
            double heat = WaterGasCombustion.DEFAULT
                    .burn(Mixture.ofAir(1, 0, Fuels.ISO_OCTANE, fuel))
                    .total();
            assertTrue(heat <= before * (1 + 1e-12), "at " + fuel);
            before = heat;
        }
    }

    @Test
    void rich_exhaust_is_the_equilibrium_at_which_the_water_gas_reaction_freezes() {
        // Heywood section 4.9 (from memory): K = 3.5 belongs to about 1740 K; here from the NASA polynomials.
        for (double lambda : new double[] {0.7, 0.8, 0.9}) {
            double fuel = Oxidisers.OXYGEN_IN_DRY_AIR / Fuels.GASOLINE.oxygenDemand() / lambda;
            FrozenProducts p = FrozenProducts.of(Mixture.ofAir(1, 0, Fuels.GASOLINE, fuel), 3.5);
            Map<Element, Double> atoms = new EnumMap<>(Element.class);
            atoms.put(Element.C, p.carbonDioxide() + p.carbonMonoxide());
            atoms.put(Element.H, 2 * (p.steam() + p.hydrogen()));
            atoms.put(Element.O, 2 * p.carbonDioxide() + p.carbonMonoxide() + p.steam());
            atoms.put(Element.N, 2 * p.nitrogen());
            GasMixture settled = Equilibrium.MAJOR.at(atoms, 1740, 1e6);
            assertEquals(settled.moles(Gases.CO), p.carbonMonoxide(), 0.02 * p.carbonMonoxide());
            assertEquals(settled.moles(Gases.H2), p.hydrogen(), 0.04 * p.hydrogen());
        }
        double oxygen = Oxidisers.OXYGEN_IN_DRY_AIR / Fuels.GASOLINE.oxygenDemand();
        double crude = new OxygenLimited(0.97)
                .burn(Mixture.ofAir(1, 0, Fuels.GASOLINE, 1.2 * oxygen))
                .combustionEfficiency();
        assertTrue(crude > share(1.2 * oxygen), "the oxygen limit alone overstates rich mixtures");
    }

    private static double share(double fuel) {
        return WaterGasCombustion.DEFAULT
                .burn(Mixture.ofAir(1, 0, Fuels.GASOLINE, fuel))
                .combustionEfficiency();
    }

    @Test
    void nitrous_oxide_gives_the_power_the_trade_expects() {
        // "0.8 lb in 10 s per 100 hp": common practice, no source; with a brake efficiency of 0.33 on all heat.
        double nitrous = 0.8 * 0.45359237 / 10;
        Fuel fuel = Fuels.GASOLINE;
        Mixture shot = new Mixture(0, 0, nitrous, fuel, 0, fuel, nitrous / fuel.stoichiometricNitrousFuel());
        double power = 0.33 * WaterGasCombustion.DEFAULT.burn(shot).total();
        assertEquals(100, power / 745.7, 3);
    }

    @Test
    void a_blend_lies_between_its_parts() {
        Fuel e85 = Fuels.ethanolBlend(0.85);
        assertEquals(9.8, e85.stoichiometricAirFuel(), 0.1); // common value for E85
        assertTrue(e85.density() > Fuels.GASOLINE.density() && e85.density() < Fuels.ETHANOL.density());
        assertTrue(e85.octane().orElseThrow().research() < 108);
        Fuel wet = Fuels.ethanolBlend(0.83, 0.02, Fuels.GASOLINE);
        assertTrue(wet.lowerHeatingValue() < e85.lowerHeatingValue());
        assertEquals(0, Fuels.WATER.oxygenDemand(), 1e-12);
    }

    @Test
    void heavier_liquids_when_cold() {
        for (Fuel f : List.of(Fuels.GASOLINE, Fuels.ETHANOL, Fuels.METHANOL, Fuels.TOLUENE)) {
            assertTrue(f.density(270) > f.density(300));
            assertEquals(f.density(), f.density(288.15), 1e-12);
        }
        // CRC Handbook (from memory): ethanol 789.3, methanol 791.3, toluene 866.9 kg/m3 at 20 C.
        assertEquals(789.3, Fuels.ETHANOL.density(293.15), 0.5);
        assertEquals(791.3, Fuels.METHANOL.density(293.15), 0.5);
        assertEquals(866.9, Fuels.TOLUENE.density(293.15), 0.5);
    }

    @Test
    void bad_figures_are_named_with_value_and_limits() {
        var sum = assertThrows(
                IllegalArgumentException.class, () -> Blend.byVolume("mix", List.of(new Part(Fuels.ETHANOL, 0.5))));
        assertTrue(sum.getMessage().startsWith("The sum of the volume fractions of mix is 0.5"), sum.getMessage());
        var water = assertThrows(IllegalArgumentException.class, () -> Fuels.ethanolBlend(0.85, 0.3, Fuels.GASOLINE));
        assertTrue(water.getMessage().contains("0.3; allowed is 0.0 to 0.1"), water.getMessage());
        assertThrows(
                IllegalArgumentException.class,
                () -> Fuels.gasoline("bad", 1.9, 745, Double.NaN, Optional.empty(), "sheet"));
        Mixture soot = Mixture.ofAir(1, 0, Fuels.ISO_OCTANE, 0.5);
        var rich = assertThrows(IllegalArgumentException.class, () -> WaterGasCombustion.DEFAULT.burn(soot));
        assertTrue(rich.getMessage().contains("soot forms"), rich.getMessage());
    }
}
