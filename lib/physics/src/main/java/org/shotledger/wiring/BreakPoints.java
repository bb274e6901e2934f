package org.shotledger.wiring;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.units.Require;

/**
 * The table to enter: points between which a controller goes in straight lines from output to value.
 *
 * @param points in the order of rising value
 * @param spacing how they were set
 * @param error greatest difference from the sensor's own curve, in the value's SI unit
 * @param errorAt value at which it is greatest, SI
 */
public record BreakPoints(List<Sensor.Point> points, Spacing spacing, double error, double errorAt) {
    /** Candidates for a point, and places where the error is looked for: 0.4 % of the range apart. */
    private static final int GRID = 257;
    /** Share of a range that no controller resolves. */
    private static final double NOTHING = 1e-7;

    /** How a controller lets points be set. */
    public enum Spacing {
        /** Anywhere; set so that the greatest error is least. */
        FREE,
        /** At even steps of the output. */
        EVEN_OUTPUT,
        /** At even steps of the value. */
        EVEN_VALUE
    }

    public BreakPoints {
        points = List.copyOf(points);
    }

    /**
     * Sets the points. All lie on the sensor's curve, so that each can be checked with the sensor itself.
     *
     * <p>Free points are chosen among 257 so that the greatest error is least, by dynamic programming over all choices (Bellman and
     * Roth, J. Am. Stat. Assoc. 64 (1969) 1079: curve fitting by segmented straight lines).
     *
     * @param sensor the sensor, its output rising or falling throughout
     * @param count of points that the controller takes, 2 to 128
     * @param spacing how it lets them be set
     * @return the table with its error
     */
    public static BreakPoints of(Sensor sensor, int count, Spacing spacing) {
        Require.within("number of points of the table of " + sensor.name(), count, 2, 128, "");
        BreakPoints even = judged(
                sensor, spacing == Spacing.EVEN_VALUE ? sensor.table(count) : evenOutput(sensor, count), spacing);
        // on a straight line every choice is as good: points spread over it can be checked, points heaped at one end
        // cannot
        double better = even.error - NOTHING * (sensor.high() - sensor.low());
        if (spacing != Spacing.FREE || better <= 0) {
            return even;
        }
        return new BreakPointChoice(grid(sensor), better)
                .least(count)
                .map(points -> judged(sensor, points, spacing))
                .orElse(even);
    }

    private static BreakPoints judged(Sensor sensor, List<Sensor.Point> points, Spacing spacing) {
        BreakPoints plain = new BreakPoints(points, spacing, 0, points.get(0).value());
        double worst = 0;
        double at = sensor.low();
        for (Sensor.Point point : grid(sensor)) {
            double off = Math.abs(plain.value(point.output()) - point.value());
            if (off > worst) {
                worst = off;
                at = point.value();
            }
        }
        return new BreakPoints(points, spacing, worst, at);
    }

    /**
     * What the controller shows.
     *
     * @param output V, Hz or s
     * @return SI; beyond the table its end value
     */
    public double value(double output) {
        boolean rising = points.get(points.size() - 1).output() > points.get(0).output();
        int i = 1;
        while (i < points.size() - 1
                && (rising
                        ? output > points.get(i).output()
                        : output < points.get(i).output())) {
            i++;
        }
        Sensor.Point a = points.get(i - 1);
        Sensor.Point b = points.get(i);
        double share = (output - a.output()) / (b.output() - a.output());
        return a.value() + (b.value() - a.value()) * Math.min(1, Math.max(0, share));
    }

    private static List<Sensor.Point> evenOutput(Sensor sensor, int count) {
        List<Sensor.Point> points = new ArrayList<>();
        double first = sensor.output(sensor.low());
        double last = sensor.output(sensor.high());
        for (int i = 0; i < count; i++) {
            double output = first + (last - first) * i / (count - 1);
            points.add(new Sensor.Point(sensor.value(output), output));
        }
        return points;
    }

    /** Half of the candidates at even steps of the value, half at even steps of the output: curves are steep in one or the other. */
    private static List<Sensor.Point> grid(Sensor sensor) {
        List<Sensor.Point> points = new ArrayList<>(sensor.table(GRID / 2 + 1));
        List<Sensor.Point> others = evenOutput(sensor, GRID / 2 + 1);
        points.addAll(others.subList(1, others.size() - 1));
        points.sort(java.util.Comparator.comparing(Sensor.Point::value));
        List<Sensor.Point> apart = new ArrayList<>();
        for (Sensor.Point point : points) {
            double nearest = NOTHING * (sensor.high() - sensor.low());
            if (apart.isEmpty() || point.value() - apart.get(apart.size() - 1).value() > nearest) {
                apart.add(point);
            }
        }
        return apart;
    }
}
