package org.shotledger.wiring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Of many points of a curve, the few whose straight lines leave it least. */
final class BreakPointChoice {
    private final List<Sensor.Point> grid;
    private final double[][] error;

    /**
     * A choice among points.
     *
     * @param most lines that leave the curve by as much or more are not looked at further
     */
    BreakPointChoice(List<Sensor.Point> grid, double most) {
        this.grid = grid;
        double[] output = grid.stream().mapToDouble(Sensor.Point::output).toArray();
        double[] value = grid.stream().mapToDouble(Sensor.Point::value).toArray();
        int n = grid.size();
        error = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                error[i][j] = chord(output, value, i, j, most);
            }
        }
    }

    /** The best so many; none where every choice has a line of those not looked at. */
    Optional<List<Sensor.Point>> least(int count) {
        int n = grid.size();
        double[] reach = error[0].clone();
        int[][] from = new int[count][n];
        for (int lines = 2; lines < count; lines++) {
            double[] next = new double[n];
            Arrays.fill(next, Double.POSITIVE_INFINITY);
            next[0] = Double.POSITIVE_INFINITY;
            for (int j = lines; j < n; j++) {
                for (int i = lines - 1; i < j; i++) {
                    double worst = Math.max(reach[i], error[i][j]);
                    if (worst < next[j]) {
                        next[j] = worst;
                        from[lines][j] = i;
                    }
                }
            }
            reach = next;
        }
        if (Double.isInfinite(reach[n - 1])) {
            return Optional.empty();
        }
        List<Sensor.Point> points = new ArrayList<>();
        int at = n - 1;
        points.add(grid.get(at));
        for (int lines = count - 1; lines >= 1; lines--) {
            at = lines == 1 ? 0 : from[lines][at];
            points.add(0, grid.get(at));
        }
        return Optional.of(points);
    }

    private static double chord(double[] output, double[] value, int i, int j, double most) {
        double slope = (value[j] - value[i]) / (output[j] - output[i]);
        double worst = 0;
        for (int k = i + 1; k < j; k++) {
            double off = Math.abs(value[i] + slope * (output[k] - output[i]) - value[k]);
            if (off >= most) {
                return Double.POSITIVE_INFINITY;
            }
            worst = off > worst ? off : worst;
        }
        return worst;
    }
}
