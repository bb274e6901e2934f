package org.shotledger.flow;

import java.util.function.DoubleUnaryOperator;

/** A smooth function of one variable as polynomials on equal cells; reading allocates nothing. */
final class Pieces {
    private static final int TERMS = 8;

    private final double low;
    private final double perWidth;
    private final int cells;
    private final double[] c;

    Pieces(DoubleUnaryOperator function, double low, double high, int cells) {
        this.low = low;
        this.cells = cells;
        perWidth = cells / (high - low);
        c = new double[cells * TERMS];
        double[] nodes = Polynomials.nodes(TERMS);
        double[][] powers = Polynomials.powersFromValues(TERMS);
        for (int i = 0; i < cells; i++) {
            for (int k = 0; k < TERMS; k++) {
                double value = function.applyAsDouble(low + (i + 0.5 + 0.5 * nodes[k]) / perWidth);
                for (int power = 0; power < TERMS; power++) {
                    c[i * TERMS + power] += powers[power][k] * value;
                }
            }
        }
    }

    double value(double x) {
        double place = (x - low) * perWidth;
        int i = Math.min((int) place, cells - 1);
        double y = 2 * (place - i) - 1;
        int o = i * TERMS;
        double y2 = y * y;
        double even = c[o] + y2 * (c[o + 2] + y2 * (c[o + 4] + y2 * c[o + 6]));
        double odd = c[o + 1] + y2 * (c[o + 3] + y2 * (c[o + 5] + y2 * c[o + 7]));
        return even + y * odd;
    }
}
