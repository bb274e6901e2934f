package org.shotledger.engine;

import org.shotledger.fuel.Fuel;
import org.shotledger.units.Require;

/**
 * What meets in the plenum and runners.
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
        double nitrousFuelFlow) {
    /**
     * A fuel as it enters the intake.
     *
     * @param fuel which one
     * @param temperature of the liquid, K, 230 to 360
     * @param evaporatedFraction share evaporated from the heat of the charge before the intake valve closes, 0 to 1; the
     *     rest evaporates on walls or in the cylinder
     */
    public record FuelSupplied(Fuel fuel, double temperature, double evaporatedFraction) {
        /** Checks the ranges. */
        public FuelSupplied {
            Require.given("fuel", fuel);
            Require.within("temperature", fuel.name(), temperature, 230, 360, "K");
            Require.within("evaporated fraction", fuel.name(), evaporatedFraction, 0, 1, "");
        }
    }

    /** Checks the ranges. */
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
    }

    /**
     * The same intake with the nitrous circuit closed.
     *
     * @return without nitrous oxide and without its fuel
     */
    public Intake withoutNitrous() {
        return new Intake(
                pressure, airTemperature, humidityRatio, 0, nitrousEnthalpy, main, mainLambda, nitrousFuel, 0);
    }
}
