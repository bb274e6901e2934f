package org.shotledger.risk;

import java.util.Optional;
import org.shotledger.curve.Bracket;
import org.shotledger.limits.Limit;

/**
 * Where the safe region ends when one input strays and the others stay as planned.
 *
 * @param input the input
 * @param up true when it rises
 * @param value its last value at which every limit is kept, SI
 * @param distance from the plan in half-widths of the expected band, 0 or more
 * @param limit the limit that breaks beyond; empty when the models end there or no edge was found
 * @param found false when every limit is still kept at the last value the models cover
 * @param beyond what happens beyond: the limit's consequence or why the models end
 * @param reason the physics that leads there
 */
public record DriftEdge(
        Drifting input,
        boolean up,
        double value,
        double distance,
        Optional<Limit> limit,
        boolean found,
        String beyond,
        String reason) {
    /** Of the band: closer than any gauge reads. */
    private static final double CLOSE = 1e-4;

    /** First step, in bands, growing by 1.3: our choice. */
    private static final double STEP = 0.25;
    /** Bands beyond which no edge is looked for: our choice. */
    private static final double FURTHEST = 40;

    /**
     * Finds the edge.
     *
     * @param drift the model
     * @param input which input strays
     * @param up true for rising
     * @return the edge; at the plan itself when the plan breaks a limit
     */
    public static DriftEdge find(Drift drift, Drifting input, boolean up) {
        double start = input.planned(drift);
        double band = input.band(drift);
        double inside = start;
        double outside = Double.NaN;
        if (!input.safe(drift, start)) {
            outside = start;
        }
        for (double r = STEP; Double.isNaN(outside) && r <= FURTHEST; r *= 1.3) {
            double value = input.clip(drift, start + (up ? r : -r) * band);
            if (!input.safe(drift, value)) {
                outside = value;
            } else if (value == inside) {
                return new DriftEdge(
                        input,
                        up,
                        value,
                        Math.abs(value - start) / band,
                        Optional.empty(),
                        false,
                        "",
                        input.reason(up));
            } else {
                inside = value;
            }
        }
        Bracket.Edge edge = Bracket.edge(value -> input.safe(drift, value), inside, outside, CLOSE * band);
        FaultOutcome beyond = input.at(drift, edge.outside());
        return new DriftEdge(
                input,
                up,
                edge.inside(),
                Math.abs(edge.inside() - start) / band,
                beyond.first(),
                true,
                beyond.first().map(Limit::consequence).orElse(beyond.refusal()),
                input.reason(up));
    }
}
