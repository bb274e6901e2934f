package org.shotledger.risk;

import java.util.EnumMap;
import java.util.Map;
import org.shotledger.curve.Bracket;
import org.shotledger.fuel.Elements;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.gas.Element;
import org.shotledger.gas.Equilibrium;
import org.shotledger.gas.Gas;
import org.shotledger.gas.GasMixture;
import org.shotledger.gas.Gases;

/**
 * Nitrous oxide and its stoichiometric fuel burnt in a closed vessel: internal energy and volume are kept, and the products
 * stand in equilibrium.
 *
 * @param temperature of the products, K
 * @param pressure of the products, Pa absolute
 */
record ConstantVolumeCombustion(double temperature, double pressure) {
    /** Temperature of the enthalpies of formation, K. */
    private static final double REFERENCE = 298.15;

    private static final double COLDEST = 1000;
    private static final double HOTTEST = 5500;
    private static final double CLOSE = 0.01;
    private static final int ROUNDS = 12;

    /** Burns a mist of liquid fuel, whose own volume is nothing beside the gas, at a temperature and pressure. */
    static ConstantVolumeCombustion of(Fuel fuel, double temperature, double pressure) {
        double nitrous = fuel.stoichiometricNitrousFuel() / Oxidisers.NITROUS_OXIDE_MOLAR_MASS;
        Map<Element, Double> atoms = atoms(fuel.elements(), nitrous);
        double volume = nitrous * Gas.MOLAR_CONSTANT * temperature / pressure;
        double energy = formation(fuel) + nitrous * Gases.N2O.enthalpy(temperature) - pressure * volume;
        double burnt = Bracket.edge(
                        t -> {
                            GasMixture products = products(atoms, t, volume);
                            return products.enthalpy(t) - products.moles() * Gas.MOLAR_CONSTANT * t < energy;
                        },
                        COLDEST,
                        HOTTEST,
                        CLOSE)
                .inside();
        return new ConstantVolumeCombustion(
                burnt, products(atoms, burnt, volume).moles() * Gas.MOLAR_CONSTANT * burnt / volume);
    }

    private static Map<Element, Double> atoms(Elements of, double nitrous) {
        Map<Element, Double> atoms = new EnumMap<>(Element.class);
        for (Element element : Element.values()) {
            atoms.put(element, 0.0);
        }
        atoms.put(Element.C, of.carbonMoles());
        atoms.put(Element.H, of.hydrogenMoles());
        atoms.put(Element.O, of.oxygenMoles() + nitrous);
        atoms.put(Element.N, of.nitrogenMoles() + 2 * nitrous);
        return atoms;
    }

    /** Enthalpy of a kilogram of fuel from its heating value, with the elements at zero, J/kg. */
    private static double formation(Fuel fuel) {
        Elements of = fuel.elements();
        return of.carbonMoles() * Gases.CO2.enthalpy(REFERENCE)
                + of.hydrogenMoles() / 2 * Gases.H2O.enthalpy(REFERENCE)
                + fuel.lowerHeatingValue();
    }

    /** Products at a temperature in a volume: their amount and their pressure settle together. */
    private static GasMixture products(Map<Element, Double> atoms, double temperature, double volume) {
        double pressure = 10e5;
        GasMixture products = null;
        for (int i = 0; i < ROUNDS; i++) {
            products = Equilibrium.DISSOCIATED.at(atoms, temperature, pressure);
            pressure = products.moles() * Gas.MOLAR_CONSTANT * temperature / volume;
        }
        return products;
    }
}
