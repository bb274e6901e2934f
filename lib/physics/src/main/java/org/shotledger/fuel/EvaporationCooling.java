package org.shotledger.fuel;

import org.shotledger.units.Require;

/** The most that evaporating fuel can cool the air: complete evaporation, no heat from walls. An upper bound. */
public final class EvaporationCooling {
    private EvaporationCooling() {}

    /**
     * Heat taken from each kilogram of air.
     *
     * @param vaporisationHeat of the fuel, J/kg
     * @param airFuel air to fuel ratio by mass, above zero
     * @return J per kg of air
     */
    public static double heatPerAir(double vaporisationHeat, double airFuel) {
        return vaporisationHeat / Require.positive("air to fuel ratio", airFuel, "");
    }

    /**
     * Drop of the air's temperature.
     *
     * @param vaporisationHeat of the fuel, J/kg
     * @param airFuel air to fuel ratio by mass, above zero
     * @param heatCapacity of air, J/(kg K)
     * @return K
     */
    public static double temperatureDrop(double vaporisationHeat, double airFuel, double heatCapacity) {
        return heatPerAir(vaporisationHeat, airFuel) / heatCapacity;
    }
}
