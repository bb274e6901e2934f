package org.shotledger.gas;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.units.Require;

/**
 * Energy and heat capacity per kilogram of a mixture whose composition stays: the NASA polynomials of its gases added up
 * once, so that a cycle calculation pays for one gas only. Internal energy counts from 298.15 K.
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

    private GasPolynomial(double gasConstant, double[] cold, double[] hot) {
        this.gasConstant = gasConstant;
        this.cold = cold;
        this.hot = hot;
        this.coldEnergy = integrated(cold);
        this.hotEnergy = integrated(hot);
        coldEnergy[0] = -energy(coldEnergy, ZERO);
        hotEnergy[0] = energy(coldEnergy, JOINT) - energy(hotEnergy, JOINT);
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
     * The gas constant.
     *
     * @return J/(kg K)
     */
    public double gasConstant() {
        return gasConstant;
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
