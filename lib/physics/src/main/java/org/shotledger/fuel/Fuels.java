package org.shotledger.fuel;

import java.util.List;
import java.util.Optional;
import org.shotledger.units.Require;

/**
 * Pure fuels and the blends made of them.
 *
 * <p>Heating values follow from the enthalpies of formation of the liquids (CRC Handbook; CO2 -393.51, H2O gas -241.83
 * kJ/mol); heats of vaporisation are those at 25 C, with the change that leads to the printed values at the boiling point
 * (Heywood, table D.4, from memory). Densities, expansions and heat capacities are handbook values quoted
 * from memory to the digits shown.
 */
public final class Fuels {
    private static final String HANDBOOK = "enthalpy of formation and density from the CRC Handbook, from memory";
    private static final double CO2_FORMATION = -393.51e3;
    private static final double STEAM_FORMATION = -241.83e3;
    private static final double KELVIN_25C = 298.15;

    /** 2,2,4-trimethylpentane, C8H18, the octane-number reference. */
    public static final Fuel ISO_OCTANE = molecule(
            "iso-octane",
            new Atoms(8, 18, 0),
            -259.2e3,
            696.0,
            1.20e-3,
            new Vaporisation(308e3, KELVIN_25C, -490),
            2110,
            1750,
            new Octane(100, 100));
    /** n-heptane, C7H16, the other octane-number reference. */
    public static final Fuel N_HEPTANE = molecule(
            "n-heptane",
            new Atoms(7, 16, 0),
            -224.2e3,
            688.0,
            1.24e-3,
            new Vaporisation(365e3, KELVIN_25C, -660),
            2240,
            1760,
            new Octane(0, 0));
    /** Toluene, C7H8; octane numbers after Morgan et al. 2010. */
    public static final Fuel TOLUENE = molecule(
            "toluene",
            new Atoms(7, 8, 0),
            12.2e3,
            871.6,
            1.08e-3,
            new Vaporisation(412e3, KELVIN_25C, -600),
            1705,
            1240,
            new Octane(118.3, 103.5));
    /** Ethanol, C2H6O; heat of vaporisation and octane numbers of the US DOE fuel property table. */
    public static final Fuel ETHANOL = molecule(
            "ethanol",
            new Atoms(2, 6, 1),
            -277.0e3,
            793.6,
            1.09e-3,
            new Vaporisation(921e3, KELVIN_25C, -1520),
            2440,
            1520,
            new Octane(108, 92));
    /**
     * Methanol, CH4O; heat of vaporisation of the US DOE fuel property table, octane numbers after Anderson et al. (SAE
     * 2012-01-1274, from memory), who give ethanol the same.
     */
    public static final Fuel METHANOL = molecule(
            "methanol",
            new Atoms(1, 4, 1),
            -238.9e3,
            795.9,
            1.19e-3,
            new Vaporisation(1177e3, KELVIN_25C, -1860),
            2530,
            1450,
            new Octane(109, 89));
    /** Water in a fuel: it burns nothing and its evaporation counts against the heating value. */
    public static final Fuel WATER = new Fuel(
            "water",
            Elements.ofMolecule(0, 2, 1, 0),
            Elements.molarMass(0, 2, 1, 0),
            999.1,
            2.1e-4,
            -2442e3,
            new Vaporisation(2442e3, KELVIN_25C, -2470),
            4181,
            1870,
            Optional.empty(),
            "IAPWS steam tables");
    /** A gasoline without oxygenates: H/C 1.87, heating value 43.4 MJ/kg, 745 kg/m3 (US DOE fuel property table). */
    public static final Fuel GASOLINE =
            gasoline("gasoline", 1.87, 745.0, 43.4e6, Optional.of(new Octane(95, 85)), "US DOE fuel property table");

    private record Atoms(double c, double h, double o) {}

    private Fuels() {}

    /**
     * A gasoline surrogate CHy of the user's data sheet. Molar mass 0.105 kg/mol, heat of vaporisation 350 kJ/kg at 25 C,
     * expansion 0.00095 1/K and heat capacities are typical gasoline values (Heywood, table D.4, from memory).
     *
     * @param name what it is called
     * @param hydrogenToCarbon atoms of hydrogen per atom of carbon, 1.2 to 2.5
     * @param density at 15 C, kg/m3, 650 to 850
     * @param lowerHeatingValue J/kg, 38 to 46 MJ/kg
     * @param octane octane numbers, empty where not known
     * @param source where the figures come from
     * @return the fuel
     */
    public static Fuel gasoline(
            String name,
            double hydrogenToCarbon,
            double density,
            double lowerHeatingValue,
            Optional<Octane> octane,
            String source) {
        Require.within("hydrogen to carbon ratio of " + name, hydrogenToCarbon, 1.2, 2.5, "");
        Require.within("density of " + name, density, 650, 850, "kg/m3");
        Require.within("lower heating value of " + name, lowerHeatingValue, 38e6, 46e6, "J/kg");
        return new Fuel(
                name,
                Elements.ofMolecule(1, hydrogenToCarbon, 0, 0),
                0.105,
                density,
                9.5e-4,
                lowerHeatingValue,
                new Vaporisation(350e3, KELVIN_25C),
                2200,
                1700,
                octane,
                source);
    }

    /**
     * Gasoline with ethanol by volume: 0.10 is E10, 0.85 is E85 as named on the pump.
     *
     * @param ethanol volume fraction of ethanol at 15 C, 0 to 1
     * @return the blend of {@link #GASOLINE} and {@link #ETHANOL}
     */
    public static Fuel ethanolBlend(double ethanol) {
        return ethanolBlend(ethanol, 0, GASOLINE);
    }

    /**
     * A tested ethanol blend with its water.
     *
     * @param ethanol volume fraction of ethanol at 15 C, 0 to 1
     * @param water volume fraction of water at 15 C, 0 to 0.1
     * @param base the hydrocarbon part
     * @return the blend
     */
    public static Fuel ethanolBlend(double ethanol, double water, Fuel base) {
        Require.within("ethanol volume fraction", ethanol, 0, 1, "");
        Require.within("water volume fraction", water, 0, 0.1, "");
        Require.within("ethanol and water volume fraction", ethanol + water, 0, 1, "");
        String name = "E" + Math.round(ethanol * 100);
        return Blend.byVolume(
                name, List.of(new Part(ETHANOL, ethanol), new Part(WATER, water), new Part(base, 1 - ethanol - water)));
    }

    /**
     * Lower heating value of a data sheet that states the higher one.
     *
     * @param higherHeatingValue with the water condensed, J/kg
     * @param steam steam formed, kg per kg of fuel; see {@link Elements#steamFormed()}
     * @param steamHeat heat of vaporisation of water at the reference temperature, J/kg, 2.2 to 2.5 MJ/kg
     * @return J/kg
     */
    public static double lowerHeatingValue(double higherHeatingValue, double steam, double steamHeat) {
        Require.positive("higher heating value", higherHeatingValue, "J/kg");
        Require.notNegative("steam formed", steam, "kg/kg");
        Require.within("heat of vaporisation of water", steamHeat, 2.2e6, 2.5e6, "J/kg");
        return higherHeatingValue - steam * steamHeat;
    }

    /**
     * Density of a data sheet that states the API gravity, {@code SG = 141.5 / (131.5 + API)} (ASTM D1298).
     *
     * @param api API gravity, degrees, 0 to 100
     * @return specific gravity at 60 F against water at 60 F
     */
    public static double specificGravity(double api) {
        Require.within("API gravity", api, 0, 100, "deg");
        return 141.5 / (131.5 + api);
    }

    private static Fuel molecule(
            String name,
            Atoms atoms,
            double liquidFormation,
            double density,
            double expansion,
            Vaporisation vaporisation,
            double liquidHeatCapacity,
            double vapourHeatCapacity,
            Octane octane) {
        double molarMass = Elements.molarMass(atoms.c, atoms.h, atoms.o, 0);
        double heat = (liquidFormation - atoms.c * CO2_FORMATION - atoms.h / 2 * STEAM_FORMATION) / molarMass;
        return new Fuel(
                name,
                Elements.ofMolecule(atoms.c, atoms.h, atoms.o, 0),
                molarMass,
                density,
                expansion,
                heat,
                vaporisation,
                liquidHeatCapacity,
                vapourHeatCapacity,
                Optional.of(octane),
                HANDBOOK);
    }
}
