package org.shotledger.engine;

import org.shotledger.engine.Intake.FuelSupplied;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.gas.DryAir;
import org.shotledger.gas.Gas;
import org.shotledger.gas.Gases;

/** Energy and species balance of one intake, with what does not depend on the mixture's temperature worked out once. */
final class ChargeEnergyBalance {
    private static final double COLDEST = 185;
    private static final double HOTTEST = 650;

    private final Intake in;
    private final double volume;
    private final double plainTemperature;
    private final double fuelPerAir;
    /** Amount of gas that nitrous oxide and its fuel take, mol/s. */
    private final double taken;
    /** Amount of gas that a kilogram of dry air brings with it, mol/kg. */
    private final double perAir;

    private final double airEnthalpy;
    private final double steamEnthalpy;
    private final double nitrousEnthalpy;
    private final double nitrousVapour;
    /** Enthalpy flow that nitrous oxide still liquid keeps, W. */
    private final double nitrousLiquid;

    /**
     * The books.
     *
     * @param plainTemperature of the same charge without nitrous, from which walls work, K
     */
    ChargeEnergyBalance(Intake in, double volume, double plainTemperature) {
        this.in = in;
        this.volume = volume;
        this.plainTemperature = plainTemperature;
        FuelSupplied main = in.main();
        FuelSupplied extra = in.nitrousFuel();
        fuelPerAir =
                Oxidisers.OXYGEN_IN_DRY_AIR / (in.mainLambda() * main.fuel().oxygenDemand());
        nitrousVapour = in.nitrousFlow() * in.warming().nitrousEvaporated();
        taken = nitrousVapour / Oxidisers.NITROUS_OXIDE_MOLAR_MASS
                + in.nitrousFuelFlow()
                        * extra.evaporatedFraction()
                        / extra.fuel().molarMass();
        perAir = 1 / Oxidisers.DRY_AIR_MOLAR_MASS
                + in.humidityRatio() / Oxidisers.WATER_MOLAR_MASS
                + fuelPerAir * main.evaporatedFraction() / main.fuel().molarMass();
        airEnthalpy = DryAir.enthalpy(in.airTemperature());
        steamEnthalpy = Gases.H2O.enthalpy(in.airTemperature());
        nitrousEnthalpy = ChargeMixing.nitrousEnthalpy(in.nitrousEnthalpy());
        double liquid = in.nitrousFlow() - nitrousVapour;
        nitrousLiquid = liquid > 0 ? liquid * ChargeMixing.liquidNitrousEnthalpy(in.pressure()) : 0;
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
        double air = dryAir(t);
        double sum = air * ofAir + wallHeat(air, t);
        if (in.nitrousFlow() > 0) {
            sum += in.nitrousFlow() * nitrousEnthalpy
                    - nitrousVapour * Gases.N2O.enthalpy(t) / Gases.N2O.molarMass()
                    - nitrousLiquid;
        }
        return in.nitrousFuelFlow() > 0 ? sum + in.nitrousFuelFlow() * released(in.nitrousFuel(), t) : sum;
    }

    /** What the walls make good of the drop that the nitrous circuit causes, W. */
    private double wallHeat(double air, double t) {
        double share = in.warming().wallShare();
        if (share == 0) {
            return 0;
        }
        double gas = air * DryAir.specificHeat(t) + nitrousVapour * Gases.N2O.heatCapacity(t) / Gases.N2O.molarMass();
        return share * gas * (plainTemperature - t);
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
