package org.shotledger.engine;

import org.shotledger.fuel.Mixture;

/**
 * The charge that the engine breathes.
 *
 * @param mixture flows of air, nitrous oxide and fuels
 * @param pressure plenum pressure, Pa absolute
 * @param temperature of the mixture, K
 * @param gasFlow flow of everything gaseous, mol/s
 * @param airWithoutNitrous dry air the engine would breathe with the nitrous circuit closed, kg/s
 * @param displacement relative change of air flow by the room the nitrous oxide and its fuel vapour take, at unchanged
 *     temperature; negative
 * @param cooling relative change of air flow by the lower temperature; positive
 */
public record Charge(
        Mixture mixture,
        double pressure,
        double temperature,
        double gasFlow,
        double airWithoutNitrous,
        double displacement,
        double cooling) {
    /**
     * Both effects together, {@code (1 + displacement)(1 + cooling) - 1}.
     *
     * @return relative change of air flow when the nitrous circuit opens
     */
    public double netAirChange() {
        return mixture.dryAir() / airWithoutNitrous - 1;
    }
}
