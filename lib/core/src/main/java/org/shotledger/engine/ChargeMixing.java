package org.shotledger.engine;

import org.shotledger.engine.Intake.FuelSupplied;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.gas.DryAir;
import org.shotledger.gas.Gas;
import org.shotledger.gas.Gases;
import org.shotledger.units.Require;

/**
 * Steady energy and species balance of the plenum and runners, without heat from the walls:
 * {@code sum m h(T_in) = sum m h(T)} with the gases ideal at the plenum, the nitrous oxide entering with its real-fluid
 * enthalpy, fuel evaporated in part, and the total of gas {@code n = p V / (R T)} set by what the engine breathes.
 */
public final class ChargeMixing {
    private static final double COLDEST = 185;
    private static final double HOTTEST = 650;
    private static final double JOINT_TEMPERATURE = 300;
    /** Pressure at which nitrous oxide is ideal to 1e-5 in enthalpy, where both enthalpy scales are joined. */
    private static final double JOINT_PRESSURE = 100;
    /** What to add to the real-fluid enthalpy so that it counts from the elements, J/kg. */
    private static final double NITROUS_SHIFT = Gases.N2O.enthalpy(JOINT_TEMPERATURE) / Gases.N2O.molarMass()
            - NitrousOxide.atTemperaturePressure(JOINT_TEMPERATURE, JOINT_PRESSURE)
                    .enthalpy();

    private ChargeMixing() {}

    /**
     * Mixes and breathes.
     *
     * @param intake what meets
     * @param breathedVolume charge volume at plenum conditions, m3/s, above zero; see {@link Engine#breathedVolume}
     * @return the charge
     * @throws IllegalArgumentException when the nitrous oxide and its fuel leave no room for air, or would cool the charge
     *     below 185 K
     */
    public static Charge mix(Intake intake, double breathedVolume) {
        Require.positive("breathed volume", breathedVolume, "m3/s");
        Intake dry = intake.withoutNitrous();
        double plainTemperature = temperature(dry, breathedVolume);
        double plainAir = dryAir(dry, breathedVolume, plainTemperature);
        if (intake.nitrousFlow() == 0 && intake.nitrousFuelFlow() == 0) {
            return charge(intake, breathedVolume, plainTemperature, plainAir, 0);
        }
        double displaced = dryAir(intake, breathedVolume, plainTemperature);
        double temperature = temperature(intake, breathedVolume);
        return charge(intake, breathedVolume, temperature, plainAir, displaced / plainAir - 1);
    }

    /**
     * Enthalpy of nitrous oxide on the scale of the elements.
     *
     * @param fluidEnthalpy enthalpy as {@code NitrousOxide} counts it, J/kg
     * @return J/kg, with the heat of formation
     */
    public static double nitrousEnthalpy(double fluidEnthalpy) {
        return fluidEnthalpy + NITROUS_SHIFT;
    }

    private static Charge charge(Intake in, double volume, double temperature, double plainAir, double displacement) {
        double air = dryAir(in, volume, temperature);
        double cooling = air / plainAir / (1 + displacement) - 1;
        Mixture mixture = new Mixture(
                air,
                air * in.humidityRatio(),
                in.nitrousFlow(),
                in.main().fuel(),
                air * fuelPerAir(in),
                in.nitrousFuel().fuel(),
                in.nitrousFuelFlow());
        double gas = in.pressure() * volume / (Gas.MOLAR_CONSTANT * temperature);
        return new Charge(mixture, in.pressure(), temperature, gas, plainAir, displacement, cooling);
    }

    private static double fuelPerAir(Intake in) {
        return Oxidisers.OXYGEN_IN_DRY_AIR / (in.mainLambda() * in.main().fuel().oxygenDemand());
    }

    /** Dry air that fits beside the nitrous oxide and the fuel vapour, kg/s. */
    private static double dryAir(Intake in, double volume, double temperature) {
        FuelSupplied extra = in.nitrousFuel();
        double room = in.pressure() * volume / (Gas.MOLAR_CONSTANT * temperature);
        double taken = in.nitrousFlow() / Oxidisers.NITROUS_OXIDE_MOLAR_MASS
                + in.nitrousFuelFlow()
                        * extra.evaporatedFraction()
                        / extra.fuel().molarMass();
        double perAir = 1 / Oxidisers.DRY_AIR_MOLAR_MASS
                + in.humidityRatio() / Oxidisers.WATER_MOLAR_MASS
                + fuelPerAir(in)
                        * in.main().evaporatedFraction()
                        / in.main().fuel().molarMass();
        return Math.max(0, (room - taken) / perAir);
    }

    private static double temperature(Intake in, double volume) {
        double low = COLDEST;
        double high = HOTTEST;
        double atLow = surplus(in, volume, low);
        double atHigh = surplus(in, volume, high);
        if (!(atLow > 0 && atHigh < 0)) {
            throw new IllegalArgumentException("The charge has no balance between " + COLDEST + " K and " + HOTTEST
                    + " K with " + in.nitrousFlow() + " kg/s of nitrous oxide into " + volume
                    + " m3/s at " + in.pressure() + " Pa; use less nitrous oxide or more speed or pressure.");
        }
        double t = in.airTemperature();
        for (int i = 0; i < 60; i++) {
            double f = surplus(in, volume, t);
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
            double slope = (surplus(in, volume, t + 1e-3) - f) / 1e-3;
            double newton = t - f / slope;
            t = newton > low && newton < high ? newton : next;
        }
        return t;
    }

    /** Enthalpy brought in less enthalpy at the mixture's temperature, W; falls with temperature. */
    private static double surplus(Intake in, double volume, double t) {
        double air = dryAir(in, volume, t);
        double perAir = (DryAir.enthalpy(in.airTemperature()) - DryAir.enthalpy(t)) / DryAir.MOLAR_MASS
                + in.humidityRatio()
                        * (Gases.H2O.enthalpy(in.airTemperature()) - Gases.H2O.enthalpy(t))
                        / Gases.H2O.molarMass()
                + fuelPerAir(in) * released(in.main(), t);
        double nitrous = nitrousEnthalpy(in.nitrousEnthalpy()) - Gases.N2O.enthalpy(t) / Gases.N2O.molarMass();
        return air * perAir + in.nitrousFlow() * nitrous + in.nitrousFuelFlow() * released(in.nitrousFuel(), t);
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
