package org.shotledger.job;

import static org.shotledger.units.QuantityKind.RATIO;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.shotledger.flow.Edge;
import org.shotledger.flow.NitrousJet;
import org.shotledger.flow.OrificeLaw;
import org.shotledger.nitrous.FuelJet;
import org.shotledger.sheet.SheetSection;

/** Reads what kind of hole the jets of either side are: edge, length, stated coefficient and, for nitrous oxide, the law. */
final class JetSections {
    /** From this many bores of length a square-edged hole runs full. */
    private static final double RUNS_FULL = 2;

    /** Up to this many its coefficient was measured. */
    private static final double LONGEST = 10;

    private static final String LONG = "long";
    private static final Map<String, Edge> EDGES = edges();
    private static final Map<String, OrificeLaw> LAWS = laws();

    private JetSections() {}

    private record Hole(Edge edge, double lengthToBore) {}

    static NitrousJet nitrous(SheetSection s) {
        double coefficient = s.has("jet-discharge-coefficient")
                ? s.figure("jet-discharge-coefficient", RATIO, 0.1, 1.2)
                : Double.NaN;
        Hole hole = hole(s);
        OrificeLaw law = s.choiceOr("flow-law", LAWS, "class", "the class of hole, from measured flows");
        boolean covered = hole.lengthToBore >= RUNS_FULL && hole.lengthToBore <= LONGEST;
        if (law == OrificeLaw.LONG_ORIFICE && !covered) {
            s.report(
                    "flow-law",
                    "The law \"long-orifice\" covers jets 2 to 10 bores long; state jet-length-over-bore within it, or"
                            + " choose \"class\".");
        }
        return new NitrousJet("nitrous jet", 0, hole.lengthToBore, hole.edge, coefficient, law, Optional.empty(), 0);
    }

    static FuelJet fuel(SheetSection s) {
        double coefficient =
                s.has("jet-discharge-coefficient") ? s.figure("jet-discharge-coefficient", RATIO, 0.1, 1) : Double.NaN;
        Hole hole = hole(s);
        return new FuelJet(hole.edge, hole.lengthToBore, coefficient, Optional.empty(), 0);
    }

    private static Hole hole(SheetSection s) {
        Edge edge = s.choiceOr("jet-edge", EDGES, "unknown", "nobody has looked: the widest band");
        boolean stated = s.has("jet-length-over-bore");
        double length = stated ? s.figure("jet-length-over-bore", RATIO, 0, 100) : Double.NaN;
        boolean full = length >= RUNS_FULL || (stated && Double.isNaN(length));
        if (s.has("jet-edge") && s.text("jet-edge").equals(LONG) && !full) {
            s.report(
                    "jet-edge",
                    "A long jet is a square-edged one that runs full, from 2 bores of length on; state such a"
                            + " jet-length-over-bore, or write \"square\".");
        }
        return new Hole(edge, length);
    }

    private static Map<String, Edge> edges() {
        Map<String, Edge> edges = new LinkedHashMap<>();
        edges.put("square", Edge.SQUARE);
        edges.put("rounded", Edge.ROUNDED);
        edges.put(LONG, Edge.SQUARE);
        edges.put("unknown", Edge.UNKNOWN);
        return edges;
    }

    private static Map<String, OrificeLaw> laws() {
        Map<String, OrificeLaw> laws = new LinkedHashMap<>();
        OrificeLaw.all().forEach(law -> laws.put(law.name().replace(' ', '-'), law));
        return laws;
    }
}
