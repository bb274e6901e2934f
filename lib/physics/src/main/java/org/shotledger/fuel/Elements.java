package org.shotledger.fuel;

import org.shotledger.units.Require;

/**
 * What a fuel is made of, as mass fractions of the elements; they add up to one. Water in a blend counts with its own
 * hydrogen and oxygen, so that every balance stays right.
 *
 * @param carbon mass fraction of carbon, 0 to 1
 * @param hydrogen mass fraction of hydrogen, 0 to 1
 * @param oxygen mass fraction of oxygen, 0 to 1
 * @param nitrogen mass fraction of nitrogen, 0 to 1
 */
public record Elements(double carbon, double hydrogen, double oxygen, double nitrogen) {
    /** Molar mass of carbon, kg/mol (IUPAC conventional atomic weight). */
    public static final double CARBON = 12.011e-3;
    /** Molar mass of hydrogen, kg/mol (IUPAC conventional atomic weight). */
    public static final double HYDROGEN = 1.008e-3;
    /** Molar mass of oxygen, kg/mol (IUPAC conventional atomic weight). */
    public static final double OXYGEN = 15.999e-3;
    /** Molar mass of nitrogen, kg/mol (IUPAC conventional atomic weight). */
    public static final double NITROGEN = 14.007e-3;

    public Elements {
        Require.within("carbon mass fraction", carbon, 0, 1, "");
        Require.within("hydrogen mass fraction", hydrogen, 0, 1, "");
        Require.within("oxygen mass fraction", oxygen, 0, 1, "");
        Require.within("nitrogen mass fraction", nitrogen, 0, 1, "");
        Require.within("sum of the element mass fractions", carbon + hydrogen + oxygen + nitrogen, 0.999, 1.001, "");
    }

    /**
     * The elements of a molecule.
     *
     * @param c carbon atoms, 0 or more
     * @param h hydrogen atoms, 0 or more
     * @param o oxygen atoms, 0 or more
     * @param n nitrogen atoms, 0 or more
     * @return mass fractions
     */
    public static Elements ofMolecule(double c, double h, double o, double n) {
        double mass = molarMass(c, h, o, n);
        return new Elements(c * CARBON / mass, h * HYDROGEN / mass, o * OXYGEN / mass, n * NITROGEN / mass);
    }

    /**
     * The molar mass of a molecule.
     *
     * @param c carbon atoms, 0 or more
     * @param h hydrogen atoms, 0 or more
     * @param o oxygen atoms, 0 or more
     * @param n nitrogen atoms, 0 or more
     * @return kg/mol
     */
    public static double molarMass(double c, double h, double o, double n) {
        return Require.positive("molar mass", c * CARBON + h * HYDROGEN + o * OXYGEN + n * NITROGEN, "kg/mol");
    }

    /**
     * Oxygen needed to burn the fuel to CO2, H2O and N2, from the atom balance.
     *
     * @return kg O2 per kg of fuel, above what the fuel brings itself; zero for water
     */
    public double oxygenDemand() {
        return carbonMoles() * 2 * OXYGEN + hydrogenMoles() * OXYGEN / 2 - oxygen;
    }

    /**
     * Steam formed by complete combustion.
     *
     * @return kg of H2O per kg of fuel
     */
    public double steamFormed() {
        return hydrogen * (1 + OXYGEN / (2 * HYDROGEN));
    }

    /**
     * Carbon atoms in the fuel.
     *
     * @return mol of atoms per kg
     */
    public double carbonMoles() {
        return carbon / CARBON;
    }

    /**
     * Hydrogen atoms in the fuel.
     *
     * @return mol of atoms per kg
     */
    public double hydrogenMoles() {
        return hydrogen / HYDROGEN;
    }

    /**
     * Oxygen atoms in the fuel.
     *
     * @return mol of atoms per kg
     */
    public double oxygenMoles() {
        return oxygen / OXYGEN;
    }

    /**
     * Nitrogen atoms in the fuel.
     *
     * @return mol of atoms per kg
     */
    public double nitrogenMoles() {
        return nitrogen / NITROGEN;
    }
}
