package org.shotledger.flow;

import java.util.function.DoubleBinaryOperator;

/** A smooth function of two variables as products of polynomials on equal cells; reading allocates nothing. */
final class Patches {
    private static final int TERMS = 6;
    private static final int SIZE = TERMS * TERMS;

    private final double lowU;
    private final double perU;
    private final int cellsU;
    private final double lowV;
    private final double perV;
    private final int cellsV;
    private final double[] c;

    Patches(
            DoubleBinaryOperator function,
            double lowU,
            double highU,
            int cellsU,
            double lowV,
            double highV,
            int cellsV) {
        this.lowU = lowU;
        this.cellsU = cellsU;
        perU = cellsU / (highU - lowU);
        this.lowV = lowV;
        this.cellsV = cellsV;
        perV = cellsV / (highV - lowV);
        c = new double[cellsU * cellsV * SIZE];
        double[] nodes = Polynomials.nodes(TERMS);
        double[][] powers = Polynomials.powersFromValues(TERMS);
        for (int cell = 0; cell < cellsU * cellsV; cell++) {
            fill(function, cell, nodes, powers);
        }
    }

    private void fill(DoubleBinaryOperator function, int cell, double[] nodes, double[][] powers) {
        int column = cell / cellsV;
        int line = cell % cellsV;
        for (int a = 0; a < TERMS; a++) {
            double u = lowU + (column + 0.5 + 0.5 * nodes[a]) / perU;
            double[] row = new double[TERMS];
            for (int b = 0; b < TERMS; b++) {
                double v = lowV + (line + 0.5 + 0.5 * nodes[b]) / perV;
                double value = function.applyAsDouble(u, v);
                for (int power = 0; power < TERMS; power++) {
                    row[power] += powers[power][b] * value;
                }
            }
            for (int i = 0; i < SIZE; i++) {
                c[cell * SIZE + i] += powers[i / TERMS][a] * row[i % TERMS];
            }
        }
    }

    double value(double u, double v) {
        double placeU = (u - lowU) * perU;
        double placeV = (v - lowV) * perV;
        int i = Math.min((int) placeU, cellsU - 1);
        int j = Math.min((int) placeV, cellsV - 1);
        double y = 2 * (placeU - i) - 1;
        double z = 2 * (placeV - j) - 1;
        int o = (i * cellsV + j) * SIZE;
        double even = row(o, z) + y * y * (row(o + 2 * TERMS, z) + y * y * row(o + 4 * TERMS, z));
        double odd = row(o + TERMS, z) + y * y * (row(o + 3 * TERMS, z) + y * y * row(o + 5 * TERMS, z));
        return even + y * odd;
    }

    private double row(int o, double z) {
        double z2 = z * z;
        return c[o] + z2 * (c[o + 2] + z2 * c[o + 4]) + z * (c[o + 1] + z2 * (c[o + 3] + z2 * c[o + 5]));
    }
}
