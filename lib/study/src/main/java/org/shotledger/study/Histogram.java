package org.shotledger.study;

import java.util.Arrays;

/** Counts in bins of equal width; what lies outside is counted in the first or last bin. */
public final class Histogram {
    private final double low;
    private final double width;
    private final double perWidth;
    private final long[] counts;

    Histogram(double low, double high, int bins) {
        this.low = low;
        this.width = (high - low) / bins;
        this.perWidth = 1 / width;
        this.counts = new long[bins];
    }

    void add(double value) {
        int bin = (int) ((value - low) * perWidth);
        counts[Math.max(0, Math.min(counts.length - 1, bin))]++;
    }

    void join(Histogram other) {
        for (int i = 0; i < counts.length; i++) {
            counts[i] += other.counts[i];
        }
    }

    /**
     * The counts.
     *
     * @return a copy, lowest bin first
     */
    public long[] counts() {
        return counts.clone();
    }

    /**
     * The middles of the bins.
     *
     * @return SI values, ascending
     */
    public double[] middles() {
        double[] middles = new double[counts.length];
        Arrays.setAll(middles, i -> low + (i + 0.5) * width);
        return middles;
    }

    /**
     * Everything that was counted.
     *
     * @return the sum of the counts
     */
    public long total() {
        return Arrays.stream(counts).sum();
    }
}
