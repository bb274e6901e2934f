package org.shotledger.flow;

import org.shotledger.fluid.FluidState;

/**
 * The flow of one hole from one inlet state over the pressure behind it. Both choking points are found once; after that a
 * pressure costs little.
 */
final class HoleCurve {
    private static final double TOLERANCE = 1e-7;

    private final double pressure;
    private final double liquidArea;
    private final double mixtureArea;
    private final HenryFauske.Expansion late;
    private final HomogeneousEquilibrium.Expansion equilibrium;

    HoleCurve(NitrousJet hole, FluidState inlet) {
        pressure = inlet.pressure();
        double share = hole.bore() == 0 ? 0 : HoleLaw.liquidShare(inlet);
        late = share > 0 ? HoleLaw.delayed(hole.lengthToBore()).expansion(inlet) : null;
        if (late == null) {
            share = 0;
        }
        liquidArea = share * hole.liquidCoefficient() * hole.area();
        mixtureArea = (1 - share) * hole.flashingCoefficient() * hole.area();
        equilibrium = share < 1 ? new HomogeneousEquilibrium.Expansion(inlet) : null;
    }

    /** Mass flow to a pressure behind, kg/s. */
    double flow(double behind) {
        if (behind >= pressure) {
            return 0;
        }
        double flow = late == null ? 0 : liquidArea * late.flux(behind);
        return equilibrium == null ? flow : flow + mixtureArea * equilibrium.flux(behind);
    }

    /** Pressure below which the flow no longer rises, Pa. */
    double chokingPressure() {
        double first = late == null ? Double.POSITIVE_INFINITY : late.chokingPressure();
        double second = equilibrium == null ? Double.POSITIVE_INFINITY : equilibrium.chokingPressure();
        return Math.min(first, second);
    }

    double largestFlow() {
        return flow(chokingPressure());
    }

    /** Pressure behind the hole at a flow; NaN when it chokes below. */
    double pressureAt(double massFlow) {
        if (massFlow <= 0) {
            return pressure;
        }
        double low = chokingPressure();
        double most = flow(low);
        if (most <= massFlow) {
            return Double.NaN;
        }
        // squares make the flow nearly linear in the pressure
        double wanted = massFlow * massFlow;
        return Roots.find(
                p -> {
                    double flow = flow(p);
                    return flow * flow - wanted;
                },
                low,
                most * most - wanted,
                pressure,
                -wanted,
                TOLERANCE * pressure);
    }
}
