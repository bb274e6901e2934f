package org.shotledger.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * A value over two others with lines of equal value, the region in which every limit is kept, and the limits that end it.
 *
 * @param x values along the horizontal axis, SI, increasing
 * @param y values along the vertical axis, SI, increasing
 * @param value the value, {@code value[j][i]} at y j and x i
 * @param safe where every limit is kept, indexed in the same way
 * @param levels values to draw a line for
 * @param bounds the limits that end the safe region
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
record LimitField(
        double[] x, double[] y, double[][] value, boolean[][] safe, double[] levels, List<DriftMapChart.Bound> bounds) {

    /** Draws regions, lines and limits. */
    void draw(Plot plot, Scale xAxis, Scale yAxis, DoubleFunction<String> words) {
        plot.reach(x[0], y[0]).reach(x[x.length - 1], y[y.length - 1]).tight();
        plot.key("every limit kept", Look.THIRD, false);
        plot.key("a limit is broken", Look.SECOND, true);
        plot.regions(runs(true), Look.THIRD, false).regions(runs(false), Look.SECOND, true);
        for (double level : levels) {
            plot.mark(new ContourMark(
                    words.apply(level), Contour.at(xAxis.shown(x), yAxis.shown(y), value, level), false));
        }
        for (DriftMapChart.Bound bound : bounds) {
            plot.mark(
                    new ContourMark(bound.name(), Contour.at(xAxis.shown(x), yAxis.shown(y), bound.margin(), 0), true));
        }
    }

    /** Share of the points at which every limit is kept. */
    double keptShare() {
        int kept = 0;
        int all = 0;
        for (boolean[] row : safe) {
            for (boolean cell : row) {
                all++;
                kept += cell ? 1 : 0;
            }
        }
        return all == 0 ? 0 : (double) kept / all;
    }

    /** One rectangle for each run of neighbours with the same answer; a sample speaks for the half cells around it. */
    private List<double[][]> runs(boolean wanted) {
        List<double[][]> runs = new ArrayList<>();
        for (int j = 0; j < y.length; j++) {
            int start = 0;
            for (int i = 1; i <= x.length; i++) {
                if (i == x.length || safe[j][i] != safe[j][start]) {
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
        double left = edge(x, first);
        double right = edge(x, last + 1);
        double low = edge(y, row);
        double high = edge(y, row + 1);
        return new double[][] {{left, right, right, left}, {low, low, high, high}};
    }

    private static double edge(double[] grid, int index) {
        int n = grid.length;
        if (index == 0) {
            return grid[0];
        }
        return index == n ? grid[n - 1] : (grid[index - 1] + grid[index]) / 2;
    }
}
