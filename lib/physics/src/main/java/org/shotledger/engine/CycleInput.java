package org.shotledger.engine;

import org.shotledger.gas.GasPolynomial;
import org.shotledger.units.Require;

/**
 * What one cylinder holds and does in one cycle.
 *
 * @param rpm crankshaft speed, 300 to 20000
 * @param mass trapped in the cylinder, fresh charge and residual gas, kg
 * @param temperature at inlet valve closing, K, 180 to 700
 * @param unburned properties of the charge before burning
 * @param burned properties of the products
 * @param heat released in the cycle by fuel and nitrous oxide, J
 * @param burning mass fraction burned over crank angle
 * @param wallTemperature K, 350 to 700
 * @param exhaustPressure before the turbine, Pa
 * @param octane octane number for the knock index, 60 to 130
 */
public record CycleInput(
        double rpm,
        double mass,
        double temperature,
        GasPolynomial unburned,
        GasPolynomial burned,
        double heat,
        Wiebe burning,
        double wallTemperature,
        double exhaustPressure,
        double octane) {
    public CycleInput {
        Require.within("crankshaft speed", rpm, 300, 20000, "rpm");
        Require.within("mass in a cylinder", mass, 1e-6, 0.1, "kg");
        Require.within("temperature at inlet valve closing", temperature, 180, 700, "K");
        Require.given("properties of the charge", unburned);
        Require.given("properties of the products", burned);
        Require.notNegative("heat of a cycle", heat, "J");
        Require.given("burning", burning);
        Require.within("wall temperature", wallTemperature, 350, 700, "K");
        Require.within("exhaust pressure", exhaustPressure, 1e4, 2e6, "Pa");
        Require.within("octane number for the knock index", octane, 60, 130, "");
    }

    /**
     * The same cycle with another burning.
     *
     * @param newBurning the other course
     * @return the changed input
     */
    public CycleInput withBurning(Wiebe newBurning) {
        return new CycleInput(
                rpm, mass, temperature, unburned, burned, heat, newBurning, wallTemperature, exhaustPressure, octane);
    }
}
