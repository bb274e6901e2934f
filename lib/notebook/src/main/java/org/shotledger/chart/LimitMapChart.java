package org.shotledger.chart;

import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * One result over two choices, where every limit is kept, and which limits end that region.
 *
 * @param title what is shown
 * @param xName the choice along the horizontal axis
 * @param xKind its kind
 * @param yName the choice along the vertical axis
 * @param yKind its kind
 * @param valueName the result that has lines of equal value
 * @param valueKind its kind
 * @param x values along the horizontal axis, SI, increasing
 * @param y values along the vertical axis, SI, increasing
 * @param value the result, {@code value[j][i]} at y j and x i, SI
 * @param safe where every limit is kept, indexed in the same way
 * @param levels results to draw a line for, SI
 * @param bounds the limits that end the safe region
 * @param places combinations to be named on the map
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record LimitMapChart(
        String title,
        String xName,
        QuantityKind xKind,
        String yName,
        QuantityKind yKind,
        String valueName,
        QuantityKind valueKind,
        double[] x,
        double[] y,
        double[][] value,
        boolean[][] safe,
        double[] levels,
        List<DriftMapChart.Bound> bounds,
        List<Place> places) {

    /**
     * A combination on the map.
     *
     * @param name what is written beside it
     * @param x its place, SI
     * @param y its place, SI
     */
    public record Place(String name, double x, double y) {}

    /** Copies the lists. */
    @SuppressWarnings("doclint:missing")
    public LimitMapChart {
        bounds = List.copyOf(bounds);
        places = List.copyOf(places);
    }

    /**
     * Draws lines of equal result over the region in which every limit is kept.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        LimitField field = new LimitField(x, y, value, safe, levels, bounds);
        Axis xAxis = new Axis(xName, xKind, system);
        Axis yAxis = new Axis(yName, yKind, system);
        String alt = "Lines of " + valueName + " over " + xName + " and " + yName + "; every limit is kept in "
                + QuantityKind.FRACTION.text(field.keptShare(), system) + " of the map.";
        Plot plot = Plot.of("limit-map", title, alt, xAxis, yAxis).height(480);
        field.draw(plot, xAxis, yAxis, level -> valueKind.text(level, system));
        if (!places.isEmpty()) {
            plot.add(
                    "named combinations",
                    places.stream().mapToDouble(Place::x).toArray(),
                    places.stream().mapToDouble(Place::y).toArray(),
                    Look.FIRST,
                    Plot.Style.POINTS,
                    false);
        }
        places.forEach(place -> plot.strongLabel(place.name, place.x, place.y));
        return plot.picture();
    }
}
