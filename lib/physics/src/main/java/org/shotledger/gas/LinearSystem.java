package org.shotledger.gas;

/** Small dense linear systems by elimination with row exchange. */
final class LinearSystem {
    private LinearSystem() {}

    /** Solves rows of {@code [A | b]}; the rows are overwritten. */
    static double[] solve(double[][] rows) {
        int n = rows.length;
        for (int c = 0; c < n; c++) {
            int pivot = c;
            for (int r = c + 1; r < n; r++) {
                if (Math.abs(rows[r][c]) > Math.abs(rows[pivot][c])) {
                    pivot = r;
                }
            }
            double[] top = rows[pivot];
            rows[pivot] = rows[c];
            rows[c] = top;
            if (top[c] == 0) {
                throw new ArithmeticException("The equations of the chemical equilibrium are singular.");
            }
            for (int r = c + 1; r < n; r++) {
                double factor = rows[r][c] / top[c];
                for (int k = c; k <= n; k++) {
                    rows[r][k] -= factor * top[k];
                }
            }
        }
        double[] x = new double[n];
        for (int r = n - 1; r >= 0; r--) {
            double sum = rows[r][n];
            for (int k = r + 1; k < n; k++) {
                sum -= rows[r][k] * x[k];
            }
            x[r] = sum / rows[r][r];
        }
        return x;
    }
}
