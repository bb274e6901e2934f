package org.shotledger.chart;

import java.util.LinkedHashMap;
import java.util.Map;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Flow through the jets over the pressure of a bottle at rest, with its band, measured holes of the nearest class brought to the same
 * area, the plan's point, and a square root of the pressure drop for comparison.
 *
 * @param pressure bottle pressure, Pa, increasing
 * @param low lower end of the band, kg/s
 * @param best best estimate, kg/s
 * @param high upper end of the band, kg/s
 * @param squareRoot flow by the square root of the pressure drop through the plan's point, kg/s
 * @param measured pressure before the hole, Pa, and flow, kg/s, of measured holes, by source
 * @param planPressure bottle pressure of the plan, Pa
 * @param planFlow flow of the plan, kg/s
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record FlowOverPressureChart(
        double[] pressure,
        double[] low,
        double[] best,
        double[] high,
        double[] squareRoot,
        Map<String, double[][]> measured,
        double planPressure,
        double planFlow) {

    /** Keeps the order of the sources. */
    public FlowOverPressureChart {
        measured = new LinkedHashMap<>(measured);
    }

    /**
     * Draws it.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        int last = best.length - 1;
        String alt = String.format(
                java.util.Locale.ROOT,
                "From %s to %s in the bottle the flow rises by %.0f %%, by a square root of the pressure drop it would by %.0f %%;"
                        + " nine times out of ten it lies from %.0f %% below the line to %.0f %% above it.",
                QuantityKind.ABSOLUTE_PRESSURE.text(pressure[0], system),
                QuantityKind.ABSOLUTE_PRESSURE.text(pressure[last], system),
                100 * (best[last] / best[0] - 1),
                100 * (squareRoot[last] / squareRoot[0] - 1),
                100 * (1 - low[last] / best[last]),
                100 * (high[last] / best[last] - 1));
        Plot plot = Plot.of(
                "flow-over-bottle-pressure",
                "Nitrous oxide over bottle pressure",
                alt,
                new Scale("Bottle pressure, or before a measured hole", QuantityKind.ABSOLUTE_PRESSURE, system),
                new Scale("Mass flow", QuantityKind.MASS_FLOW, system));
        plot.reach(Double.NaN, 0);
        plot.band("nine times out of ten", pressure, low, high, Look.FIRST, false);
        plot.line("expected", pressure, best);
        plot.line("square root, for comparison", pressure, squareRoot);
        measured.forEach((source, points) -> plot.points("measured: " + source, points[0], points[1]));
        return plot.label("the plan", planPressure, planFlow).picture();
    }
}
