package org.shotledger.fuel;

import org.shotledger.units.Require;

/**
 * Heat of vaporisation with the temperature it belongs to: the printed tables differ by 7-9 % for alcohols between 25 C
 * and the boiling point, so a value without its temperature is not accepted.
 *
 * @param heat heat of vaporisation, J/kg, 0 to 3 MJ/kg
 * @param temperature the temperature of that value, K, 200 to 450
 * @param change change of that heat with temperature, J/(kg K), -4000 to 0
 */
public record Vaporisation(double heat, double temperature, double change) {
    /** Usual change of the heat with temperature, -0.16 % per kelvin for hydrocarbons and alcohols (from memory). */
    private static final double USUAL_CHANGE = -1.6e-3;

    public Vaporisation {
        Require.within("heat of vaporisation", heat, 0, 3e6, "J/kg");
        Require.within("temperature of the heat of vaporisation", temperature, 200, 450, "K");
        Require.within("change of the heat of vaporisation", change, -4000, 0, "J/(kg K)");
    }

    /**
     * A single value, taken to fall by 0.16 % per kelvin.
     *
     * @param heat J/kg
     * @param temperature K
     */
    public Vaporisation(double heat, double temperature) {
        this(heat, temperature, USUAL_CHANGE * heat);
    }

    /**
     * The heat at another temperature, on the straight line.
     *
     * @param at K, 200 to 450
     * @return J/kg
     */
    public double at(double at) {
        Require.within("temperature of the heat of vaporisation", at, 200, 450, "K");
        return heat + change * (at - temperature);
    }
}
