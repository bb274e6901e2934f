package org.shotledger.study;

import java.util.List;

/**
 * How many combinations give which power at the wheels in the stated case.
 *
 * @param step width of a bin, W; the first begins at 0
 * @param all all combinations, by bin
 * @param kept those that keep every limit in every case, by bin
 */
public record Histogram(double step, List<Long> all, List<Long> kept) {
    public Histogram {
        all = List.copyOf(all);
        kept = List.copyOf(kept);
    }

    static Histogram of(double step, long[] all, long[] kept) {
        int last = all.length;
        while (last > 1 && all[last - 1] == 0) {
            last--;
        }
        return new Histogram(
                step,
                java.util.Arrays.stream(all).limit(last).boxed().toList(),
                java.util.Arrays.stream(kept).limit(last).boxed().toList());
    }
}
