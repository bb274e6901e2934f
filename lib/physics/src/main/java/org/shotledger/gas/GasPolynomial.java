package org.shotledger.gas;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.units.Require;

/**
 * Energy and heat capacity per kilogram of a mixture whose composition stays: the NASA polynomials of its gases added up
 * once, so that a cycle calculation pays for one gas only. Internal energy counts from 298.15 K. {@link #reacting} makes one
 * whose composition shifts with temperature.
 */
public final class GasPolynomial {
    private static final double ZERO = 298.15;
    private static final double JOINT = 1000;
    private static final double COLD_END = 800;

    private final double gasConstant;
    private final double[] cold;
    private final double[] hot;
    private final double[] coldEnergy;
    private final double[] hotEnergy;
    /** Gas constant above the joint over temperature, six coefficients. */
    private final double[] hotConstant;

    private GasPolynomial(double gasConstant, double[] cold, double[] hot) {
        this.gasConstant = gasConstant;
        this.hotConstant = new double[] {gasConstant, 0, 0, 0, 0, 0};
        this.cold = cold;
        this.hot = hot;
        this.coldEnergy = integrated(cold);
        this.hotEnergy = integrated(hot);
        coldEnergy[0] = -energy(coldEnergy, ZERO);
        hotEnergy[0] = energy(coldEnergy, JOINT) - energy(hotEnergy, JOINT);
    }

    private GasPolynomial(GasPolynomial frozen, double[] hotEnergy, double[] hotConstant) {
        this.gasConstant = frozen.gasConstant;
        this.cold = frozen.cold;
        this.coldEnergy = frozen.coldEnergy;
        this.hotEnergy = hotEnergy;
        this.hotConstant = hotConstant;
        this.hot = new double[5];
        for (int i = 0; i < hot.length; i++) {
            hot[i] = (i + 1) * hotEnergy[i + 1];
        }
    }

    /**
     * A gas that reacts when hot: energy and gas constant above 1000 K as polynomials through five states, which the frozen
     * gas joins at 1000 K. The energy of dissociation so becomes part of the heat capacity.
     *
     * @param frozen the gas below 1000 K
     * @param temperature five temperatures above 1100 K, increasing; the last is the highest that will be asked
     * @param energy internal energy at each, on the scale of the frozen gas, J/kg
     * @param constant gas constant at each, J/(kg K)
     * @return the gas
     */
    public static GasPolynomial reacting(
            GasPolynomial frozen, double[] temperature, double[] energy, double[] constant) {
        int n = temperature.length + 1;
        double[] x = new double[n];
        double[] u = new double[n];
        double[] r = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = i == 0 ? 1 : temperature[i - 1] / JOINT;
            u[i] = i == 0 ? frozen.energy(JOINT) : energy[i - 1];
            r[i] = i == 0 ? frozen.gasConstant : constant[i - 1];
        }
        return new GasPolynomial(frozen, through(x, u), through(x, r));
    }

    /**
     * Coefficients of the polynomial through points, by Newton's divided differences; the abscissas are temperatures over that of
     * the joint, the coefficients those of the temperature.
     */
    private static double[] through(double[] x, double[] values) {
        int n = x.length;
        double[] difference = values.clone();
        for (int k = 1; k < n; k++) {
            for (int i = n - 1; i >= k; i--) {
                difference[i] = (difference[i] - difference[i - 1]) / (x[i] - x[i - k]);
            }
        }
        double[] c = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            for (int j = n - 1; j > 0; j--) {
                c[j] = c[j - 1] - x[i] * c[j];
            }
            c[0] = difference[i] - x[i] * c[0];
        }
        for (int i = 0; i < n; i++) {
            c[i] /= Math.pow(JOINT, i);
        }
        return c;
    }

    /** Adds gases by mass; some may be scaled stand-ins. */
    public static final class Builder {
        private final List<Gas> gases = new ArrayList<>();
        private final List<double[]> terms = new ArrayList<>();
        private double mass;

        /** Starts empty. */
        public Builder() {}

        /**
         * Adds an amount of a gas.
         *
         * @param gas which one
         * @param moles mol, 0 or more
         * @return this
         */
        public Builder add(Gas gas, double moles) {
            return add(gas, moles, moles * gas.molarMass(), 1);
        }

        /**
         * Adds a gas whose heat capacity follows another's curve.
         *
         * @param shape the gas whose curve it follows
         * @param moles mol, 0 or more
         * @param massAdded kg, 0 or more
         * @param scale its molar heat capacity over that of the other gas
         * @return this
         */
        public Builder add(Gas shape, double moles, double massAdded, double scale) {
            Require.notNegative("amount", shape.name(), moles, "mol");
            gases.add(shape);
            terms.add(new double[] {moles, scale});
            mass += Require.notNegative("mass", shape.name(), massAdded, "kg");
            return this;
        }

        /**
         * Adds everything up.
         *
         * @return the mixture per kilogram
         */
        public GasPolynomial build() {
            Require.positive("mass of the mixture", mass, "kg");
            double[] cold = new double[5];
            double[] hot = new double[5];
            double moles = 0;
            for (int j = 0; j < gases.size(); j++) {
                double n = terms.get(j)[0];
                moles += n;
                addTo(cold, gases.get(j).coefficients(COLD_END), n * terms.get(j)[1]);
                addTo(hot, gases.get(j).coefficients(JOINT + 1), n * terms.get(j)[1]);
            }
            for (int i = 0; i < 5; i++) {
                cold[i] *= Gas.MOLAR_CONSTANT / mass;
                hot[i] *= Gas.MOLAR_CONSTANT / mass;
            }
            double r = moles * Gas.MOLAR_CONSTANT / mass;
            // From the heat capacity at constant pressure to that at constant volume.
            cold[0] -= r;
            hot[0] -= r;
            return new GasPolynomial(r, cold, hot);
        }

        private static void addTo(double[] sum, double[] coefficients, double n) {
            for (int i = 0; i < 5; i++) {
                sum[i] += n * coefficients[i];
            }
        }
    }

    /**
     * The gas constant below 1000 K, where nothing reacts.
     *
     * @return J/(kg K)
     */
    public double gasConstant() {
        return gasConstant;
    }

    /**
     * The gas constant at a temperature; it rises where molecules fall apart.
     *
     * @param t temperature, K, 180 to 6000
     * @return J/(kg K)
     */
    public double gasConstant(double t) {
        return t > JOINT ? energy(hotConstant, t) : gasConstant;
    }

    /**
     * The part of the entropy that depends on temperature at constant volume, zero at 298.15 K: integral of {@code cv dT/T}.
     *
     * @param t temperature, K, 180 to 6000
     * @return J/(kg K)
     */
    public double volumeEntropy(double t) {
        return t > JOINT
                ? volumeEntropy(cold, JOINT)
                        - volumeEntropy(cold, ZERO)
                        + volumeEntropy(hot, t)
                        - volumeEntropy(hot, JOINT)
                : volumeEntropy(cold, t) - volumeEntropy(cold, ZERO);
    }

    private static double volumeEntropy(double[] a, double t) {
        return a[0] * Math.log(t) + t * (a[1] + t * (a[2] / 2 + t * (a[3] / 3 + t * a[4] / 4)));
    }

    /**
     * Temperature after a change of volume at constant entropy and composition.
     *
     * @param t before, K
     * @param volumeRatio volume after over volume before, above zero
     * @return K
     */
    public double isentropic(double t, double volumeRatio) {
        double target = volumeEntropy(t) - gasConstant * Math.log(volumeRatio);
        double next = t * Math.pow(volumeRatio, -0.33);
        for (int i = 0; i < 50; i++) {
            double step = (volumeEntropy(next) - target) * next / heatCapacity(next);
            next -= step;
            if (Math.abs(step) < 1e-10 * next) {
                break;
            }
        }
        return next;
    }

    /**
     * Heat capacity at constant volume.
     *
     * @param t temperature, K, 180 to 6000
     * @return J/(kg K)
     */
    // Grouped in pairs rather than nested: the chain of dependent operations is half as long.
    public double heatCapacity(double t) {
        double[] a = t > JOINT ? hot : cold;
        double t2 = t * t;
        return (a[0] + t * a[1]) + t2 * ((a[2] + t * a[3]) + t2 * a[4]);
    }

    /**
     * Internal energy, zero at 298.15 K.
     *
     * @param t temperature, K, 180 to 6000
     * @return J/kg
     */
    public double energy(double t) {
        return energy(t > JOINT ? hotEnergy : coldEnergy, t);
    }

    private static double energy(double[] e, double t) {
        double t2 = t * t;
        return (e[0] + t * e[1]) + t2 * ((e[2] + t * e[3]) + t2 * (e[4] + t * e[5]));
    }

    /** Coefficients of the energy, starting at zero; divided here once, not in every call. */
    private static double[] integrated(double[] cv) {
        double[] energy = new double[6];
        for (int i = 0; i < 5; i++) {
            energy[i + 1] = cv[i] / (i + 1);
        }
        return energy;
    }
}
