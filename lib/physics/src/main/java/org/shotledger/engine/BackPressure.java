package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * What exhaust back pressure does to an engine: residual gas that expands in the cylinder and leaves less room,
 * {@code r/(r-1) - (p_e/p_i + g - 1)/(g (r-1))}, and work to push the gas out ({@link Power#pumping}). The equation is that of an
 * ideal intake stroke without valve overlap (Heywood, eq. 6.2, from memory; a balance of mass and energy over the stroke gives the
 * same, tested). With overlap and a back pressure below the intake pressure the engine also scavenges, which this leaves out:
 * the change it tells is then too small.
 */
public final class BackPressure {
    private BackPressure() {}

    /**
     * Volumetric efficiency of an ideal engine at intake conditions.
     *
     * @param pressureRatio exhaust over intake pressure, 0 to 5
     * @param compressionRatio 2 to 30
     * @param gamma of the residual gas, 1.2 to 1.4
     * @return share of the displacement filled afresh
     */
    public static double idealVolumetricEfficiency(double pressureRatio, double compressionRatio, double gamma) {
        Require.within("exhaust to intake pressure ratio", pressureRatio, 0, 5, "");
        Require.within("compression ratio", compressionRatio, 2, 30, "");
        Require.within("gamma of the residual gas", gamma, 1.2, 1.4, "");
        return compressionRatio / (compressionRatio - 1)
                - (pressureRatio + gamma - 1) / (gamma * (compressionRatio - 1));
    }

    /**
     * Factor from the back pressure at which a volumetric efficiency was found to another one.
     *
     * @param measuredRatio exhaust over intake pressure where it was found
     * @param pressureRatio exhaust over intake pressure now
     * @param compressionRatio 2 to 30
     * @param gamma of the residual gas
     * @return to be multiplied with the volumetric efficiency; below one where back pressure rose
     */
    public static double factor(double measuredRatio, double pressureRatio, double compressionRatio, double gamma) {
        return idealVolumetricEfficiency(pressureRatio, compressionRatio, gamma)
                / idealVolumetricEfficiency(measuredRatio, compressionRatio, gamma);
    }
}
