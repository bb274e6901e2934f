package org.shotledger.chart;

import java.util.ArrayList;
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

    /** Copies the list. */
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
        Axis x = new Axis("Bottle pressure", QuantityKind.ABSOLUTE_PRESSURE, system);
        Axis y = new Axis("Pressure of the nitrous fuel", QuantityKind.GAUGE_PRESSURE, system);
        Plot plot = Plot.of("drift-map", field.title, alt(system), x, y)
                .height(480)
                .reach(bottlePressure[0], fuelPressure[0])
                .reach(bottlePressure[bottlePressure.length - 1], fuelPressure[fuelPressure.length - 1])
                .tight();
        plot.key("every limit kept", Look.THIRD, false);
        plot.key("a limit is broken", Look.SECOND, true);
        plot.regions(runs(true), Look.THIRD, false).regions(runs(false), Look.SECOND, true);
        for (double level : field.levels) {
            plot.mark(new ContourMark(
                    field.symbol + words(level, system),
                    Contour.at(x.shown(bottlePressure), y.shown(fuelPressure), field.values, level),
                    false));
        }
        for (Bound bound : bounds) {
            plot.mark(new ContourMark(
                    bound.name, Contour.at(x.shown(bottlePressure), y.shown(fuelPressure), bound.margin, 0), true));
        }
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

    private List<Contour.Piece> frame(Axis x, Axis y) {
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

    /** One rectangle for each run of neighbours with the same answer; a sample speaks for the half cells around it. */
    private List<double[][]> runs(boolean wanted) {
        List<double[][]> runs = new ArrayList<>();
        for (int j = 0; j < fuelPressure.length; j++) {
            int start = 0;
            for (int i = 1; i <= bottlePressure.length; i++) {
                if (i == bottlePressure.length || safe[j][i] != safe[j][start]) {
                    if (safe[j][start] == wanted) {
                        runs.add(rectangle(start, i - 1, j));
                    }
                    start = i;
                }
            }
        }
        return runs;
    }

    private double[][] rectangle(int first, int last, int row) {
        double left = edge(bottlePressure, first);
        double right = edge(bottlePressure, last + 1);
        double low = edge(fuelPressure, row);
        double high = edge(fuelPressure, row + 1);
        return new double[][] {{left, right, right, left}, {low, low, high, high}};
    }

    private static double edge(double[] grid, int index) {
        int n = grid.length;
        if (index == 0) {
            return grid[0];
        }
        return index == n ? grid[n - 1] : (grid[index - 1] + grid[index]) / 2;
    }

    private String alt(UnitSystem system) {
        int kept = 0;
        int all = 0;
        for (boolean[] row : safe) {
            for (boolean cell : row) {
                all++;
                kept += cell ? 1 : 0;
            }
        }
        return "Every limit is kept in " + QuantityKind.FRACTION.text(all == 0 ? 0 : (double) kept / all, system)
                + " of the map; the plan stands at "
                + QuantityKind.ABSOLUTE_PRESSURE.text(setBottlePressure, system) + " in the bottle and "
                + QuantityKind.GAUGE_PRESSURE.text(setFuelPressure, system) + " at the fuel jet.";
    }
}
