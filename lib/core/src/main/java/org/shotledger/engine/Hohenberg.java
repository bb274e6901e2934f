package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * G. F. Hohenberg, SAE 790825 (1979): {@code h = 130 V^-0.06 p^0.8 T^-0.4 (S_p + 1.4)^0.8} with p in bar and V in m3.
 *
 * @param factor on the coefficient, 0.3 to 3
 */
public record Hohenberg(double factor) implements HeatTransfer {
    /** Checks the factor. */
    public Hohenberg {
        Require.within("factor on the heat transfer", factor, 0.3, 3, "");
    }

    @Override
    public double coefficient(
            double bore,
            double volume,
            double pressure,
            double temperature,
            double meanPistonSpeed,
            double combustionSpeed) {
        return factor
                * 130
                * Math.exp(0.8 * Math.log(pressure * 1e-5 * (meanPistonSpeed + 1.4))
                        - 0.4 * Math.log(temperature)
                        - 0.06 * Math.log(volume));
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
