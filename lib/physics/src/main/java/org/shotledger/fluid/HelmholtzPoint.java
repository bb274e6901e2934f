package org.shotledger.fluid;

/**
 * The Helmholtz-energy equation of state of nitrous oxide at one temperature and density, with analytic derivatives.
 *
 * <p>Source: E. W. Lemmon and R. Span, "Short Fundamental Equations of State for 20 Industrial Fluids", J. Chem. Eng.
 * Data 51 (2006) 785-850, 12-term polar form: {@code a/(RT) = alpha0(delta, tau) + alphar(delta, tau)} with
 * {@code delta = rho/rho_r} and {@code tau = T_r/T}. Valid from 182.33 K to 525 K and to 50 MPa; this class evaluates
 * the formula and does not check the range. Inside the dome it gives the continuous (metastable and unstable) surface.
 *
 * <p>A point is a scratch pad: set a temperature, then a density as often as needed, and read properties. It allocates
 * only when made and is not safe for use by two threads. All methods are smooth functions of the two settings.
 */
public final class HelmholtzPoint {

    /** Molar mass of nitrous oxide, kg/mol. */
    public static final double MOLAR_MASS = 0.0440128;

    /** Molar gas constant that belongs to the equation, J/(mol K). */
    public static final double MOLAR_GAS_CONSTANT = 8.314472;

    /** Specific gas constant, J/(kg K). */
    public static final double GAS_CONSTANT = MOLAR_GAS_CONSTANT / MOLAR_MASS;

    /** Reducing temperature T_r (the published critical temperature), K. */
    public static final double REDUCING_TEMPERATURE = 309.52;

    /** Reducing density rho_r (the published critical density, 10.27 mol/dm3), kg/m3. */
    public static final double REDUCING_DENSITY = 10270 * MOLAR_MASS;

    private static final double A1 = -4.4262736272;
    private static final double A2 = 4.3120475243;
    private static final double[] VIBRATION_WEIGHT = {2.1769, 1.6145, 0.48393};
    private static final double[] VIBRATION_TEMPERATURE = {879, 2372, 5447};

    // The twelve terms share nine density factors: terms with equal (d, l) are summed once per temperature.
    private static final int FACTORS = 9;
    private final double[] n = new double[FACTORS];
    private final double[] nt = new double[FACTORS];
    private final double[] ntt = new double[FACTORS];
    private final double[] f = new double[FACTORS];
    private final double[] fd = new double[FACTORS];
    private final double[] fdd = new double[FACTORS];

    private double temperature;
    private double tau;
    private double rt;
    private boolean idealKnown;
    private double ideal;
    private double idealT;
    private double idealTT;

    private double density;
    private double delta;
    private boolean thermalKnown;
    private double ar;
    private double arD;
    private double arDD;
    private double arT;
    private double arDT;
    private double arTT;

    /** Makes a point without a state; set a temperature and a density before reading it. */
    public HelmholtzPoint() {}

    /**
     * Sets the temperature; a density must be set after it.
     *
     * @param kelvin temperature, K, meant for 182.33 to 525
     * @return this point
     */
    public HelmholtzPoint temperature(double kelvin) {
        temperature = kelvin;
        tau = REDUCING_TEMPERATURE / kelvin;
        rt = GAS_CONSTANT * kelvin;
        idealKnown = false;
        // all exponents are multiples of 1/8: roots and products instead of pow
        double q4 = Math.sqrt(tau);
        double q2 = Math.sqrt(q4);
        double q = Math.sqrt(q2);
        double tau2 = tau * tau;
        double tau3 = tau2 * tau;
        double tau6 = tau3 * tau3;
        term(0, 0.25, 0.88045 * q2, 1.25, -2.4235 * tau * q2, 1.5, 0.38237 * tau * q4);
        term(1, 0.25, 0.068917 * q2);
        term(2, 0.875, 0.00020367 * q4 * q2 * q);
        term(3, 2.375, 0.13122 * tau2 * q2 * q);
        term(4, 2, 0.46032 * tau2);
        term(5, 2.125, -0.0036985 * tau2 * q);
        term(6, 3.5, -0.23263 * tau3 * q4, 6.5, -0.00042859 * tau6 * q4, 0, 0);
        term(7, 4.75, -0.04281 * tau2 * tau2 * q4 * q2);
        term(8, 12.5, -0.023038 * tau6 * tau6 * q4);
        return this;
    }

    private void term(int i, double t, double a) {
        n[i] = a;
        nt[i] = t * a;
        ntt[i] = t * (t - 1) * a;
    }

    private void term(int i, double t1, double a1, double t2, double a2, double t3, double a3) {
        n[i] = a1 + a2 + a3;
        nt[i] = t1 * a1 + t2 * a2 + t3 * a3;
        ntt[i] = t1 * (t1 - 1) * a1 + t2 * (t2 - 1) * a2 + t3 * (t3 - 1) * a3;
    }

    /**
     * Sets the density at the temperature set before.
     *
     * @param kilogramPerCubicMetre density, kg/m3, above 0
     * @return this point
     */
    public HelmholtzPoint density(double kilogramPerCubicMetre) {
        density = kilogramPerCubicMetre;
        delta = kilogramPerCubicMetre / REDUCING_DENSITY;
        thermalKnown = false;
        double d = delta;
        double d2 = d * d;
        double d3 = d2 * d;
        double d4 = d2 * d2;
        double e1 = Math.exp(-d);
        double e2 = Math.exp(-d2);
        double e3 = Math.exp(-d3);
        factor(0, d, 1, 0, 0);
        factor(1, d3, 3, 0, 0);
        factor(2, d4 * d3, 7, 0, 0);
        factor(3, d * e1, 1, d, d);
        factor(4, d2 * e1, 2, d, d);
        factor(5, d4 * d * e1, 5, d, d);
        factor(6, d * e2, 1, 2 * d2, 4 * d2);
        factor(7, d4 * e2, 4, 2 * d2, 4 * d2);
        factor(8, d2 * e3, 2, 3 * d3, 9 * d3);
        ar = dot(n, f);
        arD = dot(n, fd);
        arDD = dot(n, fdd);
        return this;
    }

    // value v = delta^d exp(-delta^l), with g = l delta^l and gg = l^2 delta^l
    private void factor(int i, double v, double d, double g, double gg) {
        double b = d - g;
        f[i] = v;
        fd[i] = v * b;
        fdd[i] = v * (b * (b - 1) - gg);
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0]
                + a[1] * b[1]
                + a[2] * b[2]
                + a[3] * b[3]
                + a[4] * b[4]
                + a[5] * b[5]
                + a[6] * b[6]
                + a[7] * b[7]
                + a[8] * b[8];
    }

    private void thermal() {
        if (!thermalKnown) {
            arT = dot(nt, f);
            arDT = dot(nt, fd);
            arTT = dot(ntt, f);
            thermalKnown = true;
        }
    }

    private void ideal() {
        if (!idealKnown) {
            ideal = A1 + A2 * tau + 2.5 * Math.log(tau);
            idealT = A2 * tau + 2.5;
            idealTT = -2.5;
            for (int i = 0; i < VIBRATION_WEIGHT.length; i++) {
                double v = VIBRATION_WEIGHT[i];
                double x = VIBRATION_TEMPERATURE[i] / temperature;
                double e = Math.exp(-x);
                double rest = 1 - e;
                ideal += v * Math.log(rest);
                idealT += v * x * e / rest;
                idealTT -= v * x * x * e / (rest * rest);
            }
            idealKnown = true;
        }
    }

    /**
     * The temperature set.
     *
     * @return temperature, K
     */
    public double temperature() {
        return temperature;
    }

    /**
     * The density set.
     *
     * @return density, kg/m3
     */
    public double density() {
        return density;
    }

    /**
     * Pressure, {@code rho R T (1 + delta alphar_d)}.
     *
     * @return absolute pressure, Pa
     */
    public double pressure() {
        return density * rt * (1 + arD);
    }

    /**
     * Slope of pressure with density at constant temperature.
     *
     * @return dp/drho, Pa/(kg/m3)
     */
    public double pressureByDensity() {
        return rt * (1 + 2 * arD + arDD);
    }

    /**
     * Slope of pressure with temperature at constant density.
     *
     * @return dp/dT, Pa/K
     */
    public double pressureByTemperature() {
        thermal();
        return density * GAS_CONSTANT * (1 + arD - arDT);
    }

    /**
     * Enthalpy, zero for the saturated liquid at 101 325 Pa.
     *
     * @return specific enthalpy, J/kg
     */
    public double enthalpy() {
        thermal();
        ideal();
        return rt * (1 + idealT + arT + arD);
    }

    /**
     * Internal energy on the enthalpy's base.
     *
     * @return specific internal energy, J/kg
     */
    public double internalEnergy() {
        thermal();
        ideal();
        return rt * (idealT + arT);
    }

    /**
     * Entropy, zero for the saturated liquid at 101 325 Pa.
     *
     * @return specific entropy, J/(kg K)
     */
    public double entropy() {
        thermal();
        ideal();
        return GAS_CONSTANT * (idealT + arT - ideal - Math.log(delta) - ar);
    }

    /**
     * Gibbs energy, {@code h - T s}.
     *
     * @return specific Gibbs energy, J/kg
     */
    public double gibbsEnergy() {
        ideal();
        return rt * (1 + arD + ideal + Math.log(delta) + ar);
    }

    /**
     * Logarithm of the fugacity coefficient, {@code alphar + delta alphar_d - ln(Z)}.
     *
     * @return ln(fugacity/pressure), dimensionless; only where the pressure is positive
     */
    public double logFugacityCoefficient() {
        return ar + arD - Math.log(1 + arD);
    }

    /**
     * Isochoric heat capacity.
     *
     * @return cv, J/(kg K)
     */
    public double cv() {
        thermal();
        ideal();
        return -GAS_CONSTANT * (idealTT + arTT);
    }

    /**
     * Isobaric heat capacity.
     *
     * @return cp, J/(kg K)
     */
    public double cp() {
        double slope = 1 + arD - thermalArDT();
        return cv() + GAS_CONSTANT * slope * slope / (1 + 2 * arD + arDD);
    }

    /**
     * Speed of sound squared; negative inside the unstable region.
     *
     * @return (dp/drho) at constant entropy, m2/s2
     */
    public double soundSpeedSquared() {
        double slope = 1 + arD - thermalArDT();
        return rt * (1 + 2 * arD + arDD + slope * slope * GAS_CONSTANT / cv());
    }

    private double thermalArDT() {
        thermal();
        return arDT;
    }

    /**
     * The properties at this point as a record.
     *
     * @param quality vapour mass fraction to write into it: 0, 1 or NaN
     * @return the state
     */
    public FluidState state(double quality) {
        return new FluidState(
                temperature,
                pressure(),
                density,
                enthalpy(),
                entropy(),
                internalEnergy(),
                cp(),
                cv(),
                Math.sqrt(soundSpeedSquared()),
                quality);
    }
}
