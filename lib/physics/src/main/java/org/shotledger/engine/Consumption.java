package org.shotledger.engine;

import org.shotledger.units.Require;

/** Fuel and air consumed for a power. */
public final class Consumption {
    private Consumption() {}

    /**
     * Thermal efficiency of a specific fuel consumption, {@code 1 / (bsfc LHV)}.
     *
     * @param specificConsumption kg/J
     * @param lowerHeatingValue J/kg
     * @return 0 to 1
     */
    public static double efficiency(double specificConsumption, double lowerHeatingValue) {
        return 1
                / (Require.positive("specific fuel consumption", specificConsumption, "kg/J")
                        * Require.positive("lower heating value", lowerHeatingValue, "J/kg"));
    }

    /**
     * Specific fuel consumption of a thermal efficiency.
     *
     * @param efficiency 0 to 1
     * @param lowerHeatingValue J/kg
     * @return kg/J
     */
    public static double specific(double efficiency, double lowerHeatingValue) {
        return 1
                / (Require.within("thermal efficiency", efficiency, 1e-6, 1, "")
                        * Require.positive("lower heating value", lowerHeatingValue, "J/kg"));
    }
}
