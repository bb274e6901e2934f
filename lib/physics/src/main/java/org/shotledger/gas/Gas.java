package org.shotledger.gas;

/**
 * One ideal-gas species with its NASA polynomials (McBride, Gordon and Reno, NASA TM-4513, 1993):
 * {@code cp/R = a1 + a2 T + a3 T^2 + a4 T^3 + a5 T^4}, with the enthalpy of formation in {@code h} and the absolute entropy
 * at 1 bar in {@code s}.
 */
public final class Gas {
    /** Molar gas constant, J/(mol K) (CODATA 2018, exact). */
    public static final double MOLAR_CONSTANT = 8.31446261815324;

    private final String name;
    private final int[] atoms;
    private final double molarMass;
    private final double[] range;
    private final double[] cold;
    private final double[] hot;

    Gas(String name, int[] atoms, double[] range, double[] cold, double[] hot) {
        this.name = name;
        this.atoms = atoms;
        this.range = range;
        this.cold = cold;
        this.hot = hot;
        this.molarMass =
                (12.011 * atoms[0] + 1.008 * atoms[1] + 15.999 * atoms[2] + 14.007 * atoms[3] + 39.948 * atoms[4])
                        * 1e-3;
    }

    /**
     * The formula.
     *
     * @return for example {@code "CO2"}
     */
    public String name() {
        return name;
    }

    /**
     * Atoms of an element in the molecule.
     *
     * @param element which one
     * @return a count
     */
    public int atoms(Element element) {
        return atoms[element.column()];
    }

    /**
     * The molar mass.
     *
     * @return kg/mol
     */
    public double molarMass() {
        return molarMass;
    }

    /**
     * The lowest temperature of the published fit; the polynomials are continued a little below it.
     *
     * @return K
     */
    public double lowestTemperature() {
        return range[0];
    }

    /**
     * The highest temperature of the published fit.
     *
     * @return K
     */
    public double highestTemperature() {
        return range[2];
    }

    /**
     * Heat capacity at constant pressure.
     *
     * @param t temperature, K, 180 to 6000
     * @return J/(mol K)
     */
    public double heatCapacity(double t) {
        return heatCapacity(part(t), t);
    }

    /**
     * Enthalpy, with the heat of formation from the elements at 298.15 K.
     *
     * @param t temperature, K, 180 to 6000
     * @return J/mol
     */
    public double enthalpy(double t) {
        return enthalpy(part(t), t);
    }

    /**
     * Absolute entropy at 1 bar.
     *
     * @param t temperature, K, 180 to 6000
     * @return J/(mol K)
     */
    public double entropy(double t) {
        return entropy(part(t), t);
    }

    /**
     * Gibbs energy at 1 bar over RT.
     *
     * @param t temperature, K, 180 to 6000
     * @return a pure number
     */
    public double gibbs(double t) {
        return (enthalpy(t) / t - entropy(t)) / MOLAR_CONSTANT;
    }

    static double heatCapacity(double[] a, double t) {
        return MOLAR_CONSTANT * (a[0] + t * (a[1] + t * (a[2] + t * (a[3] + t * a[4]))));
    }

    static double enthalpy(double[] a, double t) {
        return MOLAR_CONSTANT * (a[5] + t * (a[0] + t * (a[1] / 2 + t * (a[2] / 3 + t * (a[3] / 4 + t * a[4] / 5)))));
    }

    static double entropy(double[] a, double t) {
        return MOLAR_CONSTANT
                * (a[6] + a[0] * Math.log(t) + t * (a[1] + t * (a[2] / 2 + t * (a[3] / 3 + t * a[4] / 4))));
    }

    /** The coefficients of the range that holds a temperature. */
    double[] coefficients(double t) {
        return part(t);
    }

    private double[] part(double t) {
        return t > range[1] ? hot : cold;
    }

    @Override
    public String toString() {
        return name;
    }
}
