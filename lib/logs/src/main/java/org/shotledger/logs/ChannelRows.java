package org.shotledger.logs;

import java.util.Arrays;
import java.util.BitSet;

/**
 * The rows in which a channel has a sample: placed in time, later than the one before, with a value.
 *
 * @param rows rows from 0, rising
 * @param time time of each, s, strictly rising
 * @param values value of each, SI, never NaN
 * @param starts first rows of the stretches of the log
 */
@SuppressWarnings("ArrayRecordComponent") // read once, never compared
record ChannelRows(int[] rows, double[] time, double[] values, int[] starts) {

    static ChannelRows of(EngineLog log, LogChannel channel) {
        double[] placed = log.times().placed();
        double[] all = log.raw(channel);
        int[] rows = new int[all.length];
        int n = 0;
        for (int i = 0; i < all.length; i++) {
            boolean later = n == 0 || placed[i] > placed[rows[n - 1]];
            if (later && !Double.isNaN(placed[i]) && !Double.isNaN(all[i])) {
                rows[n++] = i;
            }
        }
        int[] kept = Arrays.copyOf(rows, n);
        return new ChannelRows(
                kept,
                Arrays.stream(kept).mapToDouble(i -> placed[i]).toArray(),
                Arrays.stream(kept).mapToDouble(i -> all[i]).toArray(),
                log.times().starts().stream().mapToInt(i -> i).toArray());
    }

    /** The median step, s; infinite for fewer than two samples. */
    double step() {
        return Series.medianStep(time);
    }

    /** The samples as a series; those of tainted rows are NaN, and so is one between two stretches. */
    Series series(BitSet tainted) {
        double[] t = new double[rows.length + starts.length];
        double[] v = new double[t.length];
        int n = 0;
        int stretch = 1;
        for (int k = 0; k < rows.length; k++) {
            boolean begins = false;
            while (stretch < starts.length && rows[k] >= starts[stretch]) {
                stretch++;
                begins = true;
            }
            if (begins && k > 0) {
                t[n] = 0.5 * (time[k - 1] + time[k]);
                v[n++] = Double.NaN;
            }
            t[n] = time[k];
            v[n++] = tainted.get(rows[k]) ? Double.NaN : values[k];
        }
        return new Series(Arrays.copyOf(t, n), Arrays.copyOf(v, n));
    }
}
