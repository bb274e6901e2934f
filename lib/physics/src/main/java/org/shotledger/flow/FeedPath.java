package org.shotledger.flow;

import java.util.List;
import java.util.function.UnaryOperator;
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
        return massFlow(bottleLiquid, downstreamPressure, 0);
    }

    /**
     * Solves only the total flow, in half the time where it is nearly known.
     *
     * @param bottleLiquid state at rest at the path's inlet
     * @param downstreamPressure absolute pressure behind the jets, Pa
     * @param near what the flow may be, kg/s, for example extrapolated from neighbouring states; 0 for no guess. It does not move the result
     * @return flow, kg/s; zero when a part is closed or the pressure behind is not lower
     */
    public double massFlow(FluidState bottleLiquid, double downstreamPressure, double near) {
        return FeedSolver.massFlow(this, bottleLiquid, covered(bottleLiquid, downstreamPressure), near);
    }

    /**
     * The equation of state ends at the triple pressure, 87.8 kPa. Far above it every path is choked at its last hole, so a
     * lower pressure behind, such as intake vacuum, changes nothing and is taken as one the equation covers.
     */
    private static double covered(FluidState inlet, double downstreamPressure) {
        return inlet.pressure() > SURELY_CHOKED ? Math.max(downstreamPressure, COVERED) : downstreamPressure;
    }

    /**
     * The predictive band of the flow: the path solved with every hole at the lower, then at the upper end of its own band.
     * What the lines take damps it, so it is narrower than that of a hole alone.
     *
     * @param bottleLiquid state at rest at the path's inlet
     * @param downstreamPressure absolute pressure behind the jets, Pa
     * @return band relative to the flow of the path as it is, whose best is 1; 1 throughout when nothing flows
     */
    public FlowBand band(FluidState bottleLiquid, double downstreamPressure) {
        return band(bottleLiquid, downstreamPressure, massFlow(bottleLiquid, downstreamPressure));
    }

    FlowBand band(FluidState bottleLiquid, double downstreamPressure, double flow) {
        if (flow == 0) {
            return FlowBand.EXACT;
        }
        double low = at(-1).massFlow(bottleLiquid, downstreamPressure);
        double high = at(1).massFlow(bottleLiquid, downstreamPressure);
        return new FlowBand(Math.min(low / flow, 1), 1, Math.max(high / flow, 1));
    }

    /**
     * The same path with every hole taken elsewhere in its band. Where the jets were flow-tested only they move: the test was of the
     * whole path, so what the holes on the way are off by is in the factor it found.
     *
     * @param place -1 the lower end, 0 the best estimate, 1 the upper end; -3 to 3
     * @return new path
     */
    public FeedPath at(double place) {
        boolean tested = jets().stream().anyMatch(jet -> jet.measured().isPresent());
        return with(hole -> tested && hole.measured().isEmpty() ? hole : hole.at(place));
    }

    /** The same path with its holes changed, the ends of branches and the holes on the way. */
    FeedPath with(UnaryOperator<NitrousJet> change) {
        return new FeedPath(
                elements.stream().map(element -> changed(element, change)).toList());
    }

    private static FeedElement changed(FeedElement element, UnaryOperator<NitrousJet> change) {
        if (element instanceof NitrousJet jet) {
            return change.apply(jet);
        }
        if (element instanceof Orifice orifice) {
            return new Orifice(change.apply(orifice.hole()), orifice.lineBore());
        }
        if (element instanceof Manifold block) {
            return block.with(change);
        }
        return element;
    }

    /**
     * The holes that meter at the ends of the path; of a jet and the nozzle's passage behind it the narrower.
     *
     * @return in the order of the branches; empty for an open end
     */
    public List<NitrousJet> jets() {
        if (last() instanceof Manifold block) {
            return block.branches().stream().flatMap(b -> b.jets().stream()).toList();
        }
        if (!(last() instanceof NitrousJet end)) {
            return List.of();
        }
        int before = elements.size() - 2;
        boolean narrower = before >= 0
                && leadsIntoPassage(before)
                && ((Orifice) elements.get(before)).hole().bore() <= end.bore();
        return List.of(narrower ? ((Orifice) elements.get(before)).hole() : end);
    }

    /** A jet whose line behind is the last hole itself, the nozzle's passage. */
    boolean leadsIntoPassage(int at) {
        return at == elements.size() - 2
                && elements.get(at) instanceof Orifice jet
                && last() instanceof NitrousJet passage
                && passage.bore() == jet.lineBore();
    }

    FeedElement last() {
        return elements.get(elements.size() - 1);
    }
}
