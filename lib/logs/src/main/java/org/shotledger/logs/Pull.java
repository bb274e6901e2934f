package org.shotledger.logs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A stretch of a log in which the engine, wide open, runs up.
 *
 * @param from beginning, s
 * @param to end, s
 * @param rpmLow engine speed at the beginning, rev/min
 * @param rpmHigh engine speed at the end, rev/min
 * @param why by which rule it was found, in one sentence
 */
public record Pull(double from, double to, double rpmLow, double rpmHigh, String why) {
    private static final double DIP = 0.15;

    /**
     * Finds the pulls of a log.
     *
     * @param findings the log with its findings
     * @param rule what counts as a pull
     * @return the pulls, the one over the widest range of engine speed first; none when there is none
     * @throws IllegalArgumentException when the log has no engine speed
     */
    public static List<Pull> in(LogFindings findings, PullRule rule) {
        Series raw = findings.series(LogChannel.ENGINE_SPEED);
        double step = raw.step();
        if (!Double.isFinite(step)) {
            return List.of();
        }
        Series rpm = raw.every(step, findings.longestStep());
        SavitzkyGolay filter = SavitzkyGolay.lasting(rule.smoothing(), step, 2);
        double[] speed = filter.smooth(rpm.values());
        double[] rise = filter.slope(rpm.values(), step);
        Load load = Load.of(findings, rule, rpm.time());
        List<Pull> pulls = new ArrayList<>();
        for (int from = 0; from < speed.length; from++) {
            if (rises(rise, load, from, rule)) {
                int to = end(rise, load, from, rule, (int) Math.round(DIP / step));
                add(pulls, rpm.time(), speed, from, to, rule, load);
                from = to;
            }
        }
        pulls.sort(Comparator.comparingDouble((Pull p) -> p.rpmLow() - p.rpmHigh()));
        return List.copyOf(pulls);
    }

    private static boolean rises(double[] rise, Load load, int i, PullRule rule) {
        return rise[i] >= rule.leastRise() && load.full()[i];
    }

    /** The last rising sample; a dip shorter than the time allowed for it does not end a pull, a gap does. */
    private static int end(double[] rise, Load load, int from, PullRule rule, int dip) {
        int last = from;
        for (int i = from + 1; i < rise.length && i - last <= dip + 1 && !Double.isNaN(rise[i]); i++) {
            last = rises(rise, load, i, rule) ? i : last;
        }
        return last;
    }

    private static void add(
            List<Pull> pulls, double[] time, double[] speed, int from, int to, PullRule rule, Load load) {
        double span = speed[to] - speed[from];
        double lasts = time[to] - time[from];
        if (span >= rule.leastSpan() && lasts >= rule.leastSeconds()) {
            String why = String.format(
                    Locale.ROOT,
                    "From %.2f s to %.2f s the engine speed rises from %.0f to %.0f rpm, never slower than %.0f rpm/s within %.2f s,"
                            + " with %s.",
                    time[from],
                    time[to],
                    speed[from],
                    speed[to],
                    rule.leastRise(),
                    rule.smoothing(),
                    load.words());
            pulls.add(new Pull(time[from], time[to], speed[from], speed[to], why));
        }
    }

    /** Where the engine is wide open, and how that is known. */
    @SuppressWarnings("ArrayRecordComponent") // lives for one search only
    private record Load(boolean[] full, String words) {
        static Load of(LogFindings findings, PullRule rule, double[] time) {
            boolean[] full = new boolean[time.length];
            if (findings.log().has(LogChannel.THROTTLE)) {
                mark(full, findings, LogChannel.THROTTLE, time, rule.openThrottle());
                return new Load(
                        full,
                        String.format(Locale.ROOT, "the throttle at least %.0f %% open", 100 * rule.openThrottle()));
            }
            if (findings.log().has(LogChannel.MANIFOLD_PRESSURE)) {
                double[] raw = findings.log().values(LogChannel.MANIFOLD_PRESSURE);
                double most =
                        Arrays.stream(raw).filter(v -> !Double.isNaN(v)).max().orElse(Double.NaN);
                fromPressure(full, findings, time, rule.fullLoad() * most);
                return new Load(
                        full,
                        String.format(
                                Locale.ROOT,
                                "at least %.0f %% of the greatest manifold pressure (the log has no throttle)",
                                100 * rule.fullLoad()));
            }
            Arrays.fill(full, true);
            return new Load(full, "neither throttle nor manifold pressure logged, so that the load is not known");
        }

        private static void mark(
                boolean[] full, LogFindings findings, LogChannel channel, double[] time, double least) {
            double[] values = findings.series(channel).at(time, findings.longestStep());
            for (int i = 0; i < full.length; i++) {
                full[i] = values[i] >= least;
            }
        }

        /** A sensor at its end still shows load, so that the values as read count here. */
        private static void fromPressure(boolean[] full, LogFindings findings, double[] time, double least) {
            Series trusted = findings.series(LogChannel.MANIFOLD_PRESSURE);
            double[] values = trusted.at(time, findings.longestStep());
            for (int i = 0; i < full.length; i++) {
                full[i] = Double.isNaN(values[i]) || values[i] >= least;
            }
        }
    }
}
