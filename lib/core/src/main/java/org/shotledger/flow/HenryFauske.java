package org.shotledger.flow;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * Frozen expansion with delayed boiling at the throat.
 *
 * <p>Liquid and vapour keep the inlet quality up to the throat; there vapour forms at {@code N = min(x_E / x_N, 1)} of the
 * equilibrium rate, x_E being the quality of homogeneous equilibrium. Source: R. E. Henry and H. K. Fauske, J. Heat Transfer
 * 93 (1971) 179, eqs. 40-44 (from memory, checked against the values quoted for it in open validation reports);
 * published x_N = 0.14, fitted to short nozzles. With x_N towards 0 it goes over into homogeneous equilibrium for a
 * subcooled inlet. Range: liquid, saturated or mixture below the critical temperature; superheated vapour and supercritical
 * states are answered by {@link HomogeneousEquilibrium}. Known error: with x_N = 0.14 and the measured liquid discharge
 * coefficient 6 to 17 % too high on the choked points of AIAA 2013-3636 (hole 12 bores long): an upper bracket there.
 *
 * @param equilibriumQuality x_N, the equilibrium quality at which boiling keeps up with equilibrium, above 0 to 1
 */
public record HenryFauske(double equilibriumQuality) implements OrificeFlow {
    /** The model with its published constant. */
    public static final HenryFauske PUBLISHED = new HenryFauske(0.14);

    private static final double TRIPLE = NitrousOxide.TRIPLE_TEMPERATURE;
    private static final double LAST = NitrousOxide.CRITICAL_TEMPERATURE - 0.02;
    private static final double SLOPE_STEP = 0.01;

    /**
     * Checks the constant.
     *
     * @throws IllegalArgumentException when it is not above 0 and up to 1
     */
    public HenryFauske {
        Checks.within("Henry-Fauske flow", "equilibrium quality", equilibriumQuality, 1e-6, 1, "");
    }

    /**
     * Flux at choking with the published constant.
     *
     * @param stagnation state upstream at rest
     * @return the throat; its quality is that of the frozen expansion
     */
    public static Throat criticalFlux(FluidState stagnation) {
        return PUBLISHED.throat(stagnation, 0);
    }

    /**
     * Flux with the published constant.
     *
     * @param stagnation state upstream at rest
     * @param downstreamPressure absolute pressure behind the hole, Pa
     * @return flux, kg/(m2 s)
     */
    public static double massFlux(FluidState stagnation, double downstreamPressure) {
        return PUBLISHED.flux(stagnation, downstreamPressure);
    }

    @Override
    public String title() {
        return equilibriumQuality == PUBLISHED.equilibriumQuality
                ? "Henry-Fauske"
                : "delayed flashing (Henry-Fauske form, x_N " + String.format("%.3f", equilibriumQuality) + ")";
    }

    @Override
    public String knownError() {
        return "6 to 17 % high with the published constant in holes 12 bores long";
    }

    @Override
    public double flux(FluidState stagnation, double downstreamPressure) {
        return throat(stagnation, downstreamPressure).massFlux();
    }

    @Override
    public Throat throat(FluidState stagnation, double downstreamPressure) {
        boolean covered = stagnation.temperature() < LAST && (stagnation.isSaturated() || isLiquid(stagnation));
        if (!covered || downstreamPressure >= stagnation.pressure()) {
            return HomogeneousEquilibrium.throatAt(stagnation, downstreamPressure);
        }
        Isentrope path = new Isentrope(stagnation);
        if (!path.flashes() || path.saturationTemperature > LAST) {
            return HomogeneousEquilibrium.throatAt(stagnation, downstreamPressure);
        }
        Frozen frozen = new Frozen(stagnation, path.atSaturation());
        if (downstreamPressure >= frozen.pressure) {
            return HomogeneousEquilibrium.throatAt(stagnation, downstreamPressure);
        }
        double temperature = chokingTemperature(frozen);
        double choking = NitrousOxide.saturationPressure(temperature);
        if (downstreamPressure > choking) {
            return frozen.throat(downstreamPressure, Choking.NONE);
        }
        return frozen.throat(choking, Choking.SONIC);
    }

    private static boolean isLiquid(FluidState state) {
        return state.pressure() > NitrousOxide.saturationPressure(state.temperature());
    }

    private double chokingTemperature(Frozen frozen) {
        double high = frozen.temperature;
        if (excess(frozen, high) >= 0) {
            return high;
        }
        return Roots.find(t -> excess(frozen, t), TRIPLE + SLOPE_STEP, high, 1e-7);
    }

    /** G^2 times the compressibility of the throat, less one: negative before choking. */
    private double excess(Frozen frozen, double temperature) {
        FluidState liquid = NitrousOxide.saturatedLiquid(temperature);
        FluidState vapour = NitrousOxide.saturatedVapour(temperature);
        double pressure = vapour.pressure();
        double rise = vapour.entropy() - liquid.entropy();
        double equilibrium = (frozen.entropy - liquid.entropy()) / rise;
        double share = Math.min(Math.max(equilibrium, 0) / equilibriumQuality, 1);
        double boiling = (1 - frozen.quality) * share / rise * entropySlope(temperature);
        double x = frozen.quality;
        double vapourVolume = frozen.vapourVolume(pressure);
        double compressibility = x * vapourVolume / (frozen.polytropic() * pressure)
                + (vapour.specificVolume() - frozen.liquidVolume) * (boiling - frozen.coolingTerm(pressure));
        double flux = frozen.flux(pressure);
        return flux * flux * compressibility - 1;
    }

    /** Slope of the saturated liquid's entropy over pressure, J/(kg K Pa), central difference. */
    private static double entropySlope(double temperature) {
        FluidState above = NitrousOxide.saturatedLiquid(temperature + SLOPE_STEP);
        FluidState below = NitrousOxide.saturatedLiquid(temperature - SLOPE_STEP);
        return (above.entropy() - below.entropy()) / (above.pressure() - below.pressure());
    }

    /** The expansion at constant quality from the point where the path meets saturation. */
    private static final class Frozen {
        final double pressure;
        final double temperature;
        final double entropy;
        final double quality;
        final double liquidVolume;
        private final double startVelocitySquared;
        private final double startVapourVolume;
        private final double exponent;
        private final double vapourHeat;
        private final double liquidHeat;
        private final double entropyRise;

        Frozen(FluidState stagnation, FluidState saturated) {
            boolean mixed = stagnation.isSaturated();
            FluidState start = mixed ? stagnation : saturated;
            temperature = start.temperature();
            pressure = start.pressure();
            entropy = stagnation.entropy();
            quality = mixed ? stagnation.quality() : 0;
            FluidState liquid = NitrousOxide.saturatedLiquid(temperature);
            FluidState vapour = NitrousOxide.saturatedVapour(temperature);
            liquidVolume = liquid.specificVolume();
            startVapourVolume = vapour.specificVolume();
            startVelocitySquared = mixed ? 0 : Math.max(0, 2 * (stagnation.enthalpy() - start.enthalpy()));
            exponent = vapour.density() * vapour.soundSpeed() * vapour.soundSpeed() / pressure;
            vapourHeat = vapour.cp();
            liquidHeat = liquid.cp();
            entropyRise = vapour.entropy() - liquid.entropy();
        }

        double vapourVolume(double p) {
            return startVapourVolume * Math.pow(pressure / p, 1 / exponent);
        }

        double volume(double p) {
            return (1 - quality) * liquidVolume + quality * vapourVolume(p);
        }

        /** Henry and Fauske eq. 12, with the head gained before saturation. */
        double flux(double p) {
            double gas = exponent / (exponent - 1) * (pressure * startVapourVolume - p * vapourVolume(p));
            double head = (1 - quality) * liquidVolume * (pressure - p) + quality * gas;
            return Math.sqrt(startVelocitySquared + 2 * head) / volume(p);
        }

        /** Exponent of the vapour while both phases share their heat, Henry and Fauske eq. 26. */
        double polytropic() {
            double ratio = (1 - quality) * liquidHeat / vapourHeat;
            return (ratio + 1) / (ratio + 1 / exponent);
        }

        double coolingTerm(double p) {
            return quality * vapourHeat * (1 / polytropic() - 1 / exponent) / (p * entropyRise);
        }

        Throat throat(double p, Choking choking) {
            double flux = flux(p);
            double volume = volume(p);
            return new Throat(flux, p, temperature, quality, 1 / volume, flux * volume, choking);
        }
    }
}
