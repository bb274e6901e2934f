package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * G. Woschni, SAE 670931 (1967), as in Heywood chapter 12: {@code h = 3.26 B^-0.2 p^0.8 T^-0.55 w^0.8} with p in kPa,
 * {@code w = 2.28 S_p + 3.24e-3 V_d T_r/(p_r V_r) (p - p_m)}.
 *
 * @param factor on the coefficient, 0.3 to 3; calibrate on a heat balance or an exhaust temperature
 */
public record Woschni(double factor) implements HeatTransfer {
    private static final double PASCALS = 1e3;

    /** Checks the factor. */
    public Woschni {
        Require.within("factor on the heat transfer", factor, 0.3, 3, "");
    }

    @Override
    public double logConstant(double bore) {
        return Math.log(3.26 * factor) - 0.2 * Math.log(bore) - SPEED_EXPONENT * Math.log(PASCALS);
    }

    @Override
    public double volumeExponent() {
        return 0;
    }

    @Override
    public double temperatureExponent() {
        return -0.55;
    }

    @Override
    public double motoredSpeed(double meanPistonSpeed) {
        return 2.28 * meanPistonSpeed;
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
