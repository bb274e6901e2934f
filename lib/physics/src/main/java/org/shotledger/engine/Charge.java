package org.shotledger.engine;

import java.util.function.DoubleUnaryOperator;
import org.shotledger.fuel.FuelVapour;
import org.shotledger.fuel.Mixture;

/**
 * The charge that the engine breathes.
 *
 * @param mixture flows of air, nitrous oxide and fuels
 * @param pressure plenum pressure, Pa absolute
 * @param temperature of the mixture, K
 * @param plainTemperature of the same charge with the nitrous circuit closed, K
 * @param gasFlow flow of everything gaseous, mol/s
 * @param airWithoutNitrous dry air the engine would breathe with the nitrous circuit closed, kg/s
 * @param displacement relative change of air flow by the room the nitrous oxide and its fuel vapour take, at unchanged
 *     temperature; negative
 * @param cooling relative change of air flow by the lower temperature; positive
 * @param mainEvaporated share of the main fuel that is vapour at the valves, 0 to 1: that stated or what its vapour pressure allows
 * @param nitrousEvaporated the same of the nitrous fuel
 */
public record Charge(
        Mixture mixture,
        double pressure,
        double temperature,
        double plainTemperature,
        double gasFlow,
        double airWithoutNitrous,
        double displacement,
        double cooling,
        double mainEvaporated,
        double nitrousEvaporated) {
    /** Ends of the range in which a heat of vaporisation is stated, K. */
    private static final double COLDEST_LIQUID = 230;

    private static final double HOTTEST_LIQUID = 420;

    /**
     * Heat that the fuel still liquid at the valves takes to evaporate.
     *
     * @return W, at the charge's temperature
     */
    public double liquidHeat() {
        return heat(1 - mainEvaporated, 1 - nitrousEvaporated);
    }

    /**
     * Heat that evaporation in the cylinder takes from the gas at the charge's pressure, as far as the gas can hold the vapour.
     *
     * @param share most of the liquid that evaporates, 0 to 1
     * @return W over the temperature of the gas in the cylinder, K, 180 or more
     */
    DoubleUnaryOperator evaporationHeat(double share) {
        FuelVapour fuels = FuelVapour.of(mixture.mainFuel(), mixture.nitrousFuel());
        return temperature -> {
            FuelVapour.Shares vapour =
                    fuels.possible(mixture.mainFlow(), mixture.nitrousFuelFlow(), gasFlow, temperature, pressure);
            return heat(
                    Math.max(0, Math.min(share * (1 - mainEvaporated), vapour.main() - mainEvaporated)),
                    Math.max(0, Math.min(share * (1 - nitrousEvaporated), vapour.extra() - nitrousEvaporated)));
        };
    }

    private double heat(double main, double nitrous) {
        double t = Math.min(HOTTEST_LIQUID, Math.max(COLDEST_LIQUID, temperature));
        return mixture.mainFlow() * main * mixture.mainFuel().vaporisationHeat(t)
                + mixture.nitrousFuelFlow() * nitrous * mixture.nitrousFuel().vaporisationHeat(t);
    }

    /**
     * Both effects together, {@code (1 + displacement)(1 + cooling) - 1}.
     *
     * @return relative change of air flow when the nitrous circuit opens
     */
    public double netAirChange() {
        return mixture.dryAir() / airWithoutNitrous - 1;
    }
}
