package org.shotledger.gas;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.shotledger.curve.Bracket;

/**
 * An adiabatic flame at constant pressure.
 *
 * @param temperature of the products, K
 * @param pressure Pa
 * @param products what formed
 */
public record Flame(double temperature, double pressure, GasMixture products) {
    private static final double COLDEST = 500;
    private static final double HOTTEST = 5500;
    /** K; far below what the polynomials know. */
    private static final double SETTLED = 1e-6;

    /**
     * Burns gases that are mixed at one temperature, {@code h(reactants, T0) = h(products, T)}.
     *
     * @param reactants amounts of fuel and oxidiser gases
     * @param temperature of the reactants, K
     * @param pressure Pa
     * @param equilibrium what may form
     * @return the flame
     */
    public static Flame of(GasMixture reactants, double temperature, double pressure, Equilibrium equilibrium) {
        return of(atoms(reactants), reactants.enthalpy(temperature), pressure, equilibrium);
    }

    /**
     * Burns anything of known atoms and enthalpy, for example a liquid fuel.
     *
     * @param atoms mol of atoms of each element
     * @param enthalpy of the reactants with their heats of formation, J
     * @param pressure Pa
     * @param equilibrium what may form
     * @return the flame
     * @throws IllegalArgumentException when the products would be colder than 500 K or hotter than 5500 K
     */
    public static Flame of(Map<Element, Double> atoms, double enthalpy, double pressure, Equilibrium equilibrium) {
        DoubleUnaryOperator missing = t -> missing(atoms, enthalpy, pressure, equilibrium, t);
        double atColdest = missing.applyAsDouble(COLDEST);
        double atHottest = missing.applyAsDouble(HOTTEST);
        if (atColdest < 0 || atHottest > 0) {
            throw new IllegalArgumentException("With an enthalpy of " + enthalpy + " J the products are not between "
                    + COLDEST + " and " + HOTTEST + " K; check the reactants.");
        }
        double t = Bracket.root(missing, COLDEST, atColdest, HOTTEST, atHottest, SETTLED);
        return new Flame(t, pressure, equilibrium.at(atoms, t, pressure));
    }

    /**
     * The atoms of a mixture.
     *
     * @param mixture any gases
     * @return mol of atoms by element
     */
    public static Map<Element, Double> atoms(GasMixture mixture) {
        Map<Element, Double> atoms = new EnumMap<>(Element.class);
        for (Element e : Element.values()) {
            atoms.put(e, mixture.atoms(e));
        }
        return atoms;
    }

    private static double missing(
            Map<Element, Double> atoms, double enthalpy, double pressure, Equilibrium equilibrium, double t) {
        return enthalpy - equilibrium.at(atoms, t, pressure).enthalpy(t);
    }
}
