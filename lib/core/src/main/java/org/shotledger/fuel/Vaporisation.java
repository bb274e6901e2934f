package org.shotledger.fuel;

import org.shotledger.units.Require;

/**
 * Heat of vaporisation with the temperature it belongs to: the printed tables differ by 7-9 % for alcohols between 25 C
 * and the boiling point, so a value without its temperature is not accepted.
 *
 * @param heat heat of vaporisation, J/kg, 0 to 3 MJ/kg
 * @param temperature the temperature of that value, K, 200 to 450
 */
public record Vaporisation(double heat, double temperature) {
    /** Checks the ranges. */
    public Vaporisation {
        Require.within("heat of vaporisation", heat, 0, 3e6, "J/kg");
        Require.within("temperature of the heat of vaporisation", temperature, 200, 450, "K");
    }
}
