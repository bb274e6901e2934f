package org.shotledger.reconcile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;
import org.shotledger.logs.OnInterval;
import org.shotledger.logs.Pull;
import org.shotledger.logs.SavitzkyGolay;
import org.shotledger.logs.Series;

/**
 * A pull at round engine speeds: when each was passed, whether the nitrous was on, and the smoothed channels there.
 *
 * <p>Smoothing: Savitzky-Golay, degree 2, a window of 0.2 s. Near a change of the nitrous, within the settling time, a point belongs
 * to neither state; the last window of the pull is left out, for the smoothing looks ahead.
 */
final class RunGrid {
    /** Window of the smoothing, s. */
    static final double WINDOW = 0.2;
    /** Time after a change of the nitrous before figures are compared, s; our own choice. */
    static final double SETTLING = 0.4;

    /** Distance of the engine speeds at which passages are laid side by side, rpm: our choice. */
    private static final double SPEED_STEP = 100;
    /** What sums of decimal times may be off by, s. */
    private static final double ROUNDING = 1e-6;

    private final LogFindings findings;
    private final double step;
    private final SavitzkyGolay filter;
    private final List<OnInterval> on;
    private final double[] rpm;
    private final double[] time;
    private final double[] edges;

    /** A pull; at the edges, rev/min, the plan changes its boost. */
    RunGrid(LogFindings findings, Pull pull, double... edges) {
        this.edges = edges;
        this.findings = findings;
        this.on = OnInterval.in(findings);
        Series raw = findings.series(LogChannel.ENGINE_SPEED);
        this.step = raw.step();
        this.filter = SavitzkyGolay.lasting(WINDOW, step, 2);
        Series even = raw.every(step, findings.longestStep(LogChannel.ENGINE_SPEED));
        double[] speed = filter.smooth(even.values());
        List<double[]> met = new ArrayList<>();
        double next = Math.ceil(pull.rpmLow() / SPEED_STEP) * SPEED_STEP;
        for (int i = 1; i < speed.length; i++) {
            boolean within = even.time()[i - 1] >= pull.from() && even.time()[i] <= pull.to() - WINDOW;
            while (within && speed[i - 1] <= next && speed[i] >= next && speed[i] > speed[i - 1]) {
                double share = (next - speed[i - 1]) / (speed[i] - speed[i - 1]);
                met.add(new double[] {next, even.time()[i - 1] + share * step});
                next += SPEED_STEP;
            }
        }
        this.rpm = met.stream().mapToDouble(m -> m[0]).toArray();
        this.time = met.stream().mapToDouble(m -> m[1]).toArray();
    }

    double[] rpm() {
        return rpm;
    }

    double[] time() {
        return time;
    }

    double step() {
        return step;
    }

    /** The interval that holds a point. */
    Optional<OnInterval> on(int i) {
        return on.stream().filter(o -> o.holds(time[i])).findFirst();
    }

    /** Whether the nitrous is on at a moment. */
    boolean onAt(double moment) {
        return on.stream().anyMatch(o -> moment >= o.from() - ROUNDING && moment <= o.to() + ROUNDING);
    }

    /** Whether a point lies clear of every change of the nitrous and of the boost. */
    boolean settled(int i) {
        for (double edge : edges) {
            for (int k = 0; k < rpm.length; k++) {
                boolean crosses = k + 1 < rpm.length && rpm[k] <= edge && rpm[k + 1] > edge;
                if (crosses && time[i] >= time[k] && time[i] < time[k] + SETTLING) {
                    return false;
                }
            }
        }
        return on.stream()
                .allMatch(o -> (time[i] < o.from() || time[i] >= o.from() + SETTLING)
                        && (time[i] <= o.to() - WINDOW / 2 || time[i] > o.to() + SETTLING)
                        && !(time[i] < o.from() && time[i] > o.from() - WINDOW / 2));
    }

    /** A channel at even steps, smoothed. */
    private Series smoothed(LogChannel channel) {
        Series even = findings.series(channel).every(step, findings.longestStep(channel));
        return new Series(even.time(), filter.smooth(even.values()));
    }

    /** A channel at the points, read later by its lag; NaN where it is not to be trusted. */
    double[] at(LogChannel channel, double lag) {
        double[] shifted = Arrays.stream(time).map(t -> t + lag).toArray();
        return smoothed(channel).at(shifted, 1.5 * step);
    }

    /**
     * Scatter of one sample: 1.4826 times the median size of what the smoothing takes away within the pull (normal scatter; F. R.
     * Hampel, J. Am. Stat. Assoc. 69 (1974) 383-393), so that a step of the nitrous does not count as scatter.
     */
    double scatter(LogChannel channel) {
        Series even = findings.series(channel).every(step, findings.longestStep(channel));
        double[] smooth = filter.smooth(even.values());
        double[] sizes = IntStream.range(0, smooth.length)
                .filter(i -> time.length > 0 && even.time()[i] >= time[0] && even.time()[i] <= time[time.length - 1])
                .mapToDouble(i -> Math.abs(even.values()[i] - smooth[i]))
                .filter(size -> !Double.isNaN(size))
                .sorted()
                .toArray();
        // what is left of scatter s after smoothing has variance (1 - c) s^2, c the middle weight, which equals noise()
        return sizes.length < 10 ? Double.NaN : 1.4826 * sizes[sizes.length / 2] / Math.sqrt(1 - filter.noise());
    }

    /** Standard uncertainty of a smoothed value from scatter alone. */
    double noise(LogChannel channel) {
        return scatter(channel) * Math.sqrt(filter.noise());
    }
}
