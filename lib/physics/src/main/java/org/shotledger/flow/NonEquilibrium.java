package org.shotledger.flow;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * Non-homogeneous non-equilibrium blend of incompressible and homogeneous-equilibrium flow.
 *
 * <p>{@code G = k/(1+k) G_SPI + 1/(1+k) G_HEM}, {@code k = sqrt((p1 - p2)/(pv - p2))}. Sources: Dyer et al., AIAA 2007-5702,
 * with the weights as corrected by B. J. Solomon, MSc report, Utah State University (2011). Above the saturation pressure no
 * bubble forms and the incompressible flux stands alone. <b>Cap:</b> the published blend keeps rising as p2 falls, because the
 * incompressible part knows no choking; here both parts are frozen at the pressure where homogeneous equilibrium chokes. Range:
 * liquid or little-flashed inlet, short holes. Known error: with the measured liquid discharge coefficient -10 to +2 % on the
 * choked points of AIAA 2013-3636; uncapped it over-predicts by tens of per cent.
 */
public final class NonEquilibrium implements OrificeFlow {
    /** The model as a swappable part. */
    public static final NonEquilibrium MODEL = new NonEquilibrium();

    private NonEquilibrium() {}

    /**
     * Flux at choking.
     *
     * @param stagnation state upstream at rest
     * @return the throat; density and quality are those of homogeneous equilibrium there
     */
    public static Throat criticalFlux(FluidState stagnation) {
        return blend(stagnation, HomogeneousEquilibrium.criticalFlux(stagnation));
    }

    /**
     * Flux to a downstream pressure, capped where homogeneous equilibrium chokes.
     *
     * @param stagnation state upstream at rest
     * @param downstreamPressure absolute pressure behind the hole, Pa
     * @return flux, kg/(m2 s)
     */
    public static double massFlux(FluidState stagnation, double downstreamPressure) {
        return blend(stagnation, HomogeneousEquilibrium.throatAt(stagnation, downstreamPressure))
                .massFlux();
    }

    private static Throat blend(FluidState stagnation, Throat equilibrium) {
        double pressure = equilibrium.pressure();
        double liquidFlux = Incompressible.massFlux(stagnation.density(), stagnation.pressure(), pressure);
        double weight = liquidWeight(stagnation, pressure);
        double flux = weight * liquidFlux + (1 - weight) * equilibrium.massFlux();
        return new Throat(
                flux,
                pressure,
                equilibrium.temperature(),
                equilibrium.quality(),
                equilibrium.density(),
                flux / equilibrium.density(),
                equilibrium.choking());
    }

    /** k/(1+k); 0 for a gas, which has no liquid to boil late. */
    private static double liquidWeight(FluidState stagnation, double pressure) {
        double saturation = stagnation.pressure();
        if (!stagnation.isSaturated()) {
            if (stagnation.temperature() >= NitrousOxide.CRITICAL_TEMPERATURE) {
                return 0;
            }
            saturation = NitrousOxide.saturationPressure(stagnation.temperature());
            if (saturation > stagnation.pressure()) {
                return 0;
            }
        }
        if (stagnation.quality() == 1) {
            return 0;
        }
        if (pressure >= saturation) {
            return 1;
        }
        double k = Math.sqrt((stagnation.pressure() - pressure) / (saturation - pressure));
        return k / (1 + k);
    }

    @Override
    public String title() {
        return "non-equilibrium blend (Dyer, Solomon), capped";
    }

    @Override
    public String knownError() {
        return "10 % with the measured liquid discharge coefficient";
    }

    @Override
    public double flux(FluidState stagnation, double downstreamPressure) {
        return massFlux(stagnation, downstreamPressure);
    }

    @Override
    public Throat throat(FluidState stagnation, double downstreamPressure) {
        return blend(stagnation, HomogeneousEquilibrium.throatAt(stagnation, downstreamPressure));
    }
}
