package org.shotledger.engine;

/**
 * Heat transfer coefficient between gas and cylinder walls, as a power law
 * {@code h = C V^v (p w)^0.8 T^t} with the gas speed {@code w = a S_p + b + c (p - p_m)}.
 */
public sealed interface HeatTransfer permits Woschni, Hohenberg {
    /** Exponent of pressure and of gas speed in all of them (that of turbulent pipe flow). */
    double SPEED_EXPONENT = 0.8;

    /**
     * Logarithm of the constant C with everything in SI units.
     *
     * @param bore m
     * @return a pure number
     */
    double logConstant(double bore);

    /**
     * Exponent v of the cylinder volume.
     *
     * @return zero or below
     */
    double volumeExponent();

    /**
     * Exponent t of the gas temperature.
     *
     * @return below zero
     */
    double temperatureExponent();

    /**
     * Gas speed without combustion.
     *
     * @param meanPistonSpeed m/s
     * @return m/s
     */
    double motoredSpeed(double meanPistonSpeed);

    /**
     * Gas speed that the pressure rise above motoring stands for.
     *
     * @param displacement of the cylinder, m3
     * @param temperature at inlet valve closing, K
     * @param pressure at inlet valve closing, Pa
     * @param volume at inlet valve closing, m3
     * @return m/s per Pa above the motored pressure
     */
    double combustionSpeed(double displacement, double temperature, double pressure, double volume);

    /**
     * The coefficient.
     *
     * @param bore m
     * @param volume cylinder volume, m3
     * @param pressure Pa
     * @param temperature K
     * @param gasSpeed w, m/s
     * @return W/(m2 K)
     */
    default double coefficient(double bore, double volume, double pressure, double temperature, double gasSpeed) {
        return Math.exp(logConstant(bore)
                + volumeExponent() * Math.log(volume)
                + SPEED_EXPONENT * Math.log(pressure * gasSpeed)
                + temperatureExponent() * Math.log(temperature));
    }

    /**
     * What the model is, for the ledger.
     *
     * @return one line with its source
     */
    String basis();
}
