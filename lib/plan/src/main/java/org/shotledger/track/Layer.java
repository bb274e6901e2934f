package org.shotledger.track;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.shotledger.evaluate.OperatingPoint;

/** One figure of the engine over engine speed and plenum pressure, straight between its nodes, end values held beyond both ends. */
final class Layer {
    private final double[] rpm;
    private final double[] plenum;
    private final double[][] values;

    private Layer(double[] rpm, double[] plenum, double[][] values) {
        this.rpm = rpm;
        this.plenum = plenum;
        this.values = values;
    }

    /**
     * Below the lowest pressure with an answer a node takes the line through the two above it, elsewhere that of the pressure below; a
     * speed without any answer is that of the next higher one that has some, above the highest of the one before.
     */
    static Layer of(
            double[] rpm,
            double[] plenum,
            Optional<OperatingPoint>[][] points,
            ToDoubleFunction<OperatingPoint> figure) {
        double[][] values = new double[rpm.length][plenum.length];
        for (int i = 0; i < rpm.length; i++) {
            for (int j = 0; j < plenum.length; j++) {
                values[i][j] = points[i][j].map(figure::applyAsDouble).orElse(Double.NaN);
            }
            fill(plenum, values[i]);
        }
        fill(values);
        return new Layer(rpm, plenum, values);
    }

    private static void fill(double[] x, double[] row) {
        int first = 0;
        while (first < row.length && Double.isNaN(row[first])) {
            first++;
        }
        int last = row.length - 1;
        while (last > first && Double.isNaN(row[last])) {
            last--;
        }
        for (int j = first - 1; j >= 0 && first < last; j--) {
            row[j] = row[first] + (row[first + 1] - row[first]) * (x[j] - x[first]) / (x[first + 1] - x[first]);
        }
        for (int j = 0; j < row.length; j++) {
            if (Double.isNaN(row[j]) && first < row.length) {
                row[j] = j < first ? row[first] : j > last ? row[last] : row[j - 1];
            }
        }
    }

    /** A gap would make every figure beside it not a number, and a pass with it would never end. */
    private static void fill(double[][] values) {
        for (int i = values.length - 2; i >= 0; i--) {
            values[i] = Double.isNaN(values[i][0]) ? values[i + 1] : values[i];
        }
        for (int i = 1; i < values.length; i++) {
            values[i] = Double.isNaN(values[i][0]) ? values[i - 1] : values[i];
        }
    }

    /** Value at a node of the pressures and any engine speed. */
    double atNode(double speed, int j) {
        int i = segment(rpm, speed);
        double share = share(rpm, i, speed);
        return values[i][j] + share * (values[i + 1][j] - values[i][j]);
    }

    double at(double speed, double pressure) {
        int j = segment(plenum, pressure);
        double share = share(plenum, j, pressure);
        double low = atNode(speed, j);
        return low + share * (atNode(speed, j + 1) - low);
    }

    static int segment(double[] x, double at) {
        int i = 0;
        while (i < x.length - 2 && at > x[i + 1]) {
            i++;
        }
        return i;
    }

    static double share(double[] x, int i, double at) {
        return Math.min(1, Math.max(0, (at - x[i]) / (x[i + 1] - x[i])));
    }
}
