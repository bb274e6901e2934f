package org.shotledger.chart;

import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * How the mixture, or another result, drifts when the bottle and the fuel pressure are not what they should be, and where that is safe.
 *
 * @param bottlePressure bottle pressures, Pa absolute, increasing
 * @param fuelPressure pressures of the nitrous fuel, Pa gauge, increasing
 * @param field what is drawn as lines
 * @param safe where every limit is kept, indexed in the same way
 * @param setBottlePressure the bottle pressure of the plan, Pa absolute
 * @param setFuelPressure the fuel pressure of the plan, Pa gauge
 * @param bandBottlePressure half-width of the expected band of bottle pressure, Pa; 0 to draw none
 * @param bandFuelPressure half-width of the expected band of fuel pressure, Pa
 * @param bounds the limits that end the safe region
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record DriftMapChart(
        double[] bottlePressure,
        double[] fuelPressure,
        Field field,
        boolean[][] safe,
        double setBottlePressure,
        double setFuelPressure,
        double bandBottlePressure,
        double bandFuelPressure,
        List<Bound> bounds) {

    /**
     * A result over the map.
     *
     * @param title of the chart
     * @param symbol written before each level, for example {@code "\u03bb "}
     * @param kind what it measures
     * @param values {@code values[j][i]} at fuel pressure j and bottle pressure i, SI
     * @param levels values to draw a line for, SI
     */
    public record Field(String title, String symbol, QuantityKind kind, double[][] values, double[] levels) {}

    /**
     * A limit over the map.
     *
     * @param name the limit in words, written on its line
     * @param margin room left to it, indexed like the field, positive where it is kept; not-a-number where it is not to be drawn
     */
    public record Bound(String name, double[][] margin) {}

    public DriftMapChart {
        bounds = List.copyOf(bounds);
    }

    /**
     * Draws lines of equal lambda over the safe region and the point of the plan.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        Scale x = new Scale("Bottle pressure", QuantityKind.ABSOLUTE_PRESSURE, system);
        Scale y = new Scale("Pressure of the nitrous fuel", QuantityKind.GAUGE_PRESSURE, system);
        Plot plot = Plot.of("drift-map", field.title, alt(system), x, y).height(350);
        limits().draw(plot, x, y, level -> field.symbol + words(level, system));
        if (bandBottlePressure > 0) {
            plot.mark(new ContourMark("", frame(x, y), false));
        }
        plot.add(
                bandBottlePressure > 0 ? "the plan in its expected band" : "the plan",
                new double[] {setBottlePressure},
                new double[] {setFuelPressure},
                Look.FIRST,
                Plot.Style.POINTS,
                false);
        return plot.strongLabel("the plan", setBottlePressure, setFuelPressure).picture();
    }

    private String words(double level, UnitSystem system) {
        return field.kind == QuantityKind.RATIO
                ? field.kind.number(level, system).replaceFirst("0$", "")
                : field.kind.text(level, system).replaceFirst("\\.0+(?= )", "");
    }

    private List<Contour.Piece> frame(Scale x, Scale y) {
        double left = x.shown(setBottlePressure - bandBottlePressure);
        double right = x.shown(setBottlePressure + bandBottlePressure);
        double low = y.shown(setFuelPressure - bandFuelPressure);
        double high = y.shown(setFuelPressure + bandFuelPressure);
        return List.of(
                new Contour.Piece(left, low, right, low),
                new Contour.Piece(right, low, right, high),
                new Contour.Piece(right, high, left, high),
                new Contour.Piece(left, high, left, low));
    }

    private LimitField limits() {
        return new LimitField(bottlePressure, fuelPressure, field.values, safe, field.levels, bounds);
    }

    private String alt(UnitSystem system) {
        return "Every limit is kept in " + QuantityKind.FRACTION.text(limits().keptShare(), system)
                + " of the map's area; the plan stands at "
                + QuantityKind.ABSOLUTE_PRESSURE.text(setBottlePressure, system) + " in the bottle and "
                + QuantityKind.GAUGE_PRESSURE.text(setFuelPressure, system) + " at the fuel jet.";
    }
}
