package org.shotledger.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Goes through the engine speed of a log for pulls, and remembers what came nearest to one. */
final class PullSearch {
    /** A dip shorter than this does not end a pull, s; our choice. */
    private static final double DIP = 0.15;

    /** Rows lost for so long do not end a pull whose engine speed goes on behind them, s; our choice. */
    static final double LOST = 0.5;

    private final LogFindings findings;
    private final PullRule rule;
    private final Series rpm;
    private final double[] speed;
    private final double[] rise;
    private final PullLoad load;

    PullSearch(LogFindings findings, PullRule rule) {
        this.findings = findings;
        this.rule = rule;
        Series raw = findings.series(LogChannel.ENGINE_SPEED);
        double step = raw.step();
        if (!Double.isFinite(step)) {
            this.rpm = new Series(new double[0], new double[0]);
            this.speed = new double[0];
            this.rise = new double[0];
        } else {
            this.rpm = raw.every(step, Math.max(findings.longestStep(LogChannel.ENGINE_SPEED), LOST));
            SavitzkyGolay filter = SavitzkyGolay.lasting(rule.smoothing(), step, 2);
            this.speed = filter.smooth(rpm.values());
            this.rise = filter.slope(rpm.values(), step);
        }
        this.load = PullLoad.of(findings, rule, rpm.time());
    }

    Pulls pulls() {
        List<Pull> pulls = new ArrayList<>();
        for (int[] run : runs(true)) {
            if (isPull(run)) {
                pulls.add(pull(run));
            }
        }
        return new Pulls(pulls, pulls.isEmpty() ? none() : pulls.size() + (pulls.size() == 1 ? " pull" : " pulls"));
    }

    /** Stretches in which the speed rises fast enough, under load or however; first and last sample of each. */
    private List<int[]> runs(boolean underLoad) {
        List<int[]> runs = new ArrayList<>();
        for (int from = 0; from < speed.length; from++) {
            if (rises(from, underLoad)) {
                int to = end(from, underLoad);
                runs.add(new int[] {from, to});
                from = to;
            }
        }
        return runs;
    }

    private boolean rises(int i, boolean underLoad) {
        return rise[i] >= rule.leastRise() && (!underLoad || load.full()[i]);
    }

    /** The last rising sample; a short dip does not end the run, a longer gap does. */
    private int end(int from, boolean underLoad) {
        int dip = (int) Math.round(DIP / (rpm.time()[1] - rpm.time()[0]));
        int last = from;
        for (int i = from + 1; i < rise.length && i - last <= dip + 1 && !Double.isNaN(rise[i]); i++) {
            last = rises(i, underLoad) ? i : last;
        }
        return last;
    }

    private double span(int[] run) {
        return speed[run[1]] - speed[run[0]];
    }

    private double lasts(int[] run) {
        return rpm.time()[run[1]] - rpm.time()[run[0]];
    }

    private boolean isPull(int[] run) {
        return span(run) >= rule.leastSpan() && lasts(run) >= rule.leastSeconds();
    }

    private Pull pull(int[] run) {
        double from = rpm.time()[run[0]];
        double to = rpm.time()[run[1]];
        String why = String.format(
                Locale.ROOT,
                "From %.2f s to %.2f s the engine speed rises from %.0f to %.0f rpm, never slower than %.0f rpm/s within %.2f s,"
                        + " with %s.",
                from,
                to,
                speed[run[0]],
                speed[run[1]],
                rule.leastRise(),
                rule.smoothing(),
                load.words());
        return new Pull(from, to, speed[run[0]], speed[run[1]], why);
    }

    /** What the engine speed does where there is no pull. */
    private String none() {
        String begin = "The log " + findings.log().file() + " has no pull: ";
        if (speed.length == 0) {
            return begin + "the engine speed has fewer than two values to be trusted.";
        }
        int[] any = widest(runs(false));
        if (any == null) {
            return begin
                    + String.format(
                            Locale.ROOT,
                            "the engine speed nowhere rises by %.0f rpm/s within %.2f s; log a run from low speed to the limiter.",
                            rule.leastRise(),
                            rule.smoothing());
        }
        if (isPull(any)) {
            return begin
                    + String.format(
                            Locale.ROOT,
                            "the engine speed rises from %.0f to %.0f rpm from %.2f s on, but without %s; check the throttle's"
                                    + " unit and range, or log a run wide open.",
                            speed[any[0]],
                            speed[any[1]],
                            rpm.time()[any[0]],
                            load.words());
        }
        return begin
                + String.format(
                        Locale.ROOT,
                        "the widest rise of engine speed, from %.0f to %.0f rpm from %.2f s on, spans %.0f rpm in %.2f s, and at"
                                + " least %.0f rpm and %.1f s are wanted%s.",
                        speed[any[0]],
                        speed[any[1]],
                        rpm.time()[any[0]],
                        span(any),
                        lasts(any),
                        rule.leastSpan(),
                        rule.leastSeconds(),
                        broken(any) ? "; rows are missing for too long beside it" : "");
    }

    private boolean broken(int[] run) {
        int before = Math.max(0, run[0] - 1);
        int after = Math.min(rise.length - 1, run[1] + 1);
        return Double.isNaN(rise[before]) || Double.isNaN(rise[after]);
    }

    private int[] widest(List<int[]> runs) {
        int[] best = null;
        for (int[] run : runs) {
            if (best == null || span(run) > span(best)) {
                best = run;
            }
        }
        return best;
    }
}
