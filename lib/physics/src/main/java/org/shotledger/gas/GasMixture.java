package org.shotledger.gas;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shotledger.units.Require;

/** Amounts of ideal gases. */
public final class GasMixture {
    private final List<Gas> gases;
    private final double[] moles;
    private final double total;

    private GasMixture(List<Gas> gases, double[] moles) {
        this.gases = gases;
        this.moles = moles;
        double sum = 0;
        for (double n : moles) {
            sum += n;
        }
        this.total = Require.positive("amount of a gas mixture", sum, "mol");
    }

    /**
     * A mixture from amounts.
     *
     * @param amounts mol of each gas, 0 or more, at least one above zero
     * @return the mixture
     */
    public static GasMixture of(Map<Gas, Double> amounts) {
        List<Gas> gases = new ArrayList<>(amounts.keySet());
        double[] moles = new double[gases.size()];
        for (int i = 0; i < moles.length; i++) {
            Gas gas = gases.get(i);
            moles[i] = Require.notNegative("amount of " + gas, amounts.get(gas), "mol");
        }
        return new GasMixture(gases, moles);
    }

    static GasMixture of(List<Gas> gases, double[] moles) {
        return new GasMixture(List.copyOf(gases), moles.clone());
    }

    /**
     * The gases.
     *
     * @return in the order given
     */
    public List<Gas> gases() {
        return List.copyOf(gases);
    }

    /**
     * Amount of one gas.
     *
     * @param gas which one
     * @return mol, zero where it is not in the mixture
     */
    public double moles(Gas gas) {
        int i = gases.indexOf(gas);
        return i < 0 ? 0 : moles[i];
    }

    /**
     * Amount of everything.
     *
     * @return mol
     */
    public double moles() {
        return total;
    }

    /**
     * Mole fractions.
     *
     * @return by gas, in order
     */
    public Map<Gas, Double> fractions() {
        Map<Gas, Double> fractions = new LinkedHashMap<>();
        for (int i = 0; i < moles.length; i++) {
            fractions.put(gases.get(i), moles[i] / total);
        }
        return fractions;
    }

    /**
     * Atoms of one element.
     *
     * @param element which one
     * @return mol of atoms
     */
    public double atoms(Element element) {
        double sum = 0;
        for (int i = 0; i < moles.length; i++) {
            sum += moles[i] * gases.get(i).atoms(element);
        }
        return sum;
    }

    /**
     * Mass.
     *
     * @return kg
     */
    public double mass() {
        double sum = 0;
        for (int i = 0; i < moles.length; i++) {
            sum += moles[i] * gases.get(i).molarMass();
        }
        return sum;
    }

    /**
     * Enthalpy with the heats of formation.
     *
     * @param t temperature, K
     * @return J
     */
    public double enthalpy(double t) {
        double sum = 0;
        for (int i = 0; i < moles.length; i++) {
            sum += moles[i] * gases.get(i).enthalpy(t);
        }
        return sum;
    }

    /**
     * Heat capacity at constant pressure with the composition frozen.
     *
     * @param t temperature, K
     * @return J/K
     */
    public double heatCapacity(double t) {
        double sum = 0;
        for (int i = 0; i < moles.length; i++) {
            sum += moles[i] * gases.get(i).heatCapacity(t);
        }
        return sum;
    }

    /**
     * Ratio of heat capacities with the composition frozen.
     *
     * @param t temperature, K
     * @return cp/cv
     */
    public double gamma(double t) {
        double cp = heatCapacity(t);
        return cp / (cp - total * Gas.MOLAR_CONSTANT);
    }

    @Override
    public String toString() {
        return fractions().toString();
    }
}
