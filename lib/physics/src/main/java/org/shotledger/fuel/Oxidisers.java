package org.shotledger.fuel;

/** Oxygen and heat that the two oxidisers bring. */
public final class Oxidisers {
    /** Mass fraction of oxygen in dry air, 0.2314 (ISO 2533 composition: 20.9476 % by volume of 28.9644 g/mol). */
    public static final double OXYGEN_IN_DRY_AIR = 0.2314;
    /** Mass fraction of oxygen in nitrous oxide, 15.999/44.013. */
    public static final double OXYGEN_IN_NITROUS_OXIDE = 15.999 / 44.013;
    /** Molar mass of nitrous oxide, kg/mol. */
    public static final double NITROUS_OXIDE_MOLAR_MASS = 44.013e-3;
    /** Molar mass of dry air, kg/mol (ISO 2533). */
    public static final double DRY_AIR_MOLAR_MASS = 28.9644e-3;
    /** Molar mass of water, kg/mol. */
    public static final double WATER_MOLAR_MASS = 18.015e-3;
    /** Heat freed when nitrous oxide falls apart into N2 and O2 at 25 C, J/kg: 82.05 kJ/mol (JANAF). */
    public static final double NITROUS_OXIDE_DECOMPOSITION = 82.05e3 / NITROUS_OXIDE_MOLAR_MASS;

    private Oxidisers() {}
}
