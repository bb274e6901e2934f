package org.shotledger.boost;

import org.shotledger.units.Require;

/**
 * A turbine as a nozzle of constant effective area with constant efficiency.
 *
 * @param name what it is called
 * @param effectiveArea area of the nozzle that swallows as much, m2, 1e-5 to 1e-2
 * @param efficiency total-to-static isentropic, 0.3 to 0.85
 * @param mechanicalEfficiency of the bearings, 0.8 to 1
 * @param exhaustLoss pressure loss after the turbine
 */
public record Turbine(
        String name, double effectiveArea, double efficiency, double mechanicalEfficiency, FlowLoss exhaustLoss) {
    public Turbine {
        Require.named("turbine", name);
        Require.within("effective area of " + name, effectiveArea, 1e-5, 1e-2, "m2");
        Require.within("efficiency of " + name, efficiency, 0.3, 0.85, "");
        Require.within("mechanical efficiency of " + name, mechanicalEfficiency, 0.8, 1, "");
        Require.given("exhaust loss of " + name, exhaustLoss);
    }

    /**
     * Temperature after an expansion, {@code T4 = T3 (1 - eta (1 - ER^(-(g-1)/g)))}.
     *
     * @param inletTemperature K
     * @param expansionRatio 1 or more
     * @param efficiency isentropic, 0.2 to 1
     * @param gamma ratio of heat capacities
     * @return K
     */
    public static double outletTemperature(
            double inletTemperature, double expansionRatio, double efficiency, double gamma) {
        Require.within("expansion ratio", expansionRatio, 1, 100, "");
        Require.within("isentropic efficiency", efficiency, 0.2, 1, "");
        return inletTemperature * (1 - efficiency * (1 - Math.pow(expansionRatio, (1 - gamma) / gamma)));
    }
}
