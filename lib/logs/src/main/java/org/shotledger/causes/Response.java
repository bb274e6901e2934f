package org.shotledger.causes;

import java.util.Arrays;

/**
 * What a hypothesis of each size does to every value of the evidence: exact at its sizes, straight between them.
 *
 * @param hypothesis the hypothesis
 * @param sizes sizes at which it was worked out, rising, zero among them
 * @param shifts shift of each value at each size, as the fit sees them; zeros at size zero
 */
@SuppressWarnings("ArrayRecordComponent") // lives for one fit only
record Response(Hypothesis hypothesis, double[] sizes, double[][] shifts) {
    /** A size as close to one that was worked out, of their distance, is as good as worked out: our own choice. */
    private static final double NEAR = 0.05;

    static Response of(Hypothesis hypothesis, Prediction prediction, Run planned, Values values) {
        double[] all = hypothesis.sizes();
        double[][] shifts = new double[all.length][];
        int n = 0;
        double[] kept = new double[all.length];
        for (double size : all) {
            double[] shift = size == 0
                    ? new double[values.size()]
                    : values.shift(prediction.of(hypothesis.change().of(planned, size)));
            if (Arrays.stream(shift).noneMatch(Double::isNaN)) {
                kept[n] = size;
                shifts[n++] = shift;
            }
        }
        return new Response(hypothesis, Arrays.copyOf(kept, n), Arrays.copyOf(shifts, n));
    }

    /** The same worked out at one size more, where it lies within and away from those that are there. */
    Response with(double size, Prediction prediction, Run planned, Values values) {
        int a = below(size);
        double near = Math.min(size - sizes[a], sizes[a + 1] - size);
        if (near < NEAR * (sizes[a + 1] - sizes[a])) {
            return this;
        }
        double[] shift = values.shift(prediction.of(hypothesis.change().of(planned, size)));
        if (Arrays.stream(shift).anyMatch(Double::isNaN)) {
            return this;
        }
        double[] moreSizes = new double[sizes.length + 1];
        double[][] moreShifts = new double[sizes.length + 1][];
        for (int i = 0; i < moreSizes.length; i++) {
            moreSizes[i] = i <= a ? sizes[i] : i == a + 1 ? size : sizes[i - 1];
            moreShifts[i] = i <= a ? shifts[i] : i == a + 1 ? shift : shifts[i - 1];
        }
        return new Response(hypothesis, moreSizes, moreShifts);
    }

    int zero() {
        return Arrays.binarySearch(sizes, 0);
    }

    /** Shift of each value for a small size of one. */
    double[] slope() {
        int at = zero();
        int a = Math.max(0, at - 1);
        int b = Math.min(sizes.length - 1, at + 1);
        double[] slope = new double[shifts[at].length];
        for (int i = 0; i < slope.length && b > a; i++) {
            slope[i] = (shifts[b][i] - shifts[a][i]) / (sizes[b] - sizes[a]);
        }
        return slope;
    }

    double low() {
        return sizes[0];
    }

    double high() {
        return sizes[sizes.length - 1];
    }

    /** The size at or below which a size lies among those worked out. */
    int below(double size) {
        int at = Arrays.binarySearch(sizes, size);
        int below = at >= 0 ? at : -at - 2;
        return Math.max(0, Math.min(sizes.length - 2, below));
    }

    /** Shift of each value at any size within. */
    double[] at(double size) {
        if (sizes.length < 2) {
            return shifts[0].clone();
        }
        int a = below(size);
        double share = (size - sizes[a]) / (sizes[a + 1] - sizes[a]);
        double[] shift = new double[shifts[a].length];
        for (int i = 0; i < shift.length; i++) {
            shift[i] = (1 - share) * shifts[a][i] + share * shifts[a + 1][i];
        }
        return shift;
    }

    /** Change of each value by a size of one more, at a size within. */
    double[] slopeAt(double size) {
        int a = below(size);
        double[] slope = new double[shifts[a].length];
        for (int i = 0; i < slope.length; i++) {
            slope[i] = (shifts[a + 1][i] - shifts[a][i]) / (sizes[a + 1] - sizes[a]);
        }
        return slope;
    }

    /** Whether it changes anything that was logged. */
    boolean shows() {
        return sizes.length > 1
                && Arrays.stream(shifts).anyMatch(s -> Arrays.stream(s).anyMatch(v -> v != 0));
    }
}
