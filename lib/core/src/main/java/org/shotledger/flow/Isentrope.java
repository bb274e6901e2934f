package org.shotledger.flow;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * The path of constant entropy from a stagnation state towards lower pressure: a single-phase part (possibly empty), the
 * saturation line, a two-phase part (possibly empty).
 */
final class Isentrope {
    private static final double TRIPLE = NitrousOxide.TRIPLE_TEMPERATURE;
    private static final double CRITICAL = NitrousOxide.CRITICAL_TEMPERATURE;
    private static final double CRITICAL_ENTROPY =
            NitrousOxide.saturatedLiquid(CRITICAL).entropy();

    final FluidState stagnation;
    /** Temperature where the second phase first appears, K; NaN where it never does above the triple point. */
    final double saturationTemperature;
    /** True where the path meets the saturated liquid, false for saturated vapour. */
    final boolean fromLiquid;

    Isentrope(FluidState stagnation) {
        this.stagnation = stagnation;
        double entropy = stagnation.entropy();
        fromLiquid = entropy < CRITICAL_ENTROPY;
        saturationTemperature = stagnation.isSaturated() ? stagnation.temperature() : crossing(entropy);
    }

    private double crossing(double entropy) {
        if (entropy > NitrousOxide.saturatedVapour(TRIPLE).entropy()
                || entropy < NitrousOxide.saturatedLiquid(TRIPLE).entropy()) {
            return Double.NaN;
        }
        return Roots.find(t -> saturatedAt(t).entropy() - entropy, TRIPLE, CRITICAL, 1e-9);
    }

    /** Tells whether the path enters the two-phase region. */
    boolean flashes() {
        return !Double.isNaN(saturationTemperature);
    }

    /** The saturated phase the path comes from, at a temperature. */
    private FluidState saturatedAt(double temperature) {
        return fromLiquid ? NitrousOxide.saturatedLiquid(temperature) : NitrousOxide.saturatedVapour(temperature);
    }

    /** The single phase just before the second one appears. */
    FluidState atSaturation() {
        return saturatedAt(saturationTemperature);
    }

    /** Two-phase state on the path at a temperature at or below the saturation temperature. */
    FluidState mixtureAt(double temperature) {
        double liquid = NitrousOxide.saturatedLiquid(temperature).entropy();
        double vapour = NitrousOxide.saturatedVapour(temperature).entropy();
        double quality = (stagnation.entropy() - liquid) / (vapour - liquid);
        // the exact ends would give the sound speed of the phase alone, not that of the mixture
        return NitrousOxide.mixture(temperature, Math.min(Math.max(quality, 1e-12), 1 - 1e-12));
    }

    /** State on the path at a pressure. */
    FluidState atPressure(double pressure) {
        return NitrousOxide.atPressureEntropy(pressure, stagnation.entropy());
    }

    /** Velocity squared reached at a state of the path, m2/s2. */
    double velocitySquared(FluidState state) {
        double drop = stagnation.pressure() - state.pressure();
        if (drop < 1e-3 * stagnation.pressure()) {
            // h0 - h would cancel: integrate v dp by the trapezium instead
            return Math.max(0, drop * (stagnation.specificVolume() + state.specificVolume()));
        }
        return Math.max(0, 2 * (stagnation.enthalpy() - state.enthalpy()));
    }

    /** Velocity squared less sound speed squared: negative while a lower pressure still raises the flux. */
    double excess(FluidState state) {
        return velocitySquared(state) - state.soundSpeed() * state.soundSpeed();
    }

    /** Lowest pressure at which the equation of state still answers on this path, Pa. */
    double lowestPressure() {
        return flashes() ? NitrousOxide.TRIPLE_PRESSURE : lowestGasPressure();
    }

    private double lowestGasPressure() {
        double low = 1;
        double high = stagnation.pressure();
        double entropy = stagnation.entropy();
        if (NitrousOxide.atTemperaturePressure(TRIPLE, low).entropy() <= entropy) {
            return low;
        }
        return Roots.find(
                p -> NitrousOxide.atTemperaturePressure(TRIPLE, p).entropy() - entropy + 1e-6, low, high, 1e-3);
    }
}
