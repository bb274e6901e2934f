package org.shotledger.engine;

import java.util.EnumMap;
import java.util.Map;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.gas.DryAir;
import org.shotledger.gas.Element;
import org.shotledger.gas.Gas;
import org.shotledger.gas.GasMixture;
import org.shotledger.gas.GasPolynomial;
import org.shotledger.gas.Gases;

/** The unburned charge as an ideal gas: its atoms, its heat capacity and its energy of formation. All fuel counts as vapour. */
final class ChargeGas {
    private static final double ZERO = Fuel.REFERENCE_TEMPERATURE;
    /** Mass fractions of oxygen in C2H6O and CH4O. */
    private static final double ETHANOL_OXYGEN = 0.3473;

    private static final double METHANOL_OXYGEN = 0.4993;
    private static final Gas PARAFFIN = Gases.of("iso-C8H18");
    private static final Gas ETHANOL = Gases.of("C2H5OH");
    private static final Gas METHANOL = Gases.of("CH3OH");

    private ChargeGas() {}

    /** Atoms in mol for each unit of the mixture's flows. */
    static Map<Element, Double> atoms(Mixture mix) {
        double air = mix.dryAir() / DryAir.MOLAR_MASS;
        double water = mix.waterVapour() / Oxidisers.WATER_MOLAR_MASS;
        double nitrous = mix.nitrous() / Oxidisers.NITROUS_OXIDE_MOLAR_MASS;
        Map<Element, Double> atoms = new EnumMap<>(Element.class);
        atoms.put(Element.C, air * DryAir.CARBON_DIOXIDE);
        atoms.put(Element.H, 2 * water);
        atoms.put(Element.O, 2 * air * (DryAir.OXYGEN + DryAir.CARBON_DIOXIDE) + water + nitrous);
        atoms.put(Element.N, 2 * air * DryAir.NITROGEN + 2 * nitrous);
        atoms.put(Element.AR, air * DryAir.ARGON);
        addAtoms(atoms, mix.mainFuel(), mix.mainFlow());
        addAtoms(atoms, mix.nitrousFuel(), mix.nitrousFuelFlow());
        return atoms;
    }

    private static void addAtoms(Map<Element, Double> atoms, Fuel fuel, double mass) {
        atoms.merge(Element.C, mass * fuel.elements().carbonMoles(), Double::sum);
        atoms.merge(Element.H, mass * fuel.elements().hydrogenMoles(), Double::sum);
        atoms.merge(Element.O, mass * fuel.elements().oxygenMoles(), Double::sum);
        atoms.merge(Element.N, mass * fuel.elements().nitrogenMoles(), Double::sum);
    }

    /** Adds the gases of the fresh charge. */
    static GasPolynomial.Builder add(GasPolynomial.Builder builder, Mixture mix) {
        double air = mix.dryAir() / DryAir.MOLAR_MASS;
        builder.add(Gases.N2, air * DryAir.NITROGEN)
                .add(Gases.O2, air * DryAir.OXYGEN)
                .add(Gases.AR, air * DryAir.ARGON)
                .add(Gases.CO2, air * DryAir.CARBON_DIOXIDE)
                .add(Gases.H2O, mix.waterVapour() / Oxidisers.WATER_MOLAR_MASS)
                .add(Gases.N2O, mix.nitrous() / Oxidisers.NITROUS_OXIDE_MOLAR_MASS);
        addFuel(builder, mix.mainFuel(), mix.mainFlow());
        addFuel(builder, mix.nitrousFuel(), mix.nitrousFuelFlow());
        return builder;
    }

    /** Adds gases of known amount. */
    static GasPolynomial.Builder add(GasPolynomial.Builder builder, GasMixture mixture, double share) {
        for (Gas gas : mixture.gases()) {
            builder.add(gas, share * mixture.moles(gas));
        }
        return builder;
    }

    /**
     * Fuel vapour: the curve of iso-octane, ethanol or methanol, or between two of them by the fuel's oxygen, at the height of
     * the fuel's own heat capacity, which is stated near 330 K.
     */
    private static void addFuel(GasPolynomial.Builder builder, Fuel fuel, double mass) {
        if (mass == 0) {
            return;
        }
        double oxygen = fuel.elements().oxygen();
        double methanol = Math.min(1, Math.max(0, (oxygen - ETHANOL_OXYGEN) / (METHANOL_OXYGEN - ETHANOL_OXYGEN)));
        double ethanol = methanol > 0 ? 1 - methanol : oxygen / ETHANOL_OXYGEN;
        double moles = mass / fuel.molarMass();
        double own = fuel.vapourHeatCapacity() * fuel.molarMass();
        double paraffin = Math.max(0, 1 - ethanol - methanol);
        addShape(builder, PARAFFIN, moles * paraffin, mass * paraffin, own);
        addShape(builder, ETHANOL, moles * ethanol, mass * ethanol, own);
        addShape(builder, METHANOL, moles * methanol, mass * methanol, own);
    }

    private static void addShape(GasPolynomial.Builder builder, Gas shape, double moles, double mass, double own) {
        builder.add(shape, moles, mass, own / shape.heatCapacity(Fuel.VAPOUR_HEAT_CAPACITY_TEMPERATURE));
    }

    /** Internal energy of the gaseous charge at 25 C, counted from the elements, J for each unit of the flows. */
    static double formation(Mixture mix) {
        double air = mix.dryAir() / DryAir.MOLAR_MASS;
        double water = mix.waterVapour() / Oxidisers.WATER_MOLAR_MASS;
        double nitrous = mix.nitrous() / Oxidisers.NITROUS_OXIDE_MOLAR_MASS;
        double rt = Gas.MOLAR_CONSTANT * ZERO;
        return air * (DryAir.enthalpy(ZERO) - rt)
                + water * (Gases.H2O.enthalpy(ZERO) - rt)
                + nitrous * (Gases.N2O.enthalpy(ZERO) - rt)
                + mix.mainFlow() * formation(mix.mainFuel())
                + mix.nitrousFuelFlow() * formation(mix.nitrousFuel());
    }

    /** From the heating value, which counts from the liquid to gaseous products at 25 C. */
    private static double formation(Fuel fuel) {
        return fuel.lowerHeatingValue()
                + fuel.elements().carbonMoles() * Gases.CO2.enthalpy(ZERO)
                + fuel.elements().hydrogenMoles() / 2 * Gases.H2O.enthalpy(ZERO)
                + fuel.vaporisationHeat(ZERO)
                - Gas.MOLAR_CONSTANT * ZERO / fuel.molarMass();
    }
}
