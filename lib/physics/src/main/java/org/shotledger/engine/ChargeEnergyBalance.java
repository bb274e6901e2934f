package org.shotledger.engine;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.shotledger.engine.Intake.FuelSupplied;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.FuelVapour;
import org.shotledger.fuel.FuelVapour.Room;
import org.shotledger.fuel.FuelVapour.Shares;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.gas.DryAir;
import org.shotledger.gas.Gas;
import org.shotledger.gas.Gases;

/** Energy and species balance of one intake, with what does not depend on the mixture's temperature worked out once. */
final class ChargeEnergyBalance {
    /** Bounds of a charge's temperature, K: nitrous oxide near its triple point, and hotter than any compressor leaves the air. */
    private static final double COLDEST = 185;

    private static final double HOTTEST = 650;

    /** A last step of this share of the temperature leaves a far smaller miss, since the secant method converges faster than in proportion. */
    private static final double SETTLED = 1e-6;

    private static final int MOST_STEPS = 60;
    /** Where the search begins for a charge that would be colder with all the fuel stated as vapour, K. */
    private static final double START = 260;
    /** Of a mole of gas like air, for the first step, J/(mol K). */
    private static final double HEAT_CAPACITY = 3.5 * Gas.MOLAR_CONSTANT;

    private final Intake in;
    private final double volume;
    private final double plainTemperature;
    private final double fuelPerAir;
    private final FuelVapour vapour;
    private final Shares stated;

    private final double airEnthalpy;
    private final double steamEnthalpy;
    private final double nitrousEnthalpy;
    private final double nitrousVapour;
    /** Enthalpy flow that nitrous oxide still liquid keeps, W. */
    private final double nitrousLiquid;

    /**
     * Works out what does not depend on the temperature.
     *
     * @param plainTemperature of the same charge without nitrous, from which walls work, K
     */
    ChargeEnergyBalance(Intake in, FuelVapour vapour, double volume, double plainTemperature) {
        this.in = in;
        this.vapour = vapour;
        this.volume = volume;
        this.plainTemperature = plainTemperature;
        fuelPerAir = Oxidisers.OXYGEN_IN_DRY_AIR
                / (in.mainLambda() * in.main().fuel().oxygenDemand());
        nitrousVapour = in.nitrousFlow() * in.warming().nitrousEvaporated();
        stated = new Shares(in.main().evaporatedFraction(), in.nitrousFuel().evaporatedFraction());
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

    /** Shares of both fuels that are vapour at a temperature: those stated, as far as the gas can hold them. */
    Shares evaporated(double temperature) {
        if (stated.main() == 0 && stated.extra() == 0) {
            return stated;
        }
        Room room = vapour.room(gas(temperature), temperature, in.pressure());
        Shares once = within(room, stated, temperature);
        // the space that vapour takes decides how much main fuel comes with the air; once more with what is vapour is
        // enough
        return once.equals(stated) ? stated : within(room, once, temperature);
    }

    private Shares within(Room room, Shares evaporated, double temperature) {
        double main = dryAir(temperature, evaporated) * fuelPerAir;
        Shares possible = room.possible(main, in.nitrousFuelFlow());
        boolean all =
                possible.main() >= stated.main() && (possible.extra() >= stated.extra() || in.nitrousFuelFlow() == 0);
        return all
                ? stated
                : new Shares(Math.min(possible.main(), stated.main()), Math.min(possible.extra(), stated.extra()));
    }

    /** Dry air that fits beside the nitrous oxide and the fuel vapour, kg/s. */
    double dryAir(double temperature, Shares evaporated) {
        double taken = nitrousVapour / Oxidisers.NITROUS_OXIDE_MOLAR_MASS
                + in.nitrousFuelFlow()
                        * evaporated.extra()
                        / in.nitrousFuel().fuel().molarMass();
        double perAir = 1 / Oxidisers.DRY_AIR_MOLAR_MASS
                + in.humidityRatio() / Oxidisers.WATER_MOLAR_MASS
                + fuelPerAir * evaporated.main() / in.main().fuel().molarMass();
        return Math.max(0, (gas(temperature) - taken) / perAir);
    }

    /** The temperature at which the enthalpies balance: with the stated shares where the gas can hold them there, else with fewer. */
    double temperature() {
        double coldest = surplus(COLDEST, stated) > 0 ? balance(in.airTemperature(), t -> surplus(t, stated)) : COLDEST;
        return coldest > COLDEST && evaporated(coldest).equals(stated)
                ? coldest
                : temperature(Math.max(START, coldest));
    }

    /** The same, searched from a temperature near it. */
    double temperature(double near) {
        return balance(near, t -> surplus(t, evaporated(t)));
    }

    /** Root of a falling function by the secant method inside a bracket: from a near start, a third faster for a whole point than {@code Bracket}. */
    private double balance(double start, DoubleUnaryOperator surplus) {
        double low = COLDEST;
        double high = HOTTEST;
        double t = start;
        double f = surplus.applyAsDouble(t);
        double slope = -gas(t) * HEAT_CAPACITY;
        for (int i = 0; i < MOST_STEPS; i++) {
            if (f > 0) {
                low = t;
            } else {
                high = t;
            }
            double next = t - f / slope;
            // the first step is not one of a secant yet
            if (i > 0 && Math.abs(next - t) < SETTLED * t) {
                return next;
            }
            next = next > low && next < high ? next : (low + high) / 2;
            double g = surplus.applyAsDouble(next);
            slope = g == f ? slope : (g - f) / (next - t);
            t = next;
            f = g;
        }
        throw new IllegalArgumentException(String.format(
                Locale.ROOT,
                "The charge has no balance between %.0f K and %.0f K with %.4g kg/s of nitrous oxide into %.3g m3/s at %.0f"
                        + " kPa; use less nitrous oxide or more speed or pressure.",
                COLDEST,
                HOTTEST,
                in.nitrousFlow(),
                volume,
                in.pressure() / 1e3));
    }

    /** Enthalpy brought in less enthalpy at the mixture's temperature, W; falls with temperature. */
    private double surplus(double t, Shares evaporated) {
        double ofAir = (airEnthalpy - DryAir.enthalpy(t)) / DryAir.MOLAR_MASS
                + in.humidityRatio() * (steamEnthalpy - Gases.H2O.enthalpy(t)) / Gases.H2O.molarMass()
                + fuelPerAir * released(in.main(), evaporated.main(), t);
        double air = dryAir(t, evaporated);
        double sum = air * ofAir + wallHeat(air, t);
        if (in.nitrousFlow() > 0) {
            sum += in.nitrousFlow() * nitrousEnthalpy
                    - nitrousVapour * Gases.N2O.enthalpy(t) / Gases.N2O.molarMass()
                    - nitrousLiquid;
        }
        return in.nitrousFuelFlow() > 0
                ? sum + in.nitrousFuelFlow() * released(in.nitrousFuel(), evaporated.extra(), t)
                : sum;
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
    private static double released(FuelSupplied supplied, double vapour, double t) {
        Fuel fuel = supplied.fuel();
        return fuel.liquidEnthalpy(supplied.temperature())
                - vapour * fuel.vapourEnthalpy(t)
                - (1 - vapour) * fuel.liquidEnthalpy(t);
    }
}
