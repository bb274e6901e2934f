package org.shotledger.flow;

import org.shotledger.fluid.FluidState;

/**
 * One part of a feed path between bottle and intake.
 *
 * <p>A part maps the stagnation state before it to the stagnation pressure behind it at a given flow; enthalpy is conserved
 * (adiabatic). The velocity head at the end of each part is lost.
 */
public sealed interface FeedElement permits Tube, LocalLoss, FlowValve, Orifice, NitrousJet, Manifold {

    /**
     * Name in reports.
     *
     * @return the name given by the user
     */
    String name();

    /**
     * Inside volume, for the hold-up.
     *
     * @return volume, m3
     */
    double volume();

    /**
     * Stagnation pressure behind the part.
     *
     * @param inlet stagnation state before it
     * @param massFlow flow through it, kg/s, zero or above
     * @return absolute pressure, Pa, or NaN when the part chokes below this flow
     */
    double outletPressure(FluidState inlet, double massFlow);

    /**
     * How much the part falls short of a flow that chokes it.
     *
     * @param inlet stagnation state before it
     * @param massFlow flow asked for, kg/s
     * @return largest possible flow less the flow asked for, kg/s, zero or below; an estimate is enough, its sign is exact
     */
    double shortfall(FluidState inlet, double massFlow);

    /**
     * Tells why nothing can flow at all.
     *
     * @return a sentence, or an empty text when the part is open
     */
    default String blocked() {
        return "";
    }
}
