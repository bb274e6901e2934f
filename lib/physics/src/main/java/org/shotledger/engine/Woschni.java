package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * Heat transfer coefficient between gas and cylinder walls after G. Woschni, SAE 670931 (1967), as in Heywood chapter 12:
 * {@code h = 3.26 B^-0.2 p^0.8 T^-0.55 w^0.8} with p in kPa, {@code w = 2.28 S_p + 3.24e-3 V_d T_r/(p_r V_r) (p - p_m)}.
 *
 * @param factor on the coefficient, 0.3 to 3; calibrate on a heat balance or an exhaust temperature
 */
public record Woschni(double factor) {
    /** Exponent of pressure and of gas speed. */
    static final double SPEED_EXPONENT = 0.8;
    /** Exponent of the gas temperature. */
    static final double TEMPERATURE_EXPONENT = -0.55;

    private static final double PASCALS = 1e3;

    public Woschni {
        Require.within("factor on the heat transfer", factor, 0.3, 3, "");
    }

    /**
     * Gas speed without combustion.
     *
     * @param meanPistonSpeed m/s
     * @return m/s
     */
    double motoredSpeed(double meanPistonSpeed) {
        return 2.28 * meanPistonSpeed;
    }

    /**
     * Gas speed that the pressure rise above motoring stands for.
     *
     * @param displacement of the cylinder, m3
     * @param temperature at inlet valve closing, K
     * @param pressure at inlet valve closing, Pa
     * @param volume at inlet valve closing, m3
     * @return m/s per Pa above the motored pressure
     */
    double combustionSpeed(double displacement, double temperature, double pressure, double volume) {
        return 3.24e-3 * displacement * temperature / (pressure * volume);
    }

    /**
     * The coefficient.
     *
     * @param bore m
     * @param pressure Pa
     * @param temperature K
     * @param gasSpeed w, m/s
     * @return W/(m2 K)
     */
    public double coefficient(double bore, double pressure, double temperature, double gasSpeed) {
        return Math.exp(Math.log(3.26 * factor)
                - 0.2 * Math.log(bore)
                - SPEED_EXPONENT * Math.log(PASCALS)
                + SPEED_EXPONENT * Math.log(pressure * gasSpeed)
                + TEMPERATURE_EXPONENT * Math.log(temperature));
    }
}
