package org.shotledger.flow;

import java.util.List;
import org.shotledger.fluid.FluidState;

/**
 * Parts in series from the bottle to a jet, or to a block whose branches end in jets.
 *
 * @param elements the parts in flow order; the last is a {@link NitrousJet}, a {@link Manifold}, or an open end
 */
public record FeedPath(List<FeedElement> elements) {
    /** Lowest pressure behind a path that is followed exactly, Pa. */
    private static final double COVERED = 100e3;

    /** Inlet pressure above which a hole is choked at that pressure, Pa. */
    private static final double SURELY_CHOKED = 400e3;

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException when empty, or when a jet or block stands before the end
     */
    public FeedPath {
        elements = List.copyOf(elements);
        if (elements.isEmpty()) {
            throw new IllegalArgumentException("A feed path has no parts; give it at least one.");
        }
        for (FeedElement element : elements.subList(0, elements.size() - 1)) {
            if (element instanceof NitrousJet || element instanceof Manifold) {
                throw new IllegalArgumentException("Feed path: " + element.name()
                        + " ends the path but is not its last part; move it to the end or use an Orifice.");
            }
        }
    }

    /**
     * Parts in flow order.
     *
     * @param elements parts, the last a jet, a block of branches, or an open end
     * @return the path
     */
    public static FeedPath of(FeedElement... elements) {
        return new FeedPath(List.of(elements));
    }

    /**
     * Solves the flow.
     *
     * @param bottleLiquid state at rest at the path's inlet
     * @param downstreamPressure absolute pressure behind the jets, Pa
     * @return flow, choking part, states along the path
     */
    public FeedFlow flow(FluidState bottleLiquid, double downstreamPressure) {
        Checks.notNegative("Feed path", "downstream pressure", downstreamPressure, "Pa");
        return FeedReport.of(this, bottleLiquid, covered(bottleLiquid, downstreamPressure));
    }

    /**
     * Solves only the total flow.
     *
     * @param bottleLiquid state at rest at the path's inlet
     * @param downstreamPressure absolute pressure behind the jets, Pa
     * @return flow, kg/s; zero when a part is closed or the pressure behind is not lower
     */
    public double massFlow(FluidState bottleLiquid, double downstreamPressure) {
        return FeedSolver.massFlow(this, bottleLiquid, covered(bottleLiquid, downstreamPressure));
    }

    /**
     * The equation of state ends at the triple pressure, 87.8 kPa. Far above it every path is choked at its last hole, so a
     * lower pressure behind, such as intake vacuum, changes nothing and is taken as one the equation covers.
     */
    private static double covered(FluidState inlet, double downstreamPressure) {
        return inlet.pressure() > SURELY_CHOKED ? Math.max(downstreamPressure, COVERED) : downstreamPressure;
    }

    FeedElement last() {
        return elements.get(elements.size() - 1);
    }
}
