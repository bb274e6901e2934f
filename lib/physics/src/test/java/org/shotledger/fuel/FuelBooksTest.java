package org.shotledger.fuel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shotledger.units.AllowedRange;

/** Fuels against handbook values and small sums by hand. */
class FuelBooksTest {
    private static final double MJ = 1e6;

    /** Heywood, table D.4 (from memory): air for a kilogram of fuel; the nitrous oxide from C8H18 + 25 N2O and the like. */
    @Test
    void oxidiser_for_a_kilogram() {
        assertEquals(15.13, Fuels.ISO_OCTANE.stoichiometricAirFuel(), 0.03);
        assertEquals(13.50, Fuels.TOLUENE.stoichiometricAirFuel(), 0.03);
        assertEquals(9.00, Fuels.ETHANOL.stoichiometricAirFuel(), 0.03);
        assertEquals(6.47, Fuels.METHANOL.stoichiometricAirFuel(), 0.03);
        assertEquals(25 * 44.013 / 114.23, Fuels.ISO_OCTANE.stoichiometricNitrousFuel(), 1e-3);
        assertEquals(6 * 44.013 / 46.069, Fuels.ETHANOL.stoichiometricNitrousFuel(), 1e-3);
        assertEquals(114.23e-3, Fuels.ISO_OCTANE.molarMass(), 1e-5);
        assertEquals(46.069e-3, Fuels.ETHANOL.molarMass(), 1e-5);
    }

    /** The same table: lower heating values of the liquids; Thornton (1917): near 13 MJ for each kilogram of oxygen, whatever burns. */
    @Test
    void heat_of_a_kilogram() {
        assertEquals(44.3 * MJ, Fuels.ISO_OCTANE.lowerHeatingValue(), 0.25 * MJ);
        assertEquals(44.6 * MJ, Fuels.N_HEPTANE.lowerHeatingValue(), 0.25 * MJ);
        assertEquals(40.6 * MJ, Fuels.TOLUENE.lowerHeatingValue(), 0.25 * MJ);
        assertEquals(26.9 * MJ, Fuels.ETHANOL.lowerHeatingValue(), 0.25 * MJ);
        assertEquals(20.0 * MJ, Fuels.METHANOL.lowerHeatingValue(), 0.25 * MJ);
        for (Fuel fuel : List.of(Fuels.ISO_OCTANE, Fuels.TOLUENE, Fuels.ETHANOL, Fuels.METHANOL, Fuels.GASOLINE)) {
            assertEquals(13 * MJ, fuel.heatPerOxygen(), 0.6 * MJ, fuel.name());
        }
    }

    /**
     * Mathur and Sharma (2010), example 8.1 (quoted elsewhere): 46.9 MJ/kg with 14.4 % hydrogen are 43.913 MJ/kg; it counts nine
     * kilograms of steam for each of hydrogen. By atomic weights there are 8.94.
     */
    @Test
    void lower_from_higher_heating_value() {
        assertEquals(43.913 * MJ, Fuels.lowerHeatingValue(46.9 * MJ, 9 * 0.144, 2.3044 * MJ), 0.001 * MJ);
        assertEquals(8.94 * 0.144, new Elements(0.856, 0.144, 0, 0).steamFormed(), 1e-3);
        // water burns nothing: all its hydrogen is steam already
        assertEquals(1, Fuels.WATER.elements().steamFormed(), 1e-4);
    }

    /** Heywood, table D.4 (from memory), at the boiling point: ethanol 840, methanol 1103, iso-octane 270 kJ/kg. */
    @Test
    void heat_of_vaporisation_falls_towards_the_boiling_point() {
        assertEquals(840e3, Fuels.ETHANOL.vaporisationHeat(351.4), 15e3);
        assertEquals(1103e3, Fuels.METHANOL.vaporisationHeat(337.8), 15e3);
        assertEquals(270e3, Fuels.ISO_OCTANE.vaporisationHeat(372.4), 5e3);
        // a single value falls by 0.16 % of itself a kelvin
        assertEquals(400e3 * (1 - 0.016), new Vaporisation(400e3, 300).at(310), 1e-6);
    }

    /** Hess: vapour less liquid at one temperature is the heat of vaporisation there, by the heat capacities of both. */
    @Test
    void enthalpies_of_liquid_and_vapour_close() {
        Fuel fuel = Fuels.ETHANOL;
        assertEquals(0, fuel.liquidEnthalpy(298.15), 1e-9);
        assertEquals(fuel.vaporisationHeat(298.15), fuel.vapourEnthalpy(298.15), 1e-6);
        assertEquals(2440 * 10, fuel.liquidEnthalpy(308.15), 1e-6);
        assertEquals(921e3 + 1520 * 10, fuel.vapourEnthalpy(308.15), 1e-6);
        // some 0.9 kJ/kg for each kelvin of the difference of the capacities
        double at = fuel.vapourEnthalpy(350) - fuel.liquidEnthalpy(350);
        assertEquals(921e3 - (2440 - 1520) * (350 - 298.15), at, 1);
    }

    /** ASTM D1298: water has 10 degrees API, petrol near 60: 141.5/191.5. */
    @Test
    void specific_gravity() {
        assertEquals(1, Fuels.specificGravity(10), 1e-12);
        assertEquals(0.7389, Fuels.specificGravity(60), 5e-5);
    }

    /** US DOE fuel property table: 396 and 506 Btu/lb over 9.0 and 6.45 are 44 and 78.4 Btu for each pound of air. */
    @Test
    void cooling_of_the_air() {
        double btu = 2326; // J/kg in a Btu/lb
        assertEquals(44 * btu, EvaporationCooling.heatPerAir(396 * btu, 9.0), 0.1 * btu);
        assertEquals(78.4 * btu, EvaporationCooling.heatPerAir(506 * btu, 6.45), 0.1 * btu);
        // 44 Btu/lb at 0.24 Btu/(lb R) are 183 R, 102 K
        assertEquals(102, EvaporationCooling.temperatureDrop(396 * btu, 9.0, 0.24 * 4186.8), 0.2);
    }

    /** E85 by hand: 0.85 x 793.6 and 0.15 x 745 kg in a cubic metre. */
    @Test
    void a_blend_by_volume() {
        Fuel e85 = Fuels.ethanolBlend(0.85);
        double ethanol = 0.85 * 793.6;
        double petrol = 0.15 * 745;
        double share = ethanol / (ethanol + petrol);
        assertEquals(ethanol + petrol, e85.density(), 1e-9);
        assertEquals(share * Fuels.ETHANOL.lowerHeatingValue() + (1 - share) * 43.4e6, e85.lowerHeatingValue(), 1e-3);
        assertEquals(share * 2440 + (1 - share) * 2200, e85.liquidHeatCapacity(), 1e-9);
        assertEquals(share * 1520 + (1 - share) * 1700, e85.vapourHeatCapacity(), 1e-9);
        assertEquals(share * 921e3 + (1 - share) * 350e3, e85.vaporisationHeat(298.15), 1e-6);
        assertEquals(0.85 * 1.09e-3 + 0.15 * 9.5e-4, e85.expansion(), 1e-15);
        assertEquals(share * 15.999 / 46.069, e85.elements().oxygen(), 1e-5);
        double molesEthanol = ethanol / 46.069;
        double molesPetrol = petrol / 105;
        assertEquals((ethanol + petrol) / (molesEthanol + molesPetrol) * 1e-3, e85.molarMass(), 1e-7);
        // octane numbers by moles: the more ethanol, the nearer to its 108 and 92
        double moles = molesEthanol / (molesEthanol + molesPetrol);
        assertEquals(95 + moles * (108 - 95), e85.octane().orElseThrow().research(), 1e-3);
        assertEquals(85 + moles * (92 - 85), e85.octane().orElseThrow().motor(), 1e-3);
        List<Part> parts = List.of(new Part(Fuels.ETHANOL, 0.85), new Part(Fuels.GASOLINE, 0.15));
        assertEquals(share, Blend.massFraction(parts, 0), 1e-12);
        assertEquals(1 - share, Blend.massFraction(parts, 1), 1e-12);
        assertTrue(e85.source().startsWith("ideal mixing of 85.0 % by volume ethanol"), e85.source());
    }

    @Test
    void octane_is_known_only_where_all_that_burns_has_one() {
        Fuel unknown = Fuels.gasoline("unknown", 1.87, 745, 43.4e6, Optional.empty(), "test");
        assertTrue(Fuels.ethanolBlend(0.5, 0, unknown).octane().isEmpty());
        assertTrue(
                Fuels.ethanolBlend(0.9, 0.05, Fuels.GASOLINE).octane().isPresent(), "water has none and burns nothing");
        assertTrue(Octane.of(streams(Fuels.GASOLINE, 0.01, unknown, 0.01)).isEmpty());
        assertTrue(Octane.of(streams(Fuels.GASOLINE, 0, unknown, 0)).isEmpty(), "nothing flows");
        assertEquals(
                95,
                Octane.of(streams(Fuels.GASOLINE, 0.01, unknown, 0))
                        .orElseThrow()
                        .research());
        assertEquals(
                108,
                Octane.of(streams(unknown, 0, Fuels.ETHANOL, 0.01))
                        .orElseThrow()
                        .research());
    }

    /** Two streams in proportion 105 to 46.069 by mass are equal moles: the mean of both numbers. */
    @Test
    void octane_of_two_streams_goes_by_moles() {
        Octane both = Octane.of(streams(Fuels.GASOLINE, 0.105, Fuels.ETHANOL, 0.046069))
                .orElseThrow();
        assertEquals((95 + 108) / 2.0, both.research(), 1e-3);
        assertEquals((85 + 92) / 2.0, both.motor(), 1e-3);
    }

    /** Kalghatgi, SAE 2001-01-3584: K = 0 is the research number, 1 the motor number, negative goes beyond the research number. */
    @Test
    void octane_index() {
        Octane octane = new Octane(98, 88);
        assertEquals(93, octane.antiKnockIndex());
        assertEquals(98, octane.index(0));
        assertEquals(88, octane.index(1));
        assertEquals(103, octane.index(-0.5));
        AllowedRange.check("K of the octane index", -2, 1, "", octane::index);
    }

    /** CRC Handbook (from memory): nitromethane CH3NO2, 61.04 g/mol, 1137 kg/m3; a fuel that brings nitrogen and most of its oxygen. */
    private static Fuel nitromethane() {
        return new Fuel(
                "nitromethane",
                Elements.ofMolecule(1, 3, 2, 1),
                Elements.molarMass(1, 3, 2, 1),
                1137,
                1.2e-3,
                10.5e6,
                new Vaporisation(627e3, 298.15),
                1750,
                950,
                Optional.empty(),
                "CRC Handbook, from memory");
    }

    /** 4 CH3NO2 + 3 O2 -> 4 CO2 + 6 H2O + 2 N2: 96 kg of oxygen for 244 of fuel, 1.70 kg of air for a kilogram. */
    @Test
    void a_fuel_with_nitrogen() {
        Fuel fuel = nitromethane();
        assertEquals(61.04e-3, fuel.molarMass(), 1e-5);
        assertEquals(12.011 / 61.04, fuel.elements().carbon(), 1e-5);
        assertEquals(3 * 1.008 / 61.04, fuel.elements().hydrogen(), 1e-5);
        assertEquals(2 * 15.999 / 61.04, fuel.elements().oxygen(), 1e-5);
        assertEquals(14.007 / 61.04, fuel.elements().nitrogen(), 1e-5);
        assertEquals(1 / 61.04e-3, fuel.elements().nitrogenMoles(), 1e-2);
        assertEquals(1.70, fuel.stoichiometricAirFuel(), 0.005);
        // a mole of each stream's fuel leaves half a mole of nitrogen; of nitrous oxide there are three moles for two
        double mole = fuel.molarMass();
        Mixture m = new Mixture(0, 0, 3 * 44.013e-3, fuel, mole, fuel, mole);
        FrozenProducts p = FrozenProducts.of(m, 3.5);
        assertEquals(2, p.carbonDioxide(), 1e-4);
        assertEquals(3, p.steam(), 1e-4);
        assertEquals(1 + 3, p.nitrogen(), 1e-4);
        assertEquals(0, p.argon());
        assertEquals(9, p.total(), 1e-3);
    }

    @Test
    void a_blend_keeps_every_element() {
        Fuel blend = Blend.byVolume("half", List.of(new Part(nitromethane(), 0.5), new Part(Fuels.METHANOL, 0.5)));
        double share = 1137 / (1137 + 795.9);
        assertEquals(share * 14.007 / 61.04, blend.elements().nitrogen(), 1e-5);
        assertEquals("E85", Fuels.ethanolBlend(0.85).name());
    }

    private static Mixture streams(Fuel main, double mainFlow, Fuel extra, double extraFlow) {
        return new Mixture(0.5, 0.005, 0.04, main, mainFlow, extra, extraFlow);
    }

    /** 0.5 kg/s of air hold 0.1157 kg of oxygen, 0.04 kg/s of nitrous oxide 0.01454 kg. */
    @Test
    void oxygen_books_of_all_streams() {
        Mixture m = streams(Fuels.ISO_OCTANE, 0.03, Fuels.ETHANOL, 0.008);
        double octane = 12.5 * 31.998 / 114.23; // kg of oxygen for a kg, C8H18 + 12.5 O2
        double ethanol = 3 * 31.998 / 46.069;
        assertEquals(0.1157 + 0.01454, m.oxygenSupplied(), 1e-5);
        assertEquals(0.03 * octane + 0.008 * ethanol, m.oxygenDemanded(), 1e-5);
        assertEquals((0.1157 + 0.01454) / (0.03 * octane + 0.008 * ethanol), m.lambda(), 1e-4);
        assertEquals(0.1157 / (0.03 * octane), m.lambdaWithoutNitrous(), 1e-4);
        assertEquals(0.01454 / (0.008 * ethanol), m.nitrousLambda(), 1e-4);
        assertEquals(5, m.nitrousOxidiserFuel(), 1e-12);
        assertEquals(0.583, m.totalFlow(), 1e-12);
        assertEquals(0.03 * 44.3 + 0.008 * 26.9, m.fuelPower() / MJ, 0.01);
    }

    @Test
    void ranges() {
        AllowedRange.check("ethanol volume fraction", 0, 1, "", Fuels::ethanolBlend);
        AllowedRange.check("API gravity", 0, 100, "deg", Fuels::specificGravity);
        AllowedRange.check(
                "hydrogen to carbon ratio of g",
                1.2,
                2.5,
                "",
                x -> Fuels.gasoline("g", x, 745, 43e6, Optional.empty(), "s"));
        AllowedRange.check(
                "density of g", 650, 850, "kg/m3", x -> Fuels.gasoline("g", 1.9, x, 43e6, Optional.empty(), "s"));
        AllowedRange.check(
                "lower heating value of g",
                38e6,
                46e6,
                "J/kg",
                x -> Fuels.gasoline("g", 1.9, 745, x, Optional.empty(), "s"));
        AllowedRange.check("research octane number", 0, 140, "", x -> new Octane(x, 80));
        AllowedRange.check("motor octane number", 0, 140, "", x -> new Octane(90, x));
        AllowedRange.check("temperature of ethanol", 230, 360, "K", Fuels.ETHANOL::density);
        AllowedRange.check("temperature of ethanol", 230, 420, "K", Fuels.ETHANOL::vaporisationHeat);
        AllowedRange.check(
                "heat of vaporisation of water", 2.2e6, 2.5e6, "J/kg", x -> Fuels.lowerHeatingValue(46e6, 1.3, x));
    }
}
