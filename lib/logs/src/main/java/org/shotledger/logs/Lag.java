package org.shotledger.logs;

import java.util.Locale;

/**
 * How much later one signal comes than another.
 *
 * <p>For each whole number of steps the correlation coefficient of the samples that overlap is taken (direct sum, samples without value
 * left out); the place of its maximum between steps is that of a parabola through the greatest value and its neighbours.
 *
 * @param seconds how much later the second signal comes, s; NaN when it cannot be told
 * @param correlation correlation coefficient at that lag, -1 to 1
 * @param sentence what was found and how
 */
public record Lag(double seconds, double correlation, String sentence) {
    /** Correlation below which no lag is told: our choice, half of the variance explained. */
    private static final double CLEAR = 0.7;
    /** Samples that must overlap: our choice. */
    private static final int FEWEST = 16;
    /** Relative variance below which a signal does not move but for rounding. */
    private static final double STILL = 1e-18;

    /**
     * Compares two signals at the same equal steps.
     *
     * @param reference the first signal
     * @param late the second signal, as many samples
     * @param step the step, s
     * @param most largest lag looked at, either way, s
     * @return the lag; NaN seconds where the best correlation is below 0.7 or lies at the end of what was looked at
     */
    public static Lag of(double[] reference, double[] late, double step, double most) {
        if (reference.length != late.length) {
            throw new IllegalArgumentException("The signals to be aligned have " + reference.length + " and "
                    + late.length + " samples; bring both to one step and length first.");
        }
        int reach = Math.min((int) Math.round(most / step), reference.length - FEWEST);
        if (reach < 1) {
            return new Lag(Double.NaN, Double.NaN, "The signals are too short to be aligned.");
        }
        double[] r = new double[2 * reach + 1];
        int best = -1;
        for (int k = -reach; k <= reach; k++) {
            r[k + reach] = correlation(reference, late, k);
            if (!Double.isNaN(r[k + reach]) && (best < 0 || r[k + reach] > r[best])) {
                best = k + reach;
            }
        }
        if (best < 0) {
            return new Lag(
                    Double.NaN, Double.NaN, "One of the signals does not move, so that their lag cannot be told.");
        }
        if (r[best] < CLEAR) {
            return new Lag(
                    Double.NaN,
                    r[best],
                    String.format(
                            Locale.ROOT,
                            "The signals do not follow each other (best correlation %.2f, at least %.1f is wanted); their lag"
                                    + " cannot be told.",
                            r[best],
                            CLEAR));
        }
        if (best == 0 || best == 2 * reach || Double.isNaN(r[best - 1]) || Double.isNaN(r[best + 1])) {
            return new Lag(
                    Double.NaN,
                    r[best],
                    String.format(
                            Locale.ROOT,
                            "The correlation is best at the end of what was looked at, %.3f s; look further.",
                            (best - reach) * step));
        }
        double curve = r[best - 1] - 2 * r[best] + r[best + 1];
        double part = curve < 0 ? 0.5 * (r[best - 1] - r[best + 1]) / curve : 0;
        double seconds = (best - reach + part) * step;
        return new Lag(
                seconds,
                r[best],
                String.format(
                        Locale.ROOT,
                        "The second signal comes %.0f ms later (cross-correlation %.3f, step %.0f ms, peak by parabola).",
                        1e3 * seconds,
                        r[best],
                        1e3 * step));
    }

    /**
     * Tells whether the lag is known.
     *
     * @return true when it is
     */
    public boolean clear() {
        return !Double.isNaN(seconds);
    }

    private static double correlation(double[] x, double[] y, int lag) {
        int from = Math.max(0, -lag);
        int to = Math.min(x.length, x.length - lag);
        int n = 0;
        double sx = 0;
        double sy = 0;
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(x[i] + y[i + lag])) {
                sx += x[i];
                sy += y[i + lag];
                n++;
            }
        }
        if (n < FEWEST) {
            return Double.NaN;
        }
        double mx = sx / n;
        double my = sy / n;
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (int i = from; i < to; i++) {
            double dx = x[i] - mx;
            double dy = y[i + lag] - my;
            if (!Double.isNaN(dx + dy)) {
                xx += dx * dx;
                yy += dy * dy;
                xy += dx * dy;
            }
        }
        return xx > STILL * mx * mx && yy > STILL * my * my ? xy / Math.sqrt(xx * yy) : Double.NaN;
    }
}
