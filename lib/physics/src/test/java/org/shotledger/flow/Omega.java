package org.shotledger.flow;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * The omega method for nitrous oxide: closed forms of {@link OmegaFlow} with one isentropic flash to 90 %.
 *
 * <p>Source: API Standard 520 Part I annex C; ISO 4126-10. Range stated by the standard: reduced temperature up to 0.9; the
 * 90 % flash still follows homogeneous equilibrium within 1 % for saturated liquid to 293 K. Known error: that of
 * {@link HomogeneousEquilibrium} plus 1 %; several per cent near the critical point.
 */
public final class Omega {
    private static final double FLASH = 0.9;

    private Omega() {}

    /**
     * The closed form that fits a stagnation state.
     *
     * @param stagnation liquid, mixture or vapour at rest
     * @return parameter set of the method
     */
    public static OmegaFlow of(FluidState stagnation) {
        double saturation = saturationPressure(stagnation);
        double flashed = NitrousOxide.atPressureEntropy(FLASH * saturation, stagnation.entropy())
                .specificVolume();
        double omega = OmegaFlow.fromFlash(stagnation.specificVolume(), flashed);
        return new OmegaFlow(omega, stagnation.pressure(), saturation / stagnation.pressure(), stagnation.density());
    }

    private static double saturationPressure(FluidState state) {
        boolean compressedLiquid = !state.isSaturated() && state.temperature() < NitrousOxide.CRITICAL_TEMPERATURE;
        if (!compressedLiquid) {
            return state.pressure();
        }
        return Math.min(state.pressure(), NitrousOxide.saturationPressure(state.temperature()));
    }

    /**
     * Largest flux from a stagnation state.
     *
     * @param stagnation state upstream at rest
     * @return the throat with its flux, kg/(m2 s)
     */
    public static Throat criticalFlux(FluidState stagnation) {
        OmegaFlow flow = of(stagnation);
        return throat(stagnation, flow, flow.criticalRatio(), true);
    }

    /**
     * Flux to a downstream pressure, limited at choking.
     *
     * @param stagnation state upstream at rest
     * @param downstreamPressure absolute pressure behind the hole, Pa
     * @return flux, kg/(m2 s)
     */
    public static double massFlux(FluidState stagnation, double downstreamPressure) {
        Checks.behind("Omega flow", downstreamPressure);
        return of(stagnation).flux(downstreamPressure);
    }

    private static Throat throat(FluidState stagnation, OmegaFlow flow, double ratio, boolean choked) {
        FluidState state = NitrousOxide.atPressureEntropy(ratio * stagnation.pressure(), stagnation.entropy());
        double flux = flow.fluxAt(ratio);
        double density = stagnation.density() / flow.volumeRatio(ratio);
        Choking choking = choked ? Choking.SONIC : Choking.NONE;
        if (choked && flow.saturationRatio() < 1 && flow.highlySubcooled()) {
            choking = Choking.FLASH_INCEPTION;
        }
        return new Throat(
                flux, state.pressure(), state.temperature(), state.quality(), density, flux / density, choking);
    }
}
