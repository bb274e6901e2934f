package org.shotledger.flow;

/**
 * A class of hole: shape of the edge and what stands before it, with its coefficient and predictive band.
 *
 * <p>The bands are leave-one-source-out errors of {@link ClassLaw}: each source of measured flow is predicted by constants
 * fitted without it, and at least nine in ten of its points lie inside. The table stands in
 * {@code measured-holes.md} beside this class; a test makes it anew from the measured points and holds these constants to it.
 *
 * @param edge shape of the edge
 * @param inlet what stands before the hole
 */
public record HoleClass(Edge edge, Inlet inlet) {
    /**
     * The words a reader sees.
     *
     * @return for example {@code "square edge, two-phase inlet"}
     */
    public String title() {
        return edge.words() + ", " + inlet.words();
    }

    /**
     * The predictive band of a hole of this class.
     *
     * @return relative to the best estimate
     */
    public FlowBand band() {
        return switch (edge) {
            case ROUNDED -> rounded();
            case SQUARE -> square();
            case UNKNOWN -> unknown();
        };
    }

    private FlowBand rounded() {
        return switch (inlet) {
            case SUBCOOLED -> relative(0.71, 1.28);
            case SATURATED -> relative(0.65, 1.35);
            case DENSE -> relative(0.75, 1.28);
            // never measured: as an unknown hole, and more for boiling as late as from liquid
            case TWO_PHASE, VAPOUR -> unknown();
        };
    }

    private FlowBand square() {
        return switch (inlet) {
            case SUBCOOLED -> relative(0.75, 1.35);
            // orifices of 1 mm, 3.2 and 5 bores long, passed 0.81 to 0.87 of the ideal flow of dense carbon dioxide (J.
            // Supercritical
            // Fluids 88 (2014) 17, abstract; edge not told there), 1.3 to 1.4 times the square edge's coefficient
            case DENSE -> relative(0.75, 1.45);
            case SATURATED, TWO_PHASE -> relative(0.65, 1.45);
            case VAPOUR -> unknown();
        };
    }

    private FlowBand unknown() {
        return switch (inlet) {
            case SUBCOOLED, DENSE -> relative(0.70, 1.45);
            case SATURATED -> relative(0.55, 1.80);
            case TWO_PHASE -> relative(0.65, 1.80);
            case VAPOUR -> relative(0.65, 1.35);
        };
    }

    private static FlowBand relative(double low, double high) {
        return new FlowBand(low, 1, high);
    }
}
