package org.shotledger.gas;

/** Dry air as an ideal-gas mixture: 78.084 % N2, 20.9476 % O2, 0.934 % Ar, 0.0314 % CO2 by mole (ISO 2533). */
public final class DryAir {
    /** Mole fraction of nitrogen. */
    public static final double NITROGEN = 0.78084;
    /** Mole fraction of oxygen. */
    public static final double OXYGEN = 0.209476;
    /** Mole fraction of argon; the trace gases are counted with it. */
    public static final double ARGON = 1 - NITROGEN - OXYGEN - 0.000314;
    /** Mole fraction of carbon dioxide. */
    public static final double CARBON_DIOXIDE = 0.000314;
    /** Molar mass, kg/mol (ISO 2533). */
    public static final double MOLAR_MASS = 28.9644e-3;

    /** Temperature at which the polynomials of all four gases change over, K. */
    private static final double JOINT = 1000;

    private static final double[] COLD = summed(JOINT);
    private static final double[] HOT = summed(JOINT + 1);

    private DryAir() {}

    /** The polynomials of the four gases added up once: they are linear in their coefficients. */
    private static double[] summed(double t) {
        double[] sum = new double[7];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = NITROGEN * Gases.N2.coefficients(t)[i]
                    + OXYGEN * Gases.O2.coefficients(t)[i]
                    + ARGON * Gases.AR.coefficients(t)[i]
                    + CARBON_DIOXIDE * Gases.CO2.coefficients(t)[i];
        }
        return sum;
    }

    private static double[] part(double t) {
        return t > JOINT ? HOT : COLD;
    }

    /**
     * Enthalpy with the heats of formation of its gases.
     *
     * @param t temperature, K, 200 to 6000
     * @return J/mol
     */
    public static double enthalpy(double t) {
        return Gas.enthalpy(part(t), t);
    }

    /**
     * Entropy at 1 bar without the part from mixing, which never changes.
     *
     * @param t temperature, K, 200 to 6000
     * @return J/(mol K)
     */
    public static double entropy(double t) {
        return Gas.entropy(part(t), t);
    }

    /**
     * Heat capacity at constant pressure.
     *
     * @param t temperature, K, 200 to 6000
     * @return J/(mol K)
     */
    public static double heatCapacity(double t) {
        return Gas.heatCapacity(part(t), t);
    }

    /**
     * Ratio of heat capacities.
     *
     * @param t temperature, K, 200 to 6000
     * @return cp/cv
     */
    public static double gamma(double t) {
        double cp = heatCapacity(t);
        return cp / (cp - Gas.MOLAR_CONSTANT);
    }

    /**
     * Heat capacity by mass.
     *
     * @param t temperature, K, 200 to 6000
     * @return J/(kg K)
     */
    public static double specificHeat(double t) {
        return heatCapacity(t) / MOLAR_MASS;
    }
}
