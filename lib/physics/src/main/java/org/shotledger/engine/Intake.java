package org.shotledger.engine;

import org.shotledger.fuel.Fuel;
import org.shotledger.units.Require;

/**
 * The flows that mix in plenum and runners.
 *
 * @param pressure plenum pressure, Pa absolute, 5 kPa to 1 MPa
 * @param airTemperature air after the charge cooler, K, 220 to 520
 * @param humidityRatio kg of water per kg of dry air, 0 to 0.1
 * @param nitrousFlow kg/s, 0 or more
 * @param nitrousEnthalpy stagnation enthalpy of the nitrous oxide as {@code NitrousOxide} counts it, J/kg
 * @param main main fuel and its state
 * @param mainLambda lambda of air and main fuel, 0.4 to 3; infinite for no main fuel
 * @param nitrousFuel fuel of the nitrous circuit and its state
 * @param nitrousFuelFlow kg/s, 0 or more
 * @param warming how much of the nitrous oxide evaporates before the valves, and what the walls give
 */
public record Intake(
        double pressure,
        double airTemperature,
        double humidityRatio,
        double nitrousFlow,
        double nitrousEnthalpy,
        FuelSupplied main,
        double mainLambda,
        FuelSupplied nitrousFuel,
        double nitrousFuelFlow,
        Warming warming) {
    /**
     * What keeps a charge from becoming as cold as complete evaporation without walls would make it.
     *
     * <p>Measured behind the carburettor of a research engine: 60 to 70 % of the drop by complete evaporation (Kolodziej and
     * Wallner, Combustion Engines 171 (2017) 164). For nitrous oxide nothing was found: it boils 100 K below the charge, so
     * most of its drops are gone in centimetres; the shares are our choice and to be calibrated on a charge temperature or
     * a pull with nitrous.
     *
     * @param nitrousEvaporated share of the nitrous oxide that is gas at the valves, 0.5 to 1; the rest arrives as cold liquid
     * @param wallShare share of the drop against the charge without nitrous that warm walls make good, 0 to 0.6; what they
     *     give without nitrous is in the volumetric efficiency
     */
    public record Warming(double nitrousEvaporated, double wallShare) {
        /** Everything evaporates and no wall gives heat: the coldest a charge can be. */
        public static final Warming NONE = new Warming(1, 0);
        /** Best estimate: 90 % evaporated, a tenth of the drop made good. */
        public static final Warming USUAL = new Warming(0.9, 0.10);
        /** Warm end of the band: 75 % evaporated, a quarter of the drop made good. */
        public static final Warming WARM = new Warming(0.75, 0.25);

        public Warming {
            Require.within("evaporated share of the nitrous oxide", nitrousEvaporated, 0.5, 1, "");
            Require.within("share of the drop that walls make good", wallShare, 0, 0.6, "");
        }
    }

    /**
     * A fuel as it enters the intake.
     *
     * @param fuel which one
     * @param temperature of the liquid, K, 230 to 360
     * @param evaporatedFraction share evaporated from the heat of the charge before the intake valve closes, 0 to 1; the
     *     rest evaporates on walls or in the cylinder
     */
    public record FuelSupplied(Fuel fuel, double temperature, double evaporatedFraction) {
        public FuelSupplied {
            Require.given("fuel", fuel);
            Require.within("temperature", fuel.name(), temperature, 230, 360, "K");
            Require.within("evaporated fraction", fuel.name(), evaporatedFraction, 0, 1, "");
        }
    }

    public Intake {
        Require.within("plenum pressure", pressure, 5e3, 1e6, "Pa");
        Require.within("air temperature after the charge cooler", airTemperature, 220, 520, "K");
        Require.within("humidity ratio", humidityRatio, 0, 0.1, "");
        Require.notNegative("nitrous oxide flow", nitrousFlow, "kg/s");
        Require.within("enthalpy of the nitrous oxide", nitrousEnthalpy, -1e6, 1e6, "J/kg");
        Require.given("main fuel", main);
        if (mainLambda != Double.POSITIVE_INFINITY) {
            Require.within("lambda of the main fuel", mainLambda, 0.4, 3, "");
        }
        Require.given("nitrous fuel", nitrousFuel);
        Require.notNegative("nitrous fuel flow", nitrousFuelFlow, "kg/s");
        Require.given("warming of the charge", warming);
    }

    /**
     * An intake in which all nitrous oxide evaporates and no wall gives heat.
     *
     * @param pressure plenum pressure, Pa absolute
     * @param airTemperature air after the charge cooler, K
     * @param humidityRatio kg of water per kg of dry air
     * @param nitrousFlow kg/s
     * @param nitrousEnthalpy J/kg
     * @param main main fuel and its state
     * @param mainLambda lambda of air and main fuel
     * @param nitrousFuel fuel of the nitrous circuit and its state
     * @param nitrousFuelFlow kg/s
     */
    public Intake(
            double pressure,
            double airTemperature,
            double humidityRatio,
            double nitrousFlow,
            double nitrousEnthalpy,
            FuelSupplied main,
            double mainLambda,
            FuelSupplied nitrousFuel,
            double nitrousFuelFlow) {
        this(
                pressure,
                airTemperature,
                humidityRatio,
                nitrousFlow,
                nitrousEnthalpy,
                main,
                mainLambda,
                nitrousFuel,
                nitrousFuelFlow,
                Warming.NONE);
    }

    /**
     * The same intake with another warming.
     *
     * @param newWarming evaporated share and wall heat
     * @return the changed intake
     */
    public Intake withWarming(Warming newWarming) {
        return new Intake(
                pressure,
                airTemperature,
                humidityRatio,
                nitrousFlow,
                nitrousEnthalpy,
                main,
                mainLambda,
                nitrousFuel,
                nitrousFuelFlow,
                newWarming);
    }

    /**
     * The same intake with the nitrous circuit closed.
     *
     * @return without nitrous oxide and without its fuel
     */
    public Intake withoutNitrous() {
        return new Intake(
                pressure, airTemperature, humidityRatio, 0, nitrousEnthalpy, main, mainLambda, nitrousFuel, 0, warming);
    }
}
