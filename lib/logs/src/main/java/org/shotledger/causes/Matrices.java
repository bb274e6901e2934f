package org.shotledger.causes;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/** Covariances as square roots. */
final class Matrices {
    private static final double SYMMETRY = 1e-9;
    private static final double LEAST = 1e-300;

    private Matrices() {}

    /** Lower triangle L of C = L L^T. */
    static double[][] root(double[][] covariance) {
        RealMatrix c = new Array2DRowRealMatrix(covariance, false);
        return new CholeskyDecomposition(c, SYMMETRY, LEAST).getL().getData();
    }

    /** L^-1 v. */
    static double[] whitened(double[][] root, double[] v) {
        double[] w = new double[v.length];
        for (int i = 0; i < w.length; i++) {
            double sum = v[i];
            double[] row = root[i];
            for (int j = 0; j < i; j++) {
                sum -= row[j] * w[j];
            }
            w[i] = sum / row[i];
        }
        return w;
    }

    /** L^-T v. */
    static double[] back(double[][] root, double[] v) {
        double[] w = v.clone();
        for (int i = w.length - 1; i >= 0; i--) {
            w[i] /= root[i][i];
            for (int j = 0; j < i; j++) {
                w[j] -= root[i][j] * w[i];
            }
        }
        return w;
    }

    static double logDeterminant(double[][] root) {
        double sum = 0;
        for (int i = 0; i < root.length; i++) {
            sum += 2 * Math.log(root[i][i]);
        }
        return sum;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    static void addOuter(double[][] to, double[] v, double variance) {
        for (int i = 0; i < v.length; i++) {
            if (v[i] != 0) {
                for (int j = 0; j < v.length; j++) {
                    to[i][j] += variance * v[i] * v[j];
                }
            }
        }
    }
}
