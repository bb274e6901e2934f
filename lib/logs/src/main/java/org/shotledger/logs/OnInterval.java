package org.shotledger.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A stretch of a log in which the nitrous is on.
 *
 * @param from first moment, s
 * @param to last moment, s
 * @param why how it is known, in one sentence
 */
public record OnInterval(double from, double to, String why) {
    /** Fall of bottle pressure, Pa/s, that only an open valve makes: our choice, above the drift of a gauge. */
    private static final double FALL = 0.2e5;
    /** Time, s, below which a fall may be noise: our choice. */
    private static final double SHORTEST = 0.4;
    /** Window of the slope, s: our choice, some samples of a slow log. */
    private static final double WINDOW = 0.5;

    /**
     * Finds when the nitrous is on: by its state where the log has it, otherwise by the fall of bottle pressure.
     *
     * @param findings the log with its findings
     * @return the intervals in order of time; none when it is never on or nothing tells
     */
    public static List<OnInterval> in(LogFindings findings) {
        if (findings.log().has(LogChannel.NITROUS_ON)) {
            return byState(findings.series(LogChannel.NITROUS_ON));
        }
        return findings.log().has(LogChannel.BOTTLE_PRESSURE)
                ? byPressure(
                        findings.series(LogChannel.BOTTLE_PRESSURE), findings.longestStep(LogChannel.BOTTLE_PRESSURE))
                : List.of();
    }

    /**
     * Tells whether a moment lies within.
     *
     * @param time the moment, s
     * @return true when the nitrous is on then
     */
    public boolean holds(double time) {
        return time >= from && time <= to;
    }

    private static List<OnInterval> byState(Series state) {
        List<OnInterval> found = new ArrayList<>();
        for (int i = 0; i < state.size(); i++) {
            if (state.values()[i] > 0.5) {
                int from = i;
                while (i + 1 < state.size() && state.values()[i + 1] > 0.5) {
                    i++;
                }
                found.add(new OnInterval(
                        state.time()[from],
                        state.time()[i],
                        String.format(
                                Locale.ROOT,
                                "The nitrous is on from %.2f s to %.2f s: the logged state says so.",
                                state.time()[from],
                                state.time()[i])));
            }
        }
        return List.copyOf(found);
    }

    private static List<OnInterval> byPressure(Series pressure, double longestStep) {
        double step = pressure.step();
        if (!Double.isFinite(step)) {
            return List.of();
        }
        Series even = pressure.every(step, longestStep);
        double[] slope = SavitzkyGolay.lasting(WINDOW, step, 1).slope(even.values(), step);
        List<OnInterval> found = new ArrayList<>();
        for (int i = 0; i < slope.length; i++) {
            if (slope[i] <= -FALL) {
                int from = i;
                while (i + 1 < slope.length && slope[i + 1] <= -FALL) {
                    i++;
                }
                if (even.time()[i] - even.time()[from] >= SHORTEST) {
                    found.add(new OnInterval(
                            even.time()[from],
                            even.time()[i],
                            String.format(
                                    Locale.ROOT,
                                    "The nitrous is on from about %.2f s to %.2f s: the bottle pressure falls faster than %.1f bar/s"
                                            + " (the log has no state of the nitrous).",
                                    even.time()[from],
                                    even.time()[i],
                                    FALL / 1e5)));
                }
            }
        }
        return List.copyOf(found);
    }
}
