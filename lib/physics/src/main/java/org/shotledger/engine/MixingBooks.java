package org.shotledger.engine;

import org.shotledger.engine.Intake.FuelSupplied;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.gas.DryAir;
import org.shotledger.gas.Gas;
import org.shotledger.gas.Gases;

/** The books of one intake, with what does not depend on the mixture's temperature worked out once. */
final class MixingBooks {
    private static final double COLDEST = 185;
    private static final double HOTTEST = 650;

    private final Intake in;
    private final double volume;
    private final double fuelPerAir;
    /** Amount of gas that nitrous oxide and its fuel take, mol/s. */
    private final double taken;
    /** Amount of gas that a kilogram of dry air brings with it, mol/kg. */
    private final double perAir;

    private final double airEnthalpy;
    private final double steamEnthalpy;
    private final double nitrousEnthalpy;

    MixingBooks(Intake in, double volume) {
        this.in = in;
        this.volume = volume;
        FuelSupplied main = in.main();
        FuelSupplied extra = in.nitrousFuel();
        fuelPerAir =
                Oxidisers.OXYGEN_IN_DRY_AIR / (in.mainLambda() * main.fuel().oxygenDemand());
        taken = in.nitrousFlow() / Oxidisers.NITROUS_OXIDE_MOLAR_MASS
                + in.nitrousFuelFlow()
                        * extra.evaporatedFraction()
                        / extra.fuel().molarMass();
        perAir = 1 / Oxidisers.DRY_AIR_MOLAR_MASS
                + in.humidityRatio() / Oxidisers.WATER_MOLAR_MASS
                + fuelPerAir * main.evaporatedFraction() / main.fuel().molarMass();
        airEnthalpy = DryAir.enthalpy(in.airTemperature());
        steamEnthalpy = Gases.H2O.enthalpy(in.airTemperature());
        nitrousEnthalpy = ChargeMixing.nitrousEnthalpy(in.nitrousEnthalpy());
    }

    /** Main fuel for each kilogram of dry air, kg/kg. */
    double fuelPerAir() {
        return fuelPerAir;
    }

    /** All gas that is breathed at a temperature, mol/s. */
    double gas(double temperature) {
        return in.pressure() * volume / (Gas.MOLAR_CONSTANT * temperature);
    }

    /** Dry air that fits beside the nitrous oxide and the fuel vapour, kg/s. */
    double dryAir(double temperature) {
        return Math.max(0, (gas(temperature) - taken) / perAir);
    }

    /** The temperature at which the enthalpies balance, by Newton's method inside a bracket. */
    double temperature() {
        double low = COLDEST;
        double high = HOTTEST;
        double atLow = surplus(low);
        double atHigh = surplus(high);
        if (!(atLow > 0 && atHigh < 0)) {
            throw new IllegalArgumentException("The charge has no balance between " + COLDEST + " K and " + HOTTEST
                    + " K with " + in.nitrousFlow() + " kg/s of nitrous oxide into " + volume
                    + " m3/s at " + in.pressure() + " Pa; use less nitrous oxide or more speed or pressure.");
        }
        double t = in.airTemperature();
        for (int i = 0; i < 60; i++) {
            double f = surplus(t);
            if (f > 0) {
                low = t;
                atLow = f;
            } else {
                high = t;
                atHigh = f;
            }
            double next = low + (high - low) * atLow / (atLow - atHigh);
            if (Math.abs(next - t) < 1e-10 * t) {
                return next;
            }
            double slope = (surplus(t + 1e-3) - f) / 1e-3;
            double newton = t - f / slope;
            t = newton > low && newton < high ? newton : next;
        }
        return t;
    }

    /** Enthalpy brought in less enthalpy at the mixture's temperature, W; falls with temperature. */
    private double surplus(double t) {
        double ofAir = (airEnthalpy - DryAir.enthalpy(t)) / DryAir.MOLAR_MASS
                + in.humidityRatio() * (steamEnthalpy - Gases.H2O.enthalpy(t)) / Gases.H2O.molarMass()
                + fuelPerAir * released(in.main(), t);
        double sum = dryAir(t) * ofAir;
        if (in.nitrousFlow() > 0) {
            sum += in.nitrousFlow() * (nitrousEnthalpy - Gases.N2O.enthalpy(t) / Gases.N2O.molarMass());
        }
        return in.nitrousFuelFlow() > 0 ? sum + in.nitrousFuelFlow() * released(in.nitrousFuel(), t) : sum;
    }

    /** Heat a kilogram of fuel gives to the charge; its liquid rest keeps to the charge's temperature. */
    private static double released(FuelSupplied supplied, double t) {
        Fuel fuel = supplied.fuel();
        double vapour = supplied.evaporatedFraction();
        return fuel.liquidEnthalpy(supplied.temperature())
                - vapour * fuel.vapourEnthalpy(t)
                - (1 - vapour) * fuel.liquidEnthalpy(t);
    }
}
