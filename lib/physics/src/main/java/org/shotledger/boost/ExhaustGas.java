package org.shotledger.boost;

import org.shotledger.units.Require;

/**
 * Exhaust gas before the turbine.
 *
 * @param flow kg/s, 0 or more
 * @param temperature K, 500 to 2200
 * @param gasConstant J/(kg K), 200 to 500
 * @param gamma ratio of heat capacities, 1.2 to 1.4
 */
public record ExhaustGas(double flow, double temperature, double gasConstant, double gamma) {
    public ExhaustGas {
        Require.notNegative("exhaust flow", flow, "kg/s");
        Require.within("exhaust temperature", temperature, 500, 2200, "K");
        Require.within("gas constant of the exhaust", gasConstant, 200, 500, "J/(kg K)");
        Require.within("gamma of the exhaust", gamma, 1.2, 1.4, "");
    }

    /**
     * Heat capacity at constant pressure.
     *
     * @return J/(kg K)
     */
    public double specificHeat() {
        return gasConstant * gamma / (gamma - 1);
    }
}
