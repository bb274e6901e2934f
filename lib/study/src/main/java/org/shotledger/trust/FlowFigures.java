package org.shotledger.trust;

import java.nio.file.Path;
import java.util.List;
import org.shotledger.flow.Edge;
import org.shotledger.flow.FlowBand;
import org.shotledger.flow.JetFlow;
import org.shotledger.flow.LeftOutHole;
import org.shotledger.flow.NitrousJet;
import org.shotledger.fluid.NitrousOxide;

/** Measured flow through holes against the class law. */
final class FlowFigures {
    private static final double BORE = 1.5e-3;
    private static final double LENGTH = 18.4 / 1.5;

    private FlowFigures() {}

    /** Every measured hole, its source left out of the fit; as its own class, or as a hole of which only the bore is known. */
    static List<Comparison> leftOut(boolean unknown) {
        return LeftOutHole.all().stream()
                .filter(hole -> (hole.as().edge() == Edge.UNKNOWN) == unknown)
                .map(hole -> new Comparison(
                        hole.hole().source(),
                        hole.hole().fluid() + ", " + hole.as().title() + ", at "
                                + hole.hole().reducedTemperature() + " of the critical temperature",
                        hole.hole().share(),
                        hole.predicted(),
                        reciprocal(hole.as().band())))
                .toList();
    }

    /** Every point of one measured hole, choked and not, with the law as it is. */
    static List<Comparison> oneHole(Path data) {
        NitrousJet hole = new NitrousJet("measured hole", BORE, LENGTH, Edge.ROUNDED, Double.NaN);
        return Cells.of(data.resolve("measured/orifice-flow.csv")).stream()
                .filter(row -> Double.parseDouble(row.get(3)) > 0)
                .map(row -> point(hole, row))
                .toList();
    }

    private static Comparison point(NitrousJet hole, List<String> row) {
        double before = 1e6 * Double.parseDouble(row.get(0));
        double behind = 1e6 * Double.parseDouble(row.get(2));
        JetFlow flow = hole.flow(NitrousOxide.atTemperaturePressure(Double.parseDouble(row.get(1)), before), behind);
        FlowBand band = new FlowBand(flow.low() / flow.massFlow(), 1, flow.high() / flow.massFlow());
        return new Comparison(
                "AIAA 2013-3636",
                "flow from " + row.get(0) + " MPa to " + row.get(2) + " MPa",
                Double.parseDouble(row.get(3)),
                flow.massFlow(),
                reciprocal(band));
    }

    /** A band of measured over predicted as one of predicted over measured. */
    private static FlowBand reciprocal(FlowBand band) {
        return new FlowBand(1 / band.high(), 1 / band.best(), 1 / band.low());
    }
}
