package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * G. F. Hohenberg, SAE 790825 (1979): {@code h = 130 V^-0.06 p^0.8 T^-0.4 (S_p + 1.4)^0.8} with p in bar and V in m3.
 *
 * @param factor on the coefficient, 0.3 to 3
 */
public record Hohenberg(double factor) implements HeatTransfer {
    private static final double PASCALS = 1e5;

    /** Checks the factor. */
    public Hohenberg {
        Require.within("factor on the heat transfer", factor, 0.3, 3, "");
    }

    @Override
    public double logConstant(double bore) {
        return Math.log(130 * factor) - SPEED_EXPONENT * Math.log(PASCALS);
    }

    @Override
    public double volumeExponent() {
        return -0.06;
    }

    @Override
    public double temperatureExponent() {
        return -0.4;
    }

    @Override
    public double motoredSpeed(double meanPistonSpeed) {
        return meanPistonSpeed + 1.4;
    }

    @Override
    public double combustionSpeed(double displacement, double temperature, double pressure, double volume) {
        return 0;
    }

    @Override
    public String basis() {
        return "Hohenberg, SAE 790825 (1979), times " + factor;
    }
}
