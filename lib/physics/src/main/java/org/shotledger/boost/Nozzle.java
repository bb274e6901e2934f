package org.shotledger.boost;

import org.shotledger.units.Require;

/** Isentropic flow of an ideal gas through a converging nozzle (NACA 1135): wastegate, throttle, turbine equivalent. */
public final class Nozzle {
    private Nozzle() {}

    /**
     * Mass flow, choked where the back pressure is below the critical one.
     *
     * @param area effective area, m2
     * @param pressure stagnation pressure before it, Pa
     * @param temperature stagnation temperature before it, K
     * @param backPressure static pressure after it, Pa, not above the pressure before it
     * @param gasConstant J/(kg K)
     * @param gamma ratio of heat capacities
     * @return kg/s
     */
    public static double flow(
            double area, double pressure, double temperature, double backPressure, double gasConstant, double gamma) {
        Require.within("back pressure of a nozzle", backPressure, 0, pressure, "Pa");
        double ratio = Math.max(backPressure / pressure, criticalRatio(gamma));
        double term = 2 * gamma / (gamma - 1) * (Math.pow(ratio, 2 / gamma) - Math.pow(ratio, (gamma + 1) / gamma));
        return area * pressure * Math.sqrt(Math.max(0, term) / (gasConstant * temperature));
    }

    /**
     * Critical pressure ratio, {@code (2/(g+1))^(g/(g-1))}.
     *
     * @param gamma ratio of heat capacities
     * @return throat pressure over stagnation pressure when choked
     */
    public static double criticalRatio(double gamma) {
        return Math.pow(2 / (gamma + 1), gamma / (gamma - 1));
    }
}
