package org.shotledger.bottle;

/**
 * One row of an emptying history.
 *
 * @param time time from the start, s
 * @param temperature temperature of the liquid (of the vapour once no liquid is left), K
 * @param pressure absolute pressure in the bottle, Pa
 * @param liquidMass liquid in the bottle, kg
 * @param vapourMass vapour in the bottle, kg
 * @param massFlow flow out, kg/s
 * @param wallTemperature temperature of the shell, K
 */
public record Sample(
        double time,
        double temperature,
        double pressure,
        double liquidMass,
        double vapourMass,
        double massFlow,
        double wallTemperature) {
    /**
     * Nitrous oxide in the bottle.
     *
     * @return mass, kg
     */
    public double mass() {
        return liquidMass + vapourMass;
    }
}
