package org.shotledger.flow;

/** Interpolation at Chebyshev nodes, as powers of the place -1 to 1 in a cell. */
final class Polynomials {
    private Polynomials() {}

    /**
     * Interpolation nodes.
     *
     * @param terms number of nodes
     * @return Chebyshev nodes of the first kind, -1 to 1, falling
     */
    static double[] nodes(int terms) {
        double[] nodes = new double[terms];
        for (int k = 0; k < terms; k++) {
            nodes[k] = Math.cos(Math.PI * (k + 0.5) / terms);
        }
        return nodes;
    }

    /**
     * Matrix from values at the nodes to coefficients of powers.
     *
     * @param terms number of nodes and of coefficients
     * @return row = power, column = node
     */
    static double[][] powersFromValues(int terms) {
        double[][] matrix = new double[terms][terms];
        double[] last = new double[terms];
        double[] now = new double[terms];
        now[0] = 1;
        for (int j = 0; j < terms; j++) {
            for (int k = 0; k < terms; k++) {
                double weight = (j == 0 ? 1.0 : 2.0) / terms * Math.cos(Math.PI * j * (k + 0.5) / terms);
                for (int power = 0; power <= j; power++) {
                    matrix[power][k] += now[power] * weight;
                }
            }
            double[] next = last;
            // T(j+1) = 2 x T(j) - T(j-1), without the 2 for j = 0
            for (int power = 0; power < terms; power++) {
                next[power] = (power == 0 ? 0 : (j == 0 ? 1 : 2) * now[power - 1]) - (j == 0 ? 0 : last[power]);
            }
            last = now;
            now = next;
        }
        return matrix;
    }
}
