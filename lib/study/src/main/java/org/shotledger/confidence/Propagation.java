package org.shotledger.confidence;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Values of a model under the distributions of its inputs, sorted: the discrete representation of JCGM 101:2008, 7.5.
 *
 * @param sorted the values, ascending
 */
@SuppressWarnings("ArrayRecordComponent") // a million values: handed on as they are, never compared
public record Propagation(double[] sorted) {

    /**
     * Propagates distributions through a model.
     *
     * @param model the model; it gets the inputs in the order of the distributions and must not keep the array
     * @param inputs distributions of independent inputs
     * @param points points of the unit cube with as many coordinates
     * @param draws number of values, at least 2
     * @return the values
     */
    public static Propagation of(
            ToDoubleFunction<double[]> model, List<Distribution> inputs, ShiftedSobol points, int draws) {
        if (draws < 2) {
            throw new IllegalArgumentException("A propagation with " + draws + " draws says nothing; take at least 2.");
        }
        Distribution[] by = inputs.toArray(Distribution[]::new);
        double[] x = new double[by.length];
        double[] values = new double[draws];
        for (int n = 0; n < draws; n++) {
            points.next(x);
            for (int i = 0; i < by.length; i++) {
                x[i] = by[i].quantile(x[i]);
            }
            values[n] = model.applyAsDouble(x);
        }
        Arrays.sort(values);
        return new Propagation(values);
    }

    /**
     * Estimate (7.6).
     *
     * @return the mean
     */
    public double mean() {
        return Arrays.stream(sorted).average().orElseThrow();
    }

    /**
     * Standard uncertainty (7.6).
     *
     * @return the standard deviation
     */
    public double deviation() {
        double mean = mean();
        double sum = Arrays.stream(sorted).map(v -> (v - mean) * (v - mean)).sum();
        return Math.sqrt(sum / (sorted.length - 1));
    }

    /**
     * The value not exceeded with a probability.
     *
     * @param probability 0 to 1
     * @return the value, straight between neighbours
     */
    public double quantile(double probability) {
        double place = probability * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
