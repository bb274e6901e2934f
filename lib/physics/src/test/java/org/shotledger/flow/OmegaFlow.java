package org.shotledger.flow;

/**
 * Closed forms of the omega method for a flashing stream whose specific volume follows {@code v/vs = omega (ps/p - 1) + 1}.
 *
 * <p>Sources: J. C. Leung, AIChE J. 32 (1986) 1743; J. C. Leung and M. A. Grolmes, AIChE J. 34 (1988) 688 (subcooled
 * inlet); API Standard 520 Part I, annex C. Pure arithmetic, no fluid properties; {@link Omega} supplies those.
 *
 * @param omega compressibility parameter of the flashing mixture, above 0
 * @param pressure stagnation pressure, Pa
 * @param saturationRatio saturation over stagnation pressure, above 0 to 1; 1 for a saturated or two-phase inlet
 * @param density stagnation density, kg/m3
 */
public record OmegaFlow(double omega, double pressure, double saturationRatio, double density) {
    private static final int STEPS = 200;
    private static final double LOWEST_RATIO = 1e-9;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when one lies outside its range
     */
    public OmegaFlow {
        Checks.positive("Omega method", "omega", omega, "");
        Checks.positive("Omega method", "stagnation pressure", pressure, "Pa");
        Checks.within("Omega method", "saturation ratio", saturationRatio, LOWEST_RATIO, 1, "");
        Checks.positive("Omega method", "stagnation density", density, "kg/m3");
    }

    /**
     * Omega from one flash to nine tenths of the (saturation) pressure, API 520 Part I eq. C.10.
     *
     * @param volume specific volume before, m3/kg
     * @param flashedVolume specific volume after the flash to 90 %, m3/kg
     * @return omega
     */
    public static double fromFlash(double volume, double flashedVolume) {
        return 9 * (flashedVolume / volume - 1);
    }

    /**
     * Omega from saturation properties, Leung (1986).
     *
     * @param quality vapour mass fraction at the inlet
     * @param volume specific volume of the inlet mixture, m3/kg
     * @param volumeRise vapour less liquid specific volume, m3/kg
     * @param heatCapacity liquid isobaric heat capacity, J/(kg K)
     * @param temperature inlet temperature, K
     * @param pressure inlet pressure, Pa
     * @param latentHeat heat of vaporisation, J/kg
     * @return omega
     */
    public static double fromProperties(
            double quality,
            double volume,
            double volumeRise,
            double heatCapacity,
            double temperature,
            double pressure,
            double latentHeat) {
        double slope = volumeRise / latentHeat;
        return quality * volumeRise / volume + heatCapacity * temperature * pressure / volume * slope * slope;
    }

    /**
     * Tells whether the liquid reaches saturation only at the throat (high subcooling, API 520 Part I eq. C.16).
     *
     * @return true when the flux is set by the saturation pressure alone
     */
    public boolean highlySubcooled() {
        return saturationRatio < 2 * omega / (1 + 2 * omega);
    }

    /**
     * Throat over stagnation pressure at choking.
     *
     * @return critical pressure ratio, 0 to 1
     */
    public double criticalRatio() {
        if (saturationRatio < 1 && highlySubcooled()) {
            return saturationRatio;
        }
        double low = LOWEST_RATIO;
        double high = saturationRatio;
        for (int i = 0; i < STEPS && high - low > 1e-15 * high; i++) {
            double middle = 0.5 * (low + high);
            if (chokingResidual(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** Leung and Grolmes (1988) eq. 12; with saturationRatio 1 it is Leung (1986) eq. 10. Rises with the ratio. */
    private double chokingResidual(double ratio) {
        double s = saturationRatio;
        return (omega + 1 / omega - 2) / (2 * s) * ratio * ratio
                - 2 * (omega - 1) * ratio
                + omega * s * Math.log(ratio / s)
                + 1.5 * omega * s
                - 1;
    }

    /**
     * Mass flux at a given throat pressure, not limited.
     *
     * @param ratio throat over stagnation pressure, above 0 to 1
     * @return flux, kg/(m2 s)
     */
    public double fluxAt(double ratio) {
        if (ratio >= saturationRatio) {
            return Math.sqrt(2 * density * pressure * Math.max(0, 1 - ratio));
        }
        double s = saturationRatio;
        double rise = (1 - s) + omega * s * Math.log(s / ratio) - (omega - 1) * (s - ratio);
        return Math.sqrt(2 * Math.max(0, rise) * pressure * density) / (omega * (s / ratio - 1) + 1);
    }

    /**
     * Specific volume at a throat pressure, over that at the inlet.
     *
     * @param ratio throat over stagnation pressure, above 0 to 1
     * @return volume ratio, 1 or above
     */
    public double volumeRatio(double ratio) {
        return ratio >= saturationRatio ? 1 : omega * (saturationRatio / ratio - 1) + 1;
    }

    /**
     * Mass flux to a downstream pressure, limited at choking.
     *
     * @param downstreamPressure pressure behind the hole, Pa
     * @return flux, kg/(m2 s)
     */
    public double flux(double downstreamPressure) {
        return fluxAt(Math.min(1, Math.max(downstreamPressure / pressure, criticalRatio())));
    }
}
