package org.shotledger.boost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shotledger.units.Require;

/**
 * One speed line of a compressor map, from surge to choke. Points may come in any order; they are sorted by flow.
 *
 * @param correctedRpm corrected wheel speed, rpm, 5000 to 400000
 * @param points at least three, with different flows
 */
public record SpeedLine(double correctedRpm, List<Point> points) {
    /**
     * One measured point.
     *
     * @param correctedFlow corrected flow, kg/s, 0.0001 to 10
     * @param pressureRatio total-to-total pressure ratio, 1 to 6
     * @param efficiency total-to-total isentropic efficiency, 0.2 to 0.9
     */
    public record Point(double correctedFlow, double pressureRatio, double efficiency) {
        public Point {
            Require.within("corrected flow of a map point", correctedFlow, 1e-4, 10, "kg/s");
            Require.within("pressure ratio of a map point", pressureRatio, 1, 6, "");
            Require.within("efficiency of a map point", efficiency, 0.2, 0.9, "");
        }
    }

    public SpeedLine {
        Require.within("corrected speed of a speed line", correctedRpm, 5000, 400_000, "rpm");
        points = points.stream()
                .sorted(Comparator.comparingDouble(Point::correctedFlow))
                .toList();
        if (points.size() < 3) {
            throw new IllegalArgumentException("The speed line at " + correctedRpm + " rpm has " + points.size()
                    + " points; give at least three.");
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).correctedFlow() == points.get(i - 1).correctedFlow()) {
                throw new IllegalArgumentException("The speed line at " + correctedRpm + " rpm has the flow "
                        + points.get(i).correctedFlow() + " kg/s twice; give each point once.");
            }
        }
    }

    /**
     * Makes a line from columns.
     *
     * @param correctedRpm corrected wheel speed, rpm
     * @param correctedFlow corrected flows, kg/s
     * @param pressureRatio pressure ratio at each
     * @param efficiency efficiency at each
     * @return the line
     * @throws IllegalArgumentException when the columns are not equally long
     */
    public static SpeedLine of(
            double correctedRpm, double[] correctedFlow, double[] pressureRatio, double[] efficiency) {
        int n = correctedFlow.length;
        if (pressureRatio.length != n || efficiency.length != n) {
            throw new IllegalArgumentException("The speed line at " + correctedRpm + " rpm has " + n + " flows, "
                    + pressureRatio.length + " pressure ratios and " + efficiency.length
                    + " efficiencies; give equally many.");
        }
        List<Point> points = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            points.add(new Point(correctedFlow[i], pressureRatio[i], efficiency[i]));
        }
        return new SpeedLine(correctedRpm, points);
    }

    /**
     * The point at the surge end.
     *
     * @return the one with the least flow
     */
    public Point surge() {
        return points.get(0);
    }

    /**
     * The point at the choke end.
     *
     * @return the one with the most flow
     */
    public Point choke() {
        return points.get(points.size() - 1);
    }

    /**
     * The flows.
     *
     * @return kg/s, increasing
     */
    double[] flows() {
        return points.stream().mapToDouble(Point::correctedFlow).toArray();
    }
}
