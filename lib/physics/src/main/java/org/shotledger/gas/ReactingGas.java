package org.shotledger.gas;

import java.util.List;
import java.util.Map;
import org.shotledger.units.Require;

/**
 * Products of combustion that stay in chemical equilibrium in a closed volume: CO2, CO, H2O, H2, O2, N2, OH, H, O, NO, N,
 * NO2, HO2, N2O and argon. No molecule of this list holds two of carbon, hydrogen and nitrogen, so for a given chemical
 * potential of oxygen the balances of those three elements have closed answers and what is left is one equation, the oxygen
 * balance, whose left side rises with the potential: it always has exactly one root. Gives the same composition as
 * {@link Equilibrium#DISSOCIATED} (tested to 1e-8) at a fiftieth of its cost, which a table of cycles needs.
 *
 * <p>An instance keeps its last answer as the next starting point: one instance for one thread.
 */
public final class ReactingGas {
    private static final List<Gas> SPECIES =
            List.of("CO2", "CO", "H2O", "H2", "OH", "H", "HO2", "N2", "N2O", "NO", "N", "NO2", "O2", "O", "Ar").stream()
                    .map(Gases::of)
                    .toList();
    private static final int CO2 = 0;
    private static final int CO = 1;
    private static final int H2O = 2;
    private static final int H2 = 3;
    private static final int OH = 4;
    private static final int H = 5;
    private static final int HO2 = 6;
    private static final int N2 = 7;
    private static final int N2O = 8;
    private static final int NO = 9;
    private static final int N = 10;
    private static final int NO2 = 11;
    private static final int O2 = 12;
    private static final int O = 13;
    private static final int AR = 14;
    private static final int COUNT = 15;

    private static final double STANDARD_PRESSURE = 1e5;
    private static final double JOINT = 1000;
    private static final double COLDEST = 600;
    private static final double HOTTEST = 5500;
    private static final double[][] COLD = coefficients(JOINT - 1);
    private static final double[][] HOT = coefficients(JOINT + 1);

    private final double carbon;
    private final double hydrogen;
    private final double oxygen;
    private final double nitrogen;
    private final double argon;
    private final double[] k = new double[COUNT];
    private final double[] n = new double[COUNT];
    private double potential = Double.NaN;
    private double slope;

    /**
     * The products of given atoms.
     *
     * @param atoms mol of atoms of each element; oxygen above zero and above one for each carbon
     * @throws IllegalArgumentException where there is so little oxygen that soot would form
     */
    public ReactingGas(Map<Element, Double> atoms) {
        carbon = atoms.getOrDefault(Element.C, 0.0);
        hydrogen = atoms.getOrDefault(Element.H, 0.0);
        oxygen = Require.positive("oxygen atoms of the products", atoms.getOrDefault(Element.O, 0.0), "mol");
        nitrogen = atoms.getOrDefault(Element.N, 0.0);
        argon = atoms.getOrDefault(Element.AR, 0.0);
        if (!(oxygen > carbon)) {
            throw new IllegalArgumentException("The mixture has " + oxygen + " oxygen atoms for " + carbon
                    + " carbon atoms; below one to one soot forms, which this equilibrium does not know. Use less fuel or"
                    + " more oxygen.");
        }
    }

    /**
     * A state of the products.
     *
     * @param temperature K
     * @param volume m3
     * @param pressure Pa
     * @param moles all gas, mol
     * @param energy internal energy with the heats of formation, J
     * @param entropy absolute, J/K
     */
    public record State(
            double temperature, double volume, double pressure, double moles, double energy, double entropy) {
        /**
         * Enthalpy.
         *
         * @return J
         */
        public double enthalpy() {
            return energy + pressure * volume;
        }
    }

    /**
     * Equilibrium at a temperature in a volume.
     *
     * @param temperature K, 600 to 5500
     * @param volume m3, above zero
     * @return the state
     */
    public State at(double temperature, double volume) {
        Require.within("temperature of the products", temperature, COLDEST, HOTTEST, "K");
        react(temperature, volume);
        return state(temperature, volume);
    }

    /**
     * Equilibrium that holds an internal energy in a volume: combustion at constant volume.
     *
     * @param energy with the heats of formation, J
     * @param volume m3
     * @param guess a temperature near the answer, K
     * @return the state
     * @throws IllegalArgumentException when the temperature would not lie between 600 and 5500 K
     */
    public State ofEnergy(double energy, double volume, double guess) {
        return find(guess, volume, energy, true);
    }

    /**
     * Equilibrium that holds an entropy in a volume: reversible expansion with shifting composition.
     *
     * @param entropy absolute, J/K
     * @param volume m3
     * @param guess a temperature near the answer, K
     * @return the state
     * @throws IllegalArgumentException when the temperature would not lie between 600 and 5500 K
     */
    public State ofEntropy(double entropy, double volume, double guess) {
        return find(guess, volume, entropy, false);
    }

    /**
     * The composition of the last state.
     *
     * @return amounts of all gases, mol
     */
    public GasMixture composition() {
        return GasMixture.of(SPECIES, n);
    }

    /**
     * Expands the last state at constant entropy without any further reaction.
     *
     * @param from the last state
     * @param volume m3, at least that of the state
     * @return the expanded state
     */
    public State frozen(State from, double volume) {
        double t = from.temperature() * Math.pow(from.volume() / volume, 0.28);
        State next = state(t, volume);
        for (int i = 0; i < 30; i++) {
            double step = (next.entropy() - from.entropy()) * t / heatCapacity(t);
            t -= step;
            next = state(t, volume);
            if (Math.abs(step) < 1e-9 * t) {
                break;
            }
        }
        return next;
    }

    /** Secant steps inside a bracket; energy and entropy both rise with temperature. */
    private State find(double guess, double volume, double wanted, boolean energy) {
        double low = COLDEST;
        double high = HOTTEST;
        double t = Math.min(Math.max(guess, low), high);
        double before = Double.NaN;
        double missBefore = Double.NaN;
        for (int i = 0; i < 100; i++) {
            react(t, volume);
            State s = state(t, volume);
            double miss = (energy ? s.energy() : s.entropy()) - wanted;
            if (miss > 0) {
                high = t;
            } else {
                low = t;
            }
            // Reactions raise the slope well above that of the frozen gas: half as much again to begin with.
            double rise = Double.isNaN(before)
                    ? 1.5 * heatCapacity(t) / (energy ? 1 : t)
                    : (miss - missBefore) / (t - before);
            double step = rise > 0 ? -miss / rise : Double.NaN;
            // The secant step that would follow is smaller still.
            if (Math.abs(step) < 2e-8 * t || high - low < 1e-9 * t) {
                return s;
            }
            before = t;
            missBefore = miss;
            t = t + step > low && t + step < high ? t + step : (low + high) / 2;
        }
        throw new IllegalArgumentException("The products of this charge are not between " + COLDEST + " and " + HOTTEST
                + " K in " + volume + " m3; check heat and charge.");
    }

    /** Newton's method on the logarithm of the oxygen balance, inside a bracket. */
    private void react(double t, double volume) {
        constants(t, volume);
        double high = 0.5 * Math.log(oxygen / (2 * k[O2]));
        double low = high - 200;
        double x = potential > low && potential < high ? potential : high - 8;
        for (int i = 0; i < 200; i++) {
            double held = distribute(x);
            double miss = Math.log(held / oxygen);
            if (Math.abs(miss) < 1e-13) {
                break;
            }
            if (miss > 0) {
                high = x;
            } else {
                low = x;
            }
            double next = x - miss * held / slope;
            double newer = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(newer - x) < 1e-14 * Math.abs(x)) {
                break;
            }
            x = newer;
        }
        potential = x;
    }

    private void constants(double t, double volume) {
        double[][] all = t > JOINT ? HOT : COLD;
        double log = Math.log(t);
        double scale = Math.log(STANDARD_PRESSURE * volume / (Gas.MOLAR_CONSTANT * t));
        for (int j = 0; j < COUNT; j++) {
            double[] a = all[j];
            double g = a[0] * (1 - log)
                    - t * (a[1] / 2 + t * (a[2] / 6 + t * (a[3] / 12 + t * a[4] / 20)))
                    + a[5] / t
                    - a[6];
            k[j] = Math.exp(scale - g);
        }
    }

    /** Fills the amounts for a potential of oxygen; returns the oxygen they hold and keeps its slope. */
    private double distribute(double potentialOfOxygen) {
        double x = Math.exp(potentialOfOxygen);
        double x2 = x * x;
        double c = carbon / (k[CO] * x + k[CO2] * x2);
        n[CO] = c * k[CO] * x;
        n[CO2] = c * k[CO2] * x2;
        double h = root(k[H2O] * x + k[H2], k[OH] * x + k[H] + k[HO2] * x2, hydrogen);
        n[H2O] = h * h * k[H2O] * x;
        n[H2] = h * h * k[H2];
        n[OH] = h * k[OH] * x;
        n[H] = h * k[H];
        n[HO2] = h * k[HO2] * x2;
        double y = root(k[N2] + k[N2O] * x, k[NO] * x + k[N] + k[NO2] * x2, nitrogen);
        n[N2] = y * y * k[N2];
        n[N2O] = y * y * k[N2O] * x;
        n[NO] = y * k[NO] * x;
        n[N] = y * k[N];
        n[NO2] = y * k[NO2] * x2;
        n[O2] = k[O2] * x2;
        n[O] = k[O] * x;
        n[AR] = argon;
        double inCarbon = n[CO] + 2 * n[CO2];
        double inHydrogen = n[H2O] + n[OH] + 2 * n[HO2];
        double inNitrogen = n[N2O] + n[NO] + 2 * n[NO2];
        // Slopes at constant carbon, hydrogen and nitrogen: their own potentials give way.
        double ofCarbon = n[CO] + 4 * n[CO2] - (carbon > 0 ? inCarbon * inCarbon / carbon : 0);
        double ofHydrogen = n[H2O]
                + n[OH]
                + 4 * n[HO2]
                - share(
                        2 * n[H2O] + n[OH] + 2 * n[HO2],
                        2 * n[H2O] + n[OH] + 2 * n[HO2],
                        4 * (n[H2O] + n[H2]) + n[OH] + n[H] + n[HO2]);
        double ofNitrogen = n[N2O]
                + n[NO]
                + 4 * n[NO2]
                - share(
                        2 * n[N2O] + n[NO] + 2 * n[NO2],
                        2 * n[N2O] + n[NO] + 2 * n[NO2],
                        4 * (n[N2] + n[N2O]) + n[NO] + n[N] + n[NO2]);
        slope = ofCarbon + ofHydrogen + ofNitrogen + 4 * n[O2] + n[O];
        return inCarbon + inHydrogen + inNitrogen + 2 * n[O2] + n[O];
    }

    private static double share(double a, double b, double whole) {
        return whole > 0 ? a * b / whole : 0;
    }

    /** The positive root of {@code 2 a z^2 + b z = atoms}, in the form without cancellation. */
    private static double root(double a, double b, double atoms) {
        return 2 * atoms / (b + Math.sqrt(b * b + 8 * a * atoms));
    }

    private State state(double t, double volume) {
        double[][] all = t > JOINT ? HOT : COLD;
        double log = Math.log(t);
        double moles = 0;
        double enthalpy = 0;
        double entropy = 0;
        double perMole = Gas.MOLAR_CONSTANT * t / (volume * STANDARD_PRESSURE);
        for (int j = 0; j < COUNT; j++) {
            double amount = n[j];
            if (amount <= 0) {
                continue;
            }
            double[] a = all[j];
            moles += amount;
            enthalpy += amount * (a[5] + t * (a[0] + t * (a[1] / 2 + t * (a[2] / 3 + t * (a[3] / 4 + t * a[4] / 5)))));
            entropy += amount
                    * (a[6]
                            + a[0] * log
                            + t * (a[1] + t * (a[2] / 2 + t * (a[3] / 3 + t * a[4] / 4)))
                            - Math.log(amount * perMole));
        }
        double r = Gas.MOLAR_CONSTANT;
        return new State(t, volume, moles * r * t / volume, moles, r * (enthalpy - moles * t), r * entropy);
    }

    /** At constant volume with the last composition, J/K. */
    private double heatCapacity(double t) {
        double[][] all = t > JOINT ? HOT : COLD;
        double sum = 0;
        for (int j = 0; j < COUNT; j++) {
            double[] a = all[j];
            sum += n[j] * (a[0] - 1 + t * (a[1] + t * (a[2] + t * (a[3] + t * a[4]))));
        }
        return Gas.MOLAR_CONSTANT * sum;
    }

    private static double[][] coefficients(double t) {
        return SPECIES.stream().map(g -> g.coefficients(t)).toArray(double[][]::new);
    }
}
