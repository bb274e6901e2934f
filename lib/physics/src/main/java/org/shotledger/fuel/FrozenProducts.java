package org.shotledger.fuel;

/**
 * Exhaust gas of a mixture by element balance, in mol/s: complete combustion when lean, water-gas proportion when rich.
 *
 * @param carbonDioxide CO2, mol/s
 * @param carbonMonoxide CO, mol/s
 * @param steam H2O, mol/s
 * @param hydrogen H2, mol/s
 * @param oxygen O2, mol/s
 * @param nitrogen N2, mol/s
 * @param argon Ar, mol/s
 */
public record FrozenProducts(
        double carbonDioxide,
        double carbonMonoxide,
        double steam,
        double hydrogen,
        double oxygen,
        double nitrogen,
        double argon) {
    private static final double O2 = 2 * Elements.OXYGEN;
    private static final double N2 = 2 * Elements.NITROGEN;
    /** Argon per oxygen in dry air by mole (ISO 2533: 0.00934 and 0.209476). */
    private static final double ARGON_PER_OXYGEN = 0.00934 / 0.209476;

    private static final double ARGON_MASS = 39.948e-3;

    /**
     * Balances the elements.
     *
     * @param mixture what flows in
     * @param waterGasConstant {@code n_CO n_H2O / (n_CO2 n_H2)} for rich mixtures, 1 to 10
     * @return the products
     * @throws IllegalArgumentException so rich that not even carbon monoxide can be formed from all carbon
     */
    public static FrozenProducts of(Mixture mixture, double waterGasConstant) {
        Elements main = mixture.mainFuel().elements();
        Elements extra = mixture.nitrousFuel().elements();
        double f = mixture.mainFlow();
        double g = mixture.nitrousFuelFlow();
        double steamIn = mixture.waterVapour() / Oxidisers.WATER_MOLAR_MASS;
        double carbon = f * main.carbonMoles() + g * extra.carbonMoles();
        double hydrogen = (f * main.hydrogenMoles() + g * extra.hydrogenMoles()) / 2 + steamIn;
        double airOxygen = mixture.dryAir() * Oxidisers.OXYGEN_IN_DRY_AIR / O2;
        double nitrous = mixture.nitrous() / Oxidisers.NITROUS_OXIDE_MOLAR_MASS;
        double atoms = 2 * airOxygen + nitrous + steamIn + f * main.oxygenMoles() + g * extra.oxygenMoles();
        double argon = airOxygen * ARGON_PER_OXYGEN;
        double nitrogen = (mixture.dryAir() * (1 - Oxidisers.OXYGEN_IN_DRY_AIR) - argon * ARGON_MASS) / N2
                + nitrous
                + (f * main.nitrogenMoles() + g * extra.nitrogenMoles()) / 2;
        double spare = atoms - 2 * carbon - hydrogen;
        if (spare >= 0) {
            return new FrozenProducts(carbon, 0, hydrogen, 0, spare / 2, nitrogen, argon);
        }
        double dioxide = dioxide(carbon, hydrogen, atoms, waterGasConstant);
        double steam = atoms - carbon - dioxide;
        return new FrozenProducts(dioxide, carbon - dioxide, steam, hydrogen - steam, 0, nitrogen, argon);
    }

    /** CO2 from {@code K a (H - O + C + a) = (C - a)(O - C - a)} with a the CO2, the smaller root in [0, min(C, O - C)]. */
    private static double dioxide(double carbon, double hydrogen, double oxygen, double k) {
        double water = oxygen - carbon;
        if (water < 0) {
            throw new IllegalArgumentException("The mixture has " + oxygen + " oxygen atoms for " + carbon
                    + " carbon atoms; below one to one soot forms and the balance of rich combustion no longer holds. Use less"
                    + " fuel or more oxygen.");
        }
        double quadratic = k - 1;
        double linear = k * (hydrogen - water) + carbon + water;
        double constant = -carbon * water;
        // The stable form of the positive root also covers k = 1.
        return -2 * constant / (linear + Math.sqrt(linear * linear - 4 * quadratic * constant));
    }

    /**
     * All moles.
     *
     * @return mol/s
     */
    public double total() {
        return carbonDioxide + carbonMonoxide + steam + hydrogen + oxygen + nitrogen + argon;
    }
}
