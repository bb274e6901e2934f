package org.shotledger.bottle;

/**
 * Heat that reaches the contents: from the shell, the surroundings and a heater.
 *
 * <p>An exchange that would be over within a 2000th of the run, or within 20 ms, is taken to last that long; the pressure switch has at
 * least 0.2 % of difference between on and off. Both keep a run's cost bounded for any figures in range.
 *
 * @param fluidCoefficient heat transfer coefficient shell to contents, W/(m2 K); 0 for an adiabatic wall
 * @param ambientCoefficient coefficient shell to air, W/(m2 K); still air 5 to 10, moving car 20 to 40
 * @param ambientTemperature air temperature, K
 * @param heaterPower heater power into the shell, W
 * @param heaterOff pressure at which the thermostat (pressure switch) turns the heater off, Pa absolute
 * @param heaterOn pressure at which it turns on again, Pa absolute, not above the off pressure
 */
public record HeatInput(
        double fluidCoefficient,
        double ambientCoefficient,
        double ambientTemperature,
        double heaterPower,
        double heaterOff,
        double heaterOn) {
    /**
     * Coefficient between shell and boiling liquid, W/(m2 K), fitted together with {@link BoilingLaw#FITTED}; fits that leave one tank out
     * give 1900, 2300 and 9600 (the last without the small tank, on which alone the shell tells).
     */
    public static final double USUAL_FLUID_COEFFICIENT = 2170;

    /** Coefficient of gas over that of boiling liquid. Our choice: free convection of dense gas, some 65 W/(m2 K). */
    static final double GAS_SHARE = 0.03;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when one lies outside its range
     */
    public HeatInput {
        check("shell to contents coefficient", fluidCoefficient);
        check("shell to air coefficient", ambientCoefficient);
        check("air temperature", ambientTemperature);
        check("heater power", heaterPower);
        if (heaterPower > 0 && !(heaterOn > 0 && heaterOn <= heaterOff)) {
            throw new IllegalArgumentException("Bottle: the heater turns on at " + heaterOn + " Pa and off at "
                    + heaterOff + " Pa; the first must be above zero and not above the second.");
        }
    }

    private static void check(String name, double value) {
        if (!(value >= 0 && value < 1e6)) {
            throw new IllegalArgumentException(
                    "Bottle: " + name + " is " + value + "; allowed are 0 to 1e6 in SI units.");
        }
    }

    /**
     * No heat at all.
     *
     * @return adiabatic contents
     */
    public static HeatInput none() {
        return new HeatInput(0, 0, 293.15, 0, 0, 0);
    }

    /**
     * Shell and surroundings, no heater.
     *
     * @param ambientTemperature air temperature, K
     * @return usual coefficients
     */
    public static HeatInput surroundings(double ambientTemperature) {
        return new HeatInput(USUAL_FLUID_COEFFICIENT, 8, ambientTemperature, 0, 0, 0);
    }

    /**
     * The same with a heater and its pressure switch.
     *
     * @param power heater power, W
     * @param off absolute pressure at which it turns off, Pa
     * @param on absolute pressure at which it turns on again, Pa
     * @return new set
     */
    public HeatInput withHeater(double power, double off, double on) {
        return new HeatInput(fluidCoefficient, ambientCoefficient, ambientTemperature, power, off, on);
    }
}
