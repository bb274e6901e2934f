package org.shotledger.logs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What later steps will not be able to say about a log, as far as the log itself shows it. */
public final class LaterSteps {
    /** A channel with trusted values in less of the pull than this says little; our choice. */
    private static final double ENOUGH = 0.5;

    private LaterSteps() {}

    /**
     * Looks a log through for what a comparison with a plan will miss, beyond the channels its findings name as missing.
     *
     * @param findings the log with its findings
     * @param rule what counts as a pull
     * @return one finding for each, with what to do; none when nothing will be missed
     */
    public static List<Finding> missed(LogFindings findings, PullRule rule) {
        List<Finding> missed = new ArrayList<>();
        EngineLog log = findings.log();
        for (LogNeed need : LogNeed.values()) {
            if (!need.usual() && need.channels().stream().noneMatch(log::has)) {
                missed.add(finding(need.words(), "The log has no " + need.words() + ": " + need.without() + "."));
            }
        }
        if (!log.has(LogChannel.ENGINE_SPEED)) {
            return missed;
        }
        Pulls pulls = Pulls.in(findings, rule);
        if (pulls.all().isEmpty()) {
            missed.add(finding("engine speed", pulls.why()));
            return missed;
        }
        if (pulls.all().size() > 1) {
            missed.add(finding(
                    "engine speed",
                    "The log holds " + pulls.all().size() + " pulls (" + pulls.list()
                            + "); a comparison of one takes the widest, name others by their number."));
        }
        for (LogNeed need : LogNeed.values()) {
            for (LogChannel channel : need.channels()) {
                if (log.has(channel) && channel != LogChannel.ENGINE_SPEED) {
                    seldom(findings, channel, need, pulls.widest(), missed);
                }
            }
        }
        nitrous(findings, pulls, missed);
        return missed;
    }

    private static void seldom(
            LogFindings findings, LogChannel channel, LogNeed need, Pull pull, List<Finding> missed) {
        double[] moments = moments(pull);
        double[] values = findings.series(channel).at(moments, findings.longestStep(channel));
        long good = Arrays.stream(values).filter(v -> !Double.isNaN(v)).count();
        if (good < ENOUGH * moments.length) {
            missed.add(finding(
                    channel.words(),
                    String.format(
                            Locale.ROOT,
                            "The %s has values to be trusted in %.0f %% of the pull from %.2f s to %.2f s: for the rest, %s.",
                            channel.words(),
                            100.0 * good / moments.length,
                            pull.from(),
                            pull.to(),
                            need.without())));
        }
    }

    private static double[] moments(Pull pull) {
        double[] moments = new double[200];
        for (int i = 0; i < moments.length; i++) {
            moments[i] = pull.from() + (pull.to() - pull.from()) * (i + 0.5) / moments.length;
        }
        return moments;
    }

    private static void nitrous(LogFindings findings, Pulls pulls, List<Finding> missed) {
        EngineLog log = findings.log();
        if (!log.has(LogChannel.NITROUS_ON) && !log.has(LogChannel.BOTTLE_PRESSURE)) {
            return;
        }
        List<OnInterval> on = OnInterval.in(findings);
        if (on.isEmpty()) {
            missed.add(finding(
                    "nitrous on",
                    "The nitrous is never on in this log: only the engine without it can be compared, nothing can be said of"
                            + " jets, bottle or nitrous fuel."));
            return;
        }
        boolean off = pulls.all().stream()
                .flatMapToDouble(p -> Arrays.stream(moments(p)))
                .anyMatch(t -> on.stream().noneMatch(o -> o.holds(t)));
        if (!off) {
            missed.add(finding(
                    "nitrous on",
                    "The nitrous is on all through every pull: main injectors, sensor and breathing cannot be told from the"
                            + " nitrous jets; log a pull, or a part of one, without it."));
        }
    }

    private static Finding finding(String channel, String sentence) {
        return new Finding(Finding.Kind.MISSED_LATER, channel, Double.NaN, Double.NaN, 1, sentence);
    }
}
