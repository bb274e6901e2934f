package org.shotledger.flow;

import org.shotledger.fluid.FluidState;

/**
 * Liquid that does not flash: {@code G = sqrt(2 rho (p1 - p2))}.
 *
 * <p>Source: Bernoulli's equation; any handbook. Range: downstream pressure well above the saturation pressure. Known error:
 * with a measured discharge coefficient 3 %; for saturated nitrous oxide to manifold pressure it gives about three times
 * the real flow, because it knows no choking.
 */
public final class Incompressible implements OrificeFlow {
    /** The model as a swappable part. */
    public static final Incompressible MODEL = new Incompressible();

    private Incompressible() {}

    /**
     * Ideal mass flux of a liquid.
     *
     * @param density density upstream, kg/m3, above 0
     * @param pressure pressure upstream, Pa
     * @param downstreamPressure pressure downstream, Pa; at or above upstream gives zero
     * @return mass flux, kg/(m2 s)
     */
    public static double massFlux(double density, double pressure, double downstreamPressure) {
        Checks.positive("Incompressible flow", "density", density, "kg/m3");
        Checks.behind("Incompressible flow", downstreamPressure);
        return Math.sqrt(2 * density * Math.max(0, pressure - downstreamPressure));
    }

    @Override
    public String title() {
        return "incompressible liquid";
    }

    @Override
    public String knownError() {
        return "3 % without flashing; up to 200 % too high where nitrous oxide flashes";
    }

    @Override
    public double flux(FluidState stagnation, double downstreamPressure) {
        return massFlux(stagnation.density(), stagnation.pressure(), downstreamPressure);
    }

    @Override
    public Throat throat(FluidState stagnation, double downstreamPressure) {
        double flux = flux(stagnation, downstreamPressure);
        return new Throat(
                flux,
                Math.min(downstreamPressure, stagnation.pressure()),
                stagnation.temperature(),
                stagnation.quality(),
                stagnation.density(),
                flux / stagnation.density(),
                Choking.NONE);
    }
}
