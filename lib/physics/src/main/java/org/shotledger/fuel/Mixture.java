package org.shotledger.fuel;

import org.shotledger.units.Require;

/**
 * What goes into the engine in a second, and its oxygen balance. Main fuel and nitrous fuel may differ.
 *
 * @param dryAir flow of dry air, kg/s, 0 or more
 * @param waterVapour flow of water vapour with the air, kg/s, 0 or more
 * @param nitrous flow of nitrous oxide, kg/s, 0 or more
 * @param mainFuel the main fuel
 * @param mainFlow flow of main fuel, kg/s, 0 or more
 * @param nitrousFuel the fuel of the nitrous circuit
 * @param nitrousFuelFlow flow of that fuel, kg/s, 0 or more
 */
public record Mixture(
        double dryAir,
        double waterVapour,
        double nitrous,
        Fuel mainFuel,
        double mainFlow,
        Fuel nitrousFuel,
        double nitrousFuelFlow) {
    public Mixture {
        Require.notNegative("dry air flow", dryAir, "kg/s");
        Require.notNegative("water vapour flow", waterVapour, "kg/s");
        Require.notNegative("nitrous oxide flow", nitrous, "kg/s");
        Require.given("main fuel", mainFuel);
        Require.notNegative("main fuel flow", mainFlow, "kg/s");
        Require.given("nitrous fuel", nitrousFuel);
        Require.notNegative("nitrous fuel flow", nitrousFuelFlow, "kg/s");
    }

    /**
     * A mixture of air and main fuel alone.
     *
     * @param dryAir flow of dry air, kg/s
     * @param waterVapour flow of water vapour, kg/s
     * @param fuel the main fuel
     * @param fuelFlow its flow, kg/s
     * @return the mixture without nitrous oxide
     */
    public static Mixture ofAir(double dryAir, double waterVapour, Fuel fuel, double fuelFlow) {
        return new Mixture(dryAir, waterVapour, 0, fuel, fuelFlow, fuel, 0);
    }

    /**
     * Oxygen from air and nitrous oxide.
     *
     * @return kg O2 per second
     */
    public double oxygenSupplied() {
        return dryAir * Oxidisers.OXYGEN_IN_DRY_AIR + nitrous * Oxidisers.OXYGEN_IN_NITROUS_OXIDE;
    }

    /**
     * Oxygen that both fuels need.
     *
     * @return kg O2 per second
     */
    public double oxygenDemanded() {
        return mainFlow * mainFuel.oxygenDemand() + nitrousFuelFlow * nitrousFuel.oxygenDemand();
    }

    /**
     * Oxygen supplied over oxygen demanded by all fuel.
     *
     * @return total lambda; infinite without fuel
     */
    public double lambda() {
        return oxygenSupplied() / oxygenDemanded();
    }

    /**
     * Lambda of air and main fuel alone, what stays when the nitrous circuit closes on both sides.
     *
     * @return lambda without nitrous; infinite without main fuel
     */
    public double lambdaWithoutNitrous() {
        return dryAir * Oxidisers.OXYGEN_IN_DRY_AIR / (mainFlow * mainFuel.oxygenDemand());
    }

    /**
     * Lambda of the nitrous circuit alone.
     *
     * @return oxygen of the nitrous oxide over the demand of its fuel; infinite without fuel, not a number without either
     */
    public double nitrousLambda() {
        return nitrous * Oxidisers.OXYGEN_IN_NITROUS_OXIDE / (nitrousFuelFlow * nitrousFuel.oxygenDemand());
    }

    /**
     * Oxidiser to fuel mass ratio of the nitrous circuit alone.
     *
     * @return kg N2O per kg of nitrous fuel; infinite without fuel, not a number without either
     */
    public double nitrousOxidiserFuel() {
        return nitrous / nitrousFuelFlow;
    }

    /**
     * Heating value of all fuel.
     *
     * @return W
     */
    public double fuelPower() {
        return mainFlow * mainFuel.lowerHeatingValue() + nitrousFuelFlow * nitrousFuel.lowerHeatingValue();
    }

    /**
     * Everything that flows in.
     *
     * @return kg/s
     */
    public double totalFlow() {
        return dryAir + waterVapour + nitrous + mainFlow + nitrousFuelFlow;
    }
}
