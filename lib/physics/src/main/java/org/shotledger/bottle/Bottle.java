package org.shotledger.bottle;

import org.shotledger.fluid.NitrousOxide;

/**
 * A pressure bottle as bought: vessel and wall, without its charge.
 *
 * @param waterCapacity inside volume, m3
 * @param wallMass mass of the shell, kg, zero or above
 * @param wallSpecificHeat heat capacity of the shell, J/(kg K); aluminium 900, steel 480
 * @param wallArea wetted inner surface of the whole shell, m2
 * @param outerArea outer surface exposed to the air, m2
 */
public record Bottle(
        double waterCapacity, double wallMass, double wallSpecificHeat, double wallArea, double outerArea) {
    /** Length over diameter of a usual bottle: common practice, no source. */
    private static final double SLENDERNESS = 3;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when one lies outside its range
     */
    public Bottle {
        check("water capacity", waterCapacity, 1e-6, 10, "m3");
        check("wall mass", wallMass, 0, 1e4, "kg");
        check("wall specific heat", wallSpecificHeat, 0, 1e4, "J/(kg K)");
        check("wall area", wallArea, 0, 1e3, "m2");
        check("outer area", outerArea, 0, 1e3, "m2");
    }

    /**
     * A cylinder three times as long as wide, which fixes the areas.
     *
     * @param waterCapacity inside volume, m3
     * @param wallMass mass of the shell, kg
     * @param wallSpecificHeat heat capacity of the shell, J/(kg K)
     */
    public Bottle(double waterCapacity, double wallMass, double wallSpecificHeat) {
        this(
                waterCapacity,
                wallMass,
                wallSpecificHeat,
                cylinderArea(waterCapacity),
                1.15 * cylinderArea(waterCapacity));
    }

    private static double cylinderArea(double volume) {
        double diameter = Math.cbrt(4 * volume / (Math.PI * SLENDERNESS));
        return Math.PI * diameter * diameter * (SLENDERNESS + 0.5);
    }

    private static void check(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException("Bottle: " + name + " is " + value + " " + unit + "; allowed are " + low
                    + " to " + high + " " + unit + ".");
        }
    }

    /**
     * The bottle with nitrous oxide in it, all at one temperature.
     *
     * @param mass charge, kg, above 0
     * @param temperature temperature, K
     * @return the charge, liquid-full and compressed where there is no room for vapour
     * @throws IllegalArgumentException when the charge would stand at more than 50 MPa; {@link FillingCheck} judges it all the same
     */
    public Charge charged(double mass, double temperature) {
        if (!(mass > 0 && mass / waterCapacity < 1250)) {
            throw new IllegalArgumentException("Bottle: a charge of " + mass + " kg in " + 1000 * waterCapacity
                    + " L is not possible; allowed are above 0 to " + Math.rint(1250e6 * waterCapacity) / 1e6 + " kg.");
        }
        if (ChargePressure.of(this, mass, temperature).beyond()) {
            throw new IllegalArgumentException(
                    "Bottle: a charge of " + mass + " kg in " + 1000 * waterCapacity + " L stands at more than "
                            + ChargePressure.HIGHEST + " Pa at " + temperature
                            + " K, beyond the equation of state and any cylinder; it may hold "
                            + 1000 * FillingCheck.LARGEST_DENSITY * waterCapacity
                            + " kg: change the bottle or the charge, this limit is not to be moved.");
        }
        return new Charge(
                this, mass, NitrousOxide.atTemperatureDensity(temperature, mass / waterCapacity), temperature);
    }

    /**
     * Charge per water capacity; the filling ratio of the regulations.
     *
     * @param mass charge, kg
     * @return filling density, kg/L (kg per kg of water)
     */
    public double fillingDensity(double mass) {
        return mass / (1000 * waterCapacity);
    }

    /**
     * Pressure of a charge at a soak temperature.
     *
     * @param mass charge, kg
     * @param temperature soak temperature, K
     * @return absolute pressure, Pa; 50 MPa where it is higher, see {@link ChargePressure}
     */
    public double pressureAt(double mass, double temperature) {
        return ChargePressure.of(this, mass, temperature).pressure();
    }
}
