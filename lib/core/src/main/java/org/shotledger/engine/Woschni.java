package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * G. Woschni, SAE 670931 (1967), as in Heywood chapter 12: {@code h = 3.26 B^-0.2 p^0.8 T^-0.55 w^0.8} with p in kPa,
 * {@code w = 2.28 S_p + 3.24e-3 V_d T_r/(p_r V_r) (p - p_m)}.
 *
 * @param factor on the coefficient, 0.3 to 3; calibrate on a heat balance or an exhaust temperature
 */
public record Woschni(double factor) implements HeatTransfer {
    /** Checks the factor. */
    public Woschni {
        Require.within("factor on the heat transfer", factor, 0.3, 3, "");
    }

    /**
     * The published correlation.
     *
     * @param bore m
     * @param pressure Pa
     * @param temperature K
     * @param gasSpeed w, m/s
     * @return W/(m2 K)
     */
    public static double of(double bore, double pressure, double temperature, double gasSpeed) {
        return 3.26
                * Math.exp(0.8 * Math.log(pressure * 1e-3 * gasSpeed)
                        - 0.55 * Math.log(temperature)
                        - 0.2 * Math.log(bore));
    }

    @Override
    public double coefficient(
            double bore,
            double volume,
            double pressure,
            double temperature,
            double meanPistonSpeed,
            double combustionSpeed) {
        return factor * of(bore, pressure, temperature, 2.28 * meanPistonSpeed + Math.max(0, combustionSpeed));
    }

    @Override
    public double combustionSpeed(double displacement, double temperature, double pressure, double volume) {
        return 3.24e-3 * displacement * temperature / (pressure * volume);
    }

    @Override
    public String basis() {
        return "Woschni, SAE 670931 (1967), times " + factor;
    }
}
