package org.shotledger.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines of equal value on a grid by marching squares: in each cell the line enters and leaves where the value, taken as
 * linear along the edges, is met (W. E. Lorensen and H. E. Cline, Computer Graphics 21 (1987) 163-169, in two dimensions).
 */
final class Contour {
    private Contour() {}

    /** A piece of a line inside one cell. */
    record Piece(double x1, double y1, double x2, double y2) {}

    /**
     * All pieces of one line.
     *
     * @param x abscissae of the grid
     * @param y ordinates of the grid
     * @param z values, {@code z[j][i]} at {@code (x[i], y[j])}; a cell with a value that is not a number is left out
     * @param level the value sought
     */
    static List<Piece> at(double[] x, double[] y, double[][] z, double level) {
        List<Piece> pieces = new ArrayList<>();
        for (int j = 0; j + 1 < y.length; j++) {
            for (int i = 0; i + 1 < x.length; i++) {
                cell(x, y, z, level, i, j, pieces);
            }
        }
        return pieces;
    }

    private static void cell(double[] x, double[] y, double[][] z, double level, int i, int j, List<Piece> pieces) {
        double[] cx = {x[i], x[i + 1], x[i + 1], x[i]};
        double[] cy = {y[j], y[j], y[j + 1], y[j + 1]};
        double[] cz = {z[j][i], z[j][i + 1], z[j + 1][i + 1], z[j + 1][i]};
        double[] hits = new double[8];
        int n = 0;
        for (int k = 0; k < 4; k++) {
            int next = (k + 1) % 4;
            if (cz[k] < level != cz[next] < level) {
                double t = (level - cz[k]) / (cz[next] - cz[k]);
                hits[n++] = cx[k] + t * (cx[next] - cx[k]);
                hits[n++] = cy[k] + t * (cy[next] - cy[k]);
            }
        }
        for (int k = 0; k + 3 < n; k += 4) {
            if (Double.isFinite(hits[k] + hits[k + 1] + hits[k + 2] + hits[k + 3])) {
                pieces.add(new Piece(hits[k], hits[k + 1], hits[k + 2], hits[k + 3]));
            }
        }
    }
}
