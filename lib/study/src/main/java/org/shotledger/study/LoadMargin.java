package org.shotledger.study;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;

/**
 * The margin of one load, torque or peak pressure, at one speed under one nitrous setting, as a short polynomial in plenum pressure
 * and richness through Chebyshev nodes of the pressure: what the search for the pressure that keeps a reserve goes through.
 */
final class LoadMargin {
    private static final int NODES = 8;
    private static final double[][] INVERSE = inverse(NODES);

    private final SpeedTable table;
    /** By power of the richness and power of the pressure. */
    private final double[][] powers;

    LoadMargin(SpeedTable table, int load, double enthalpy, double nitrous) {
        this.table = table;
        double[][] rows = new double[NODES][table.basis.richness + 1];
        double[] factors = new double[table.basis.groups.length];
        for (int i = 0; i < NODES; i++) {
            double plenum = table.pressure.from(node(i, NODES));
            table.factors(plenum, enthalpy, nitrous, factors);
            table.powers(load, plenum, factors, rows[i]);
        }
        powers = new double[table.basis.richness + 1][NODES];
        for (int l = 0; l < powers.length; l++) {
            for (int m = 0; m < NODES; m++) {
                for (int i = 0; i < NODES; i++) {
                    powers[l][m] += INVERSE[m][i] * rows[i][l];
                }
            }
        }
    }

    /** The margin. */
    double at(double plenum, double rich) {
        double x = table.pressure.to(plenum);
        double sum = 0;
        for (int l = powers.length - 1; l >= 0; l--) {
            sum = sum * rich + Polynomials.at(powers[l], x);
        }
        return sum;
    }

    /** Chebyshev's places between -1 and 1, the ends among them. */
    static double node(int i, int nodes) {
        return -Math.cos(Math.PI * i / (nodes - 1));
    }

    /** From values at the nodes to powers: the inverse of their Vandermonde matrix. */
    static double[][] inverse(int nodes) {
        double[][] vandermonde = new double[nodes][nodes];
        for (int i = 0; i < nodes; i++) {
            for (int l = 0; l < nodes; l++) {
                vandermonde[i][l] = Basis.power(node(i, nodes), l);
            }
        }
        return new LUDecomposition(new Array2DRowRealMatrix(vandermonde, false))
                .getSolver()
                .getInverse()
                .getData();
    }
}
