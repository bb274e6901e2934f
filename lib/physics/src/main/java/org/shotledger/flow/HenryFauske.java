package org.shotledger.flow;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.HelmholtzPoint;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.SaturationCurve;

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
    private static final double FIRST_STEP = 1.5;

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
        Checks.behind("Delayed flashing flow", downstreamPressure);
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
        Expansion late = expansion(stagnation);
        if (late == null || downstreamPressure >= late.frozen.pressure) {
            return HomogeneousEquilibrium.throatAt(stagnation, downstreamPressure);
        }
        double choking = late.chokingPressure();
        return downstreamPressure > choking
                ? late.frozen.throat(downstreamPressure, Choking.NONE)
                : late.frozen.throat(choking, Choking.SONIC);
    }

    /** The expansion from an inlet state, or null where homogeneous equilibrium answers instead. */
    Expansion expansion(FluidState stagnation) {
        boolean covered = stagnation.temperature() < LAST && (stagnation.isSaturated() || isLiquid(stagnation));
        if (!covered) {
            return null;
        }
        Isentrope path = new Isentrope(stagnation);
        if (!path.flashes() || path.saturationTemperature > LAST) {
            return null;
        }
        Frozen frozen = new Frozen(stagnation, path);
        double temperature = chokingTemperature(frozen);
        return Double.isNaN(temperature) ? null : new Expansion(path, frozen, SaturationCurve.pressure(temperature));
    }

    /** One inlet state with its choking point, for many pressures behind. */
    static final class Expansion {
        private final Isentrope path;
        private final Frozen frozen;
        private final double chokingPressure;

        private Expansion(Isentrope path, Frozen frozen, double chokingPressure) {
            this.path = path;
            this.frozen = frozen;
            this.chokingPressure = chokingPressure;
        }

        double chokingPressure() {
            return chokingPressure;
        }

        double flux(double behind) {
            return behind >= frozen.pressure ? path.fluxAt(behind) : frozen.flux(Math.max(behind, chokingPressure));
        }
    }

    private static boolean isLiquid(FluidState state) {
        return state.pressure() > SaturationCurve.pressure(state.temperature());
    }

    /** First choking met on the way down; NaN when none is met above the triple point. */
    private double chokingTemperature(Frozen frozen) {
        double high = frozen.temperature;
        double atHigh = excess(frozen, high);
        if (atHigh >= 0) {
            return high;
        }
        double lowest = TRIPLE + SLOPE_STEP;
        for (double step = FIRST_STEP; high > lowest; step *= 1.5) {
            double low = Math.max(lowest, high - step);
            double atLow = excess(frozen, low);
            if (atLow >= 0) {
                return Roots.find(t -> excess(frozen, t), low, atLow, high, atHigh, 1e-7);
            }
            high = low;
            atHigh = atLow;
        }
        return Double.NaN;
    }

    /** G^2 times the compressibility of the throat, less one: negative before choking. */
    private double excess(Frozen frozen, double temperature) {
        double liquidEntropy = SaturationCurve.liquidEntropy(temperature);
        double pressure = SaturationCurve.pressure(temperature);
        double rise = SaturationCurve.vapourEntropy(temperature) - liquidEntropy;
        double equilibrium = (frozen.entropy - liquidEntropy) / rise;
        double share = Math.min(Math.max(equilibrium, 0) / equilibriumQuality, 1);
        double boiling = (1 - frozen.quality) * share / rise * entropySlope(temperature);
        double x = frozen.quality;
        double vapourVolume = x == 0 ? 0 : frozen.vapourVolume(pressure);
        double compressibility = x * vapourVolume / (frozen.polytropic() * pressure)
                + (1 / SaturationCurve.vapourDensity(temperature) - frozen.liquidVolume)
                        * (boiling - frozen.coolingTerm(pressure));
        double flux = frozen.flux(pressure);
        return flux * flux * compressibility - 1;
    }

    /** Slope of the saturated liquid's entropy over pressure, J/(kg K Pa), central difference. */
    private static double entropySlope(double temperature) {
        double above = temperature + SLOPE_STEP;
        double below = temperature - SLOPE_STEP;
        return (SaturationCurve.liquidEntropy(above) - SaturationCurve.liquidEntropy(below))
                / (SaturationCurve.pressure(above) - SaturationCurve.pressure(below));
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

        Frozen(FluidState stagnation, Isentrope path) {
            boolean mixed = stagnation.isSaturated();
            temperature = path.saturationTemperature;
            pressure = path.saturationPressure;
            entropy = stagnation.entropy();
            quality = mixed ? stagnation.quality() : 0;
            liquidVolume = 1 / SaturationCurve.liquidDensity(temperature);
            startVapourVolume = 1 / SaturationCurve.vapourDensity(temperature);
            double start = SaturationCurve.liquidEnthalpy(temperature);
            startVelocitySquared = mixed ? 0 : Math.max(0, 2 * (stagnation.enthalpy() - start));
            double liquidEntropy = SaturationCurve.liquidEntropy(temperature);
            entropyRise = SaturationCurve.vapourEntropy(temperature) - liquidEntropy;
            HelmholtzPoint phase = new HelmholtzPoint().temperature(temperature);
            // liquid without vapour needs no gas properties
            boolean gas = quality > 0;
            liquidHeat = gas ? phase.density(1 / liquidVolume).cp() : 0;
            vapourHeat = gas ? phase.density(1 / startVapourVolume).cp() : 1;
            double stiffness = gas ? phase.soundSpeedSquared() / (startVapourVolume * pressure) : 2;
            exponent = Math.abs(stiffness - 1) < 1e-3 ? 1.001 : stiffness;
        }

        double vapourVolume(double p) {
            return startVapourVolume * Math.pow(pressure / p, 1 / exponent);
        }

        double volume(double p) {
            return quality == 0 ? liquidVolume : (1 - quality) * liquidVolume + quality * vapourVolume(p);
        }

        /** Henry and Fauske eq. 12, with the head gained before saturation. */
        double flux(double p) {
            double gas =
                    quality == 0 ? 0 : exponent / (exponent - 1) * (pressure * startVapourVolume - p * vapourVolume(p));
            double head = (1 - quality) * liquidVolume * (pressure - p) + quality * gas;
            return Math.sqrt(startVelocitySquared + 2 * head) / volume(p);
        }

        /** Exponent of the vapour while both phases share their heat, Henry and Fauske eq. 26. */
        double polytropic() {
            double ratio = (1 - quality) * liquidHeat / vapourHeat;
            return (ratio + 1) / (ratio + 1 / exponent);
        }

        double coolingTerm(double p) {
            return quality == 0 ? 0 : quality * vapourHeat * (1 / polytropic() - 1 / exponent) / (p * entropyRise);
        }

        Throat throat(double p, Choking choking) {
            double flux = flux(p);
            double volume = volume(p);
            return new Throat(flux, p, temperature, quality, 1 / volume, flux * volume, choking);
        }
    }
}
