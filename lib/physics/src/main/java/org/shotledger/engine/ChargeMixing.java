package org.shotledger.engine;

import java.util.Optional;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.FuelVapour;
import org.shotledger.fuel.FuelVapour.Shares;
import org.shotledger.fuel.Mixture;
import org.shotledger.gas.Gases;
import org.shotledger.units.Require;

/**
 * Steady energy and species balance of the plenum and runners:
 * {@code sum m h(T_in) + Q_wall = sum m h(T)} with the gases ideal at the plenum, the nitrous oxide entering with its real-fluid
 * enthalpy, nitrous oxide and fuels evaporated in part ({@link Intake.Warming}), no more of a fuel than the charge can hold as
 * vapour at its temperature ({@link FuelVapour}), and the total of gas {@code n = p V / (R T)} set by what the engine breathes.
 */
public final class ChargeMixing {
    /** Temperature at which both enthalpy scales are joined, K: our choice, inside both. */
    private static final double JOINT_TEMPERATURE = 300;
    /** Pressure at which nitrous oxide is ideal to 1e-5 in enthalpy, where both enthalpy scales are joined. */
    private static final double JOINT_PRESSURE = 100;
    /** What to add to the real-fluid enthalpy so that it counts from the elements, J/kg. */
    private static final double NITROUS_SHIFT = Gases.N2O.enthalpy(JOINT_TEMPERATURE) / Gases.N2O.molarMass()
            - NitrousOxide.atTemperaturePressure(JOINT_TEMPERATURE, JOINT_PRESSURE)
                    .enthalpy();

    /** Just above the triple point, Pa: colder the liquid would freeze. */
    private static final double LEAST_BOILING_PRESSURE = 9e4;

    private ChargeMixing() {}

    /**
     * Mixes and breathes.
     *
     * @param intake the flows that mix
     * @param breathedVolume charge volume at plenum conditions, m3/s, above zero; see {@link Engine#breathedVolume}
     * @return the charge
     * @throws IllegalArgumentException when the nitrous oxide and its fuel leave no room for air, or would cool the charge
     *     below 185 K
     */
    public static Charge mix(Intake intake, double breathedVolume) {
        return mix(intake, breathedVolume, Optional.empty());
    }

    /**
     * Mixes and breathes what hardly differs from another charge, in a third of the time: the temperatures are searched from its own.
     *
     * @param intake the flows that mix
     * @param breathedVolume charge volume at plenum conditions, m3/s, above zero
     * @param near the other charge
     * @return the charge, the same as without the other one to 1e-8
     * @throws IllegalArgumentException as without the other one
     */
    public static Charge mix(Intake intake, double breathedVolume, Charge near) {
        return mix(intake, breathedVolume, Optional.of(near));
    }

    private static Charge mix(Intake intake, double breathedVolume, Optional<Charge> near) {
        Require.positive("breathed volume", breathedVolume, "m3/s");
        FuelVapour vapour =
                FuelVapour.of(intake.main().fuel(), intake.nitrousFuel().fuel());
        Intake closed = intake.withoutNitrous().withWarming(Intake.Warming.NONE);
        ChargeEnergyBalance plain = new ChargeEnergyBalance(closed, vapour, breathedVolume, Double.NaN);
        double plainTemperature =
                near.map(n -> plain.temperature(n.plainTemperature())).orElseGet(plain::temperature);
        double plainAir = plain.dryAir(plainTemperature, plain.evaporated(plainTemperature));
        if (intake.nitrousFlow() == 0 && intake.nitrousFuelFlow() == 0) {
            return charge(intake, plain, plainTemperature, plainTemperature, plainAir, 0);
        }
        ChargeEnergyBalance balance = new ChargeEnergyBalance(intake, vapour, breathedVolume, plainTemperature);
        double displaced = balance.dryAir(plainTemperature, balance.evaporated(plainTemperature));
        double temperature = near.map(n -> balance.temperature(n.temperature())).orElseGet(balance::temperature);
        return charge(intake, balance, temperature, plainTemperature, plainAir, displaced / plainAir - 1);
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

    /** Enthalpy of liquid nitrous oxide boiling at a pressure, on the scale of the elements, J/kg. */
    static double liquidNitrousEnthalpy(double pressure) {
        double boiling = NitrousOxide.saturationTemperature(Math.max(pressure, LEAST_BOILING_PRESSURE));
        return nitrousEnthalpy(NitrousOxide.saturatedLiquid(boiling).enthalpy());
    }

    private static Charge charge(
            Intake in,
            ChargeEnergyBalance balance,
            double temperature,
            double plainTemperature,
            double plainAir,
            double displacement) {
        Shares evaporated = balance.evaporated(temperature);
        double air = balance.dryAir(temperature, evaporated);
        double cooling = air / plainAir / (1 + displacement) - 1;
        Mixture mixture = new Mixture(
                air,
                air * in.humidityRatio(),
                in.nitrousFlow(),
                in.main().fuel(),
                air * balance.fuelPerAir(),
                in.nitrousFuel().fuel(),
                in.nitrousFuelFlow());
        return new Charge(
                mixture,
                in.pressure(),
                temperature,
                plainTemperature,
                balance.gas(temperature),
                plainAir,
                displacement,
                cooling,
                evaporated.main(),
                evaporated.extra());
    }
}
