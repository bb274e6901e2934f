package org.shotledger.logs;

import java.util.Arrays;
import java.util.Locale;

/**
 * Where the engine is wide open, and how that is known.
 *
 * @param full at each moment whether it is
 * @param words how that is known
 */
@SuppressWarnings("ArrayRecordComponent") // lives for one search only
record PullLoad(boolean[] full, String words) {

    static PullLoad of(LogFindings findings, PullRule rule, double[] time) {
        boolean[] full = new boolean[time.length];
        if (findings.log().has(LogChannel.THROTTLE) && hasValue(findings, LogChannel.THROTTLE)) {
            double[] throttle = at(findings, LogChannel.THROTTLE, time);
            for (int i = 0; i < full.length; i++) {
                full[i] = throttle[i] >= rule.openThrottle();
            }
            return new PullLoad(
                    full, String.format(Locale.ROOT, "the throttle at least %.0f %% open", 100 * rule.openThrottle()));
        }
        if (findings.log().has(LogChannel.MANIFOLD_PRESSURE) && hasValue(findings, LogChannel.MANIFOLD_PRESSURE)) {
            double most = Arrays.stream(findings.log().raw(LogChannel.MANIFOLD_PRESSURE))
                    .filter(v -> !Double.isNaN(v))
                    .max()
                    .orElse(Double.NaN);
            double[] pressure = at(findings, LogChannel.MANIFOLD_PRESSURE, time);
            for (int i = 0; i < full.length; i++) {
                // a sensor at its end still shows load, so that values not to be trusted count
                full[i] = Double.isNaN(pressure[i]) || pressure[i] >= rule.fullLoad() * most;
            }
            return new PullLoad(
                    full,
                    String.format(
                            Locale.ROOT,
                            "at least %.0f %% of the greatest manifold pressure (the log has no throttle)",
                            100 * rule.fullLoad()));
        }
        Arrays.fill(full, true);
        return new PullLoad(full, "neither throttle nor manifold pressure logged, so that the load is not known");
    }

    private static boolean hasValue(LogFindings findings, LogChannel channel) {
        return Arrays.stream(findings.series(channel).values()).anyMatch(v -> !Double.isNaN(v));
    }

    private static double[] at(LogFindings findings, LogChannel channel, double[] time) {
        return findings.series(channel).at(time, Math.max(findings.longestStep(channel), PullSearch.LOST));
    }
}
