package org.shotledger.flow;

import org.shotledger.fluid.FluidState;

/**
 * A model of the flow through a hole, per unit of effective area (discharge coefficient 1).
 *
 * <p>Every implementation is one published model in one class whose Javadoc names its source, range and known error. The
 * flux never falls when the downstream pressure is lowered.
 */
public sealed interface OrificeFlow
        permits HomogeneousEquilibrium, NonEquilibrium, Omega, HenryFauske, Incompressible, IsentropicGas {

    /**
     * Name of the model for reports.
     *
     * @return a short name, never empty
     */
    String title();

    /**
     * What the model is known to miss by.
     *
     * @return one phrase for a report
     */
    String knownError();

    /**
     * Ideal mass flux.
     *
     * @param stagnation state upstream at rest
     * @param downstreamPressure absolute pressure behind the hole, Pa; at or above the stagnation pressure gives zero
     * @return mass flux, kg/(m2 s)
     */
    double flux(FluidState stagnation, double downstreamPressure);

    /**
     * State at the narrowest section.
     *
     * @param stagnation state upstream at rest
     * @param downstreamPressure absolute pressure behind the hole, Pa
     * @return throat with its mass flux
     */
    Throat throat(FluidState stagnation, double downstreamPressure);
}
