package org.shotledger.logs;

import java.util.Arrays;

/**
 * Values over rising time. Pure: every method gives a new series.
 *
 * @param time times, s, finite, strictly rising
 * @param values values, SI, as many; NaN where there is none
 */
@SuppressWarnings(
        "ArrayRecordComponent") // a series is read, never compared; copying a million values at each step would not do
public record Series(double[] time, double[] values) {
    /** Samples that an even series may have whatever it is made from: our choice, some megabytes. */
    private static final double LEAST_ROOM = 1e6;
    /** Times the samples of the series it is made from: our choice; more says that one gap in time is a slip. */
    private static final double MOST_TIMES = 10;

    public Series {
        if (time.length != values.length) {
            throw new IllegalArgumentException("A series has " + time.length + " times and " + values.length
                    + " values; give as many of one as of the other.");
        }
        for (int i = 0; i < time.length; i++) {
            boolean rises = i == 0 || time[i] > time[i - 1];
            if (!Double.isFinite(time[i]) || !rises) {
                throw new IllegalArgumentException("The time of a series is " + time[i] + " s at place " + i
                        + "; times must be finite and rise, leave out the rows that do not.");
            }
        }
    }

    /**
     * The number of samples.
     *
     * @return the count
     */
    public int size() {
        return time.length;
    }

    /**
     * The median step.
     *
     * @return seconds; infinite for fewer than two samples
     */
    public double step() {
        return medianStep(time);
    }

    /** The median of the rising steps between neighbours that have a time; infinite when there are none, so that nothing is a gap. */
    static double medianStep(double[] time) {
        double[] steps = new double[time.length];
        int n = 0;
        double before = Double.NaN;
        for (double t : time) {
            if (t > before) {
                steps[n++] = t - before;
            }
            before = Double.isNaN(t) ? before : t;
        }
        if (n == 0) {
            return Double.POSITIVE_INFINITY;
        }
        Arrays.sort(steps, 0, n);
        return steps[n / 2];
    }

    /**
     * The values at other times, by straight lines between neighbours. No line is drawn across a gap: a time between two samples
     * further apart than the longest step, beside a sample without value, or outside the series gets NaN.
     *
     * @param at times, s, ascending
     * @param longestStep longest step that is joined, s
     * @return as many values
     */
    public double[] at(double[] at, double longestStep) {
        double[] out = new double[at.length];
        int i = 0;
        for (int k = 0; k < at.length; k++) {
            while (i + 1 < time.length && time[i + 1] <= at[k]) {
                i++;
            }
            out[k] = between(i, at[k], longestStep);
        }
        return out;
    }

    private double between(int i, double t, double longestStep) {
        if (time.length == 0 || !(t >= time[0]) || t > time[time.length - 1]) {
            return Double.NaN;
        }
        if (t == time[i]) {
            return values[i];
        }
        double width = time[i + 1] - time[i];
        if (width > longestStep) {
            return Double.NaN;
        }
        double share = (t - time[i]) / width;
        return (1 - share) * values[i] + share * values[i + 1];
    }

    /**
     * The series on a common step.
     *
     * @param step the step, s, above zero
     * @param longestStep longest step that is joined, s
     * @return the series from its first time on
     * @throws IllegalArgumentException when the step is not above zero, or so small that the series would have more than a million
     *     samples and ten times its own
     */
    public Series every(double step, double longestStep) {
        if (!(step > 0 && step < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("The common step is " + step + " s; it must be above zero.");
        }
        double span = time.length == 0 ? 0 : time[time.length - 1] - time[0];
        double most = LEAST_ROOM + MOST_TIMES * time.length;
        if (span / step > most) {
            throw new IllegalArgumentException("The series lasts " + span + " s, which at a common step of " + step
                    + " s is more than " + (long) most + " samples, far more than its own " + time.length
                    + "; check its times, or take a larger step.");
        }
        int n = time.length == 0 ? 0 : (int) Math.floor(span / step * (1 + 1e-12)) + 1;
        double[] grid = new double[n];
        for (int i = 0; i < n; i++) {
            grid[i] = Math.min(time[0] + i * step, time[time.length - 1]);
        }
        return new Series(grid, at(grid, longestStep));
    }

    /**
     * The part between two times.
     *
     * @param from first time, s
     * @param to last time, s
     * @return the samples within
     */
    public Series between(double from, double to) {
        int first = 0;
        while (first < time.length && time[first] < from) {
            first++;
        }
        int end = first;
        while (end < time.length && time[end] <= to) {
            end++;
        }
        return new Series(Arrays.copyOfRange(time, first, end), Arrays.copyOfRange(values, first, end));
    }
}
