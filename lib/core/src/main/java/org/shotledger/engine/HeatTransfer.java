package org.shotledger.engine;

/** Heat transfer coefficient between gas and cylinder walls. */
public sealed interface HeatTransfer permits Woschni, Hohenberg {
    /**
     * The coefficient.
     *
     * @param bore m
     * @param volume cylinder volume, m3
     * @param pressure Pa
     * @param temperature K
     * @param meanPistonSpeed m/s
     * @param combustionSpeed gas speed raised by combustion, m/s; see {@link #combustionSpeed}
     * @return W/(m2 K)
     */
    double coefficient(
            double bore,
            double volume,
            double pressure,
            double temperature,
            double meanPistonSpeed,
            double combustionSpeed);

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
     * What the model is, for the ledger.
     *
     * @return one line with its source
     */
    String basis();
}
