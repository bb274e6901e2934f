package org.shotledger.flow;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.shotledger.fluid.FluidState;

/**
 * One measured choked flow, as a share of homogeneous-equilibrium flow of the same fluid from the same inlet state. The table
 * {@code measured-holes.csv} names the sources and how each was read.
 *
 * @param source short name of the source
 * @param fluid the fluid
 * @param edge shape of the edge
 * @param lengthToBore length over diameter; NaN when not published
 * @param bore diameter, m
 * @param reducedTemperature temperature before the hole over critical temperature
 * @param aboveBoiling pressure over boiling pressure; over critical pressure above the critical temperature
 * @param quality vapour mass fraction before the hole, 0 to 1
 * @param share measured flow over equilibrium flow
 */
public record MeasuredHole(
        String source,
        String fluid,
        Edge edge,
        double lengthToBore,
        double bore,
        double reducedTemperature,
        double aboveBoiling,
        double quality,
        double share) {
    private static final String TABLE = "measured-holes.csv";

    /**
     * All measured points.
     *
     * @return in the order of the table
     */
    public static List<MeasuredHole> all() {
        try (var stream = MeasuredHole.class.getResourceAsStream(TABLE);
                var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .map(MeasuredHole::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The points measured on the nearest class of hole: what stands before the hole must be of the same kind, and the edge
     * the same when it is known; with no such point, all of that inlet.
     *
     * @param edge shape of the edge
     * @param inlet state at rest before the hole
     * @return the points, empty when the inlet was never measured
     */
    public static List<MeasuredHole> nearest(Edge edge, FluidState inlet) {
        List<MeasuredHole> same =
                all().stream().filter(p -> p.inlet() == Inlet.of(inlet)).toList();
        List<MeasuredHole> own = same.stream().filter(p -> p.edge() == edge).toList();
        return own.isEmpty() || edge == Edge.UNKNOWN ? same : own;
    }

    /**
     * Tells whether the state is that of the bottle, the line to the hole being part of what was measured.
     *
     * @return true for nitrous oxide liquid through a hole of which only the bore was published
     */
    public boolean atTheEndOfALine() {
        return fluid.equals("N2O") && edge == Edge.UNKNOWN && quality == 0;
    }

    /**
     * What stands before the hole.
     *
     * @return its kind
     */
    public Inlet inlet() {
        if (quality > 0) {
            return quality < 1 ? Inlet.TWO_PHASE : Inlet.VAPOUR;
        }
        if (reducedTemperature >= 1) {
            return Inlet.DENSE;
        }
        return aboveBoiling >= Inlet.SUBCOOLED_FROM ? Inlet.SUBCOOLED : Inlet.SATURATED;
    }

    private static MeasuredHole of(String[] cell) {
        return new MeasuredHole(
                cell[0],
                cell[1],
                Edge.valueOf(cell[2].toUpperCase(Locale.ROOT)),
                cell[3].isEmpty() ? Double.NaN : Double.parseDouble(cell[3]),
                1e-3 * Double.parseDouble(cell[4]),
                Double.parseDouble(cell[5]),
                Double.parseDouble(cell[6]),
                Double.parseDouble(cell[7]),
                Double.parseDouble(cell[8]));
    }
}
