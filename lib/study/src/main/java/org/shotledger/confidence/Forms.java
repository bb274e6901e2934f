package org.shotledger.confidence;

import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Quadratic forms of many outputs in the same unknowns.
 *
 * @param numbers which output of the surface each form is, the power first
 * @param weights by form: constant, linear terms, squares, mixed terms
 * @param pairs unknowns of each mixed term
 * @param coordinates steps from the centre, from the values of the unknowns
 */
@SuppressWarnings("ArrayRecordComponent") // read in the innermost loop; never compared
record Forms(int[] numbers, double[][] weights, int[][] pairs, UnaryOperator<double[]> coordinates) {

    /** The forms without some outputs. */
    Forms without(java.util.function.IntPredicate output) {
        int[] left = IntStream.range(0, numbers.length)
                .filter(f -> !output.test(numbers[f]))
                .toArray();
        return new Forms(
                IntStream.of(left).map(f -> numbers[f]).toArray(),
                IntStream.of(left).mapToObj(f -> weights[f]).toArray(double[][]::new),
                pairs,
                coordinates);
    }

    /** Values of all forms at a place. */
    double[] at(double[] x) {
        double[] z = coordinates.apply(x);
        int d = z.length;
        double[] terms = new double[1 + 2 * d + pairs.length];
        terms[0] = 1;
        for (int i = 0; i < d; i++) {
            terms[1 + i] = z[i];
            terms[1 + d + i] = z[i] * z[i];
        }
        for (int m = 0; m < pairs.length; m++) {
            terms[1 + 2 * d + m] = z[pairs[m][0]] * z[pairs[m][1]];
        }
        double[] values = new double[weights.length];
        for (int f = 0; f < values.length; f++) {
            double[] by = weights[f];
            double sum = 0;
            for (int t = 0; t < terms.length; t++) {
                sum += by[t] * terms[t];
            }
            values[f] = sum;
        }
        return values;
    }

    /** The least margin at a place, the power left out; positive infinity without margins. */
    static double leastMargin(double[] values) {
        double least = Double.POSITIVE_INFINITY;
        for (int f = 1; f < values.length; f++) {
            least = Math.min(least, values[f]);
        }
        return least;
    }
}
