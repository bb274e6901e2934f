package org.shotledger.boost;

import org.shotledger.curve.Bracket;
import org.shotledger.units.Require;

/**
 * Balance of turbine, wastegate and compressor on one shaft.
 *
 * @param expansionRatio stagnation pressure before over static pressure after the turbine
 * @param exhaustPressure before the turbine, Pa
 * @param turbineFlow through the turbine, kg/s
 * @param wastegateShare share of the exhaust that passes by the wastegate; negative where even all of the exhaust is not
 *     enough to hold the boost
 */
public record ShaftBalance(double expansionRatio, double exhaustPressure, double turbineFlow, double wastegateShare) {
    /** Expansion ratio beyond which no single turbine stage is run: common practice, no source. */
    private static final double HIGHEST_RATIO = 12;

    /**
     * Expansion ratio that drives a compressor with a given flow through the turbine,
     * {@code ER = (1 - P/(eta_m m cp T3 eta_t))^(-g/(g-1))}.
     *
     * @param power compressor power, W, 0 or more
     * @param gas the gas that passes the turbine
     * @param efficiency of the turbine
     * @param mechanicalEfficiency of the bearings
     * @return the ratio; infinite when the gas has not the energy
     */
    public static double expansionRatio(double power, ExhaustGas gas, double efficiency, double mechanicalEfficiency) {
        Require.notNegative("compressor power", power, "W");
        double available = mechanicalEfficiency * gas.flow() * gas.specificHeat() * gas.temperature() * efficiency;
        double drop = power / available;
        return drop < 1 ? Math.pow(1 - drop, -gas.gamma() / (gas.gamma() - 1)) : Double.POSITIVE_INFINITY;
    }

    /**
     * Solves the balance: the expansion ratio at which the flow the turbine swallows gives the compressor's power.
     *
     * @param turbine the turbine
     * @param gas all of the exhaust
     * @param compressorPower W, 0 or more
     * @param outletPressure after the turbine, Pa
     * @return the balance; see {@link #holdsBoost()}
     * @throws IllegalArgumentException when no expansion ratio up to 12 gives that power
     */
    public static ShaftBalance solve(Turbine turbine, ExhaustGas gas, double compressorPower, double outletPressure) {
        Require.notNegative("compressor power", compressorPower, "W");
        Require.positive("pressure after the turbine", outletPressure, "Pa");
        if (shaftPower(turbine, gas, HIGHEST_RATIO, outletPressure) < compressorPower) {
            throw new IllegalArgumentException("The turbine " + turbine.name() + " cannot give " + compressorPower
                    + " W even at an expansion ratio of " + HIGHEST_RATIO
                    + "; its effective area is too small for this compressor. Check both.");
        }
        double ratio = Bracket.root(
                er -> shaftPower(turbine, gas, er, outletPressure) - compressorPower, 1, HIGHEST_RATIO, 1e-10);
        double swallowed = swallowed(turbine, gas, ratio, outletPressure);
        return new ShaftBalance(ratio, ratio * outletPressure, swallowed, 1 - swallowed / gas.flow());
    }

    /**
     * Tells whether the turbine can drive the compressor with the exhaust there is.
     *
     * @return true when the wastegate still has something to let past
     */
    public boolean holdsBoost() {
        return wastegateShare >= 0;
    }

    /**
     * Power the turbine gives to the compressor at an expansion ratio, swallowing what its area allows.
     *
     * @param turbine the turbine
     * @param gas gas state before it; its flow is not used
     * @param ratio expansion ratio, 1 or more
     * @param outletPressure after the turbine, Pa
     * @return W
     */
    public static double shaftPower(Turbine turbine, ExhaustGas gas, double ratio, double outletPressure) {
        double drop = 1 - Math.pow(ratio, (1 - gas.gamma()) / gas.gamma());
        return swallowed(turbine, gas, ratio, outletPressure)
                * gas.specificHeat()
                * gas.temperature()
                * turbine.efficiency()
                * turbine.mechanicalEfficiency()
                * drop;
    }

    /**
     * Expansion ratio at which the turbine swallows all of the exhaust, the wastegate shut.
     *
     * @param turbine the turbine
     * @param gas all of the exhaust
     * @param outletPressure after the turbine, Pa
     * @return ratio from 1 to 12, the highest that is looked at, where the turbine is too small for the flow
     */
    public static double swallowingRatio(Turbine turbine, ExhaustGas gas, double outletPressure) {
        Require.positive("pressure after the turbine", outletPressure, "Pa");
        if (swallowed(turbine, gas, HIGHEST_RATIO, outletPressure) <= gas.flow()) {
            return HIGHEST_RATIO;
        }
        return Bracket.root(er -> swallowed(turbine, gas, er, outletPressure) - gas.flow(), 1, HIGHEST_RATIO, 1e-9);
    }

    /**
     * Flow through the turbine as an ideal nozzle (NACA 1135) of its effective area, choked where due.
     *
     * @param turbine the turbine
     * @param gas gas state before it; its flow is not used
     * @param ratio expansion ratio, 1 or more
     * @param outletPressure after the turbine, Pa
     * @return kg/s
     */
    public static double swallowed(Turbine turbine, ExhaustGas gas, double ratio, double outletPressure) {
        return Nozzle.flow(
                turbine.effectiveArea(),
                ratio * outletPressure,
                gas.temperature(),
                outletPressure,
                gas.gasConstant(),
                gas.gamma());
    }
}
