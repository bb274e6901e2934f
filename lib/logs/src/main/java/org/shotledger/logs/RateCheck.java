package org.shotledger.logs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;

/** Tells a channel that is logged at a rate of its own from one that lost values. */
final class RateCheck {
    /** A channel whose usual step is at least so many row steps has a rate of its own; our choice. */
    private static final double OWN = 1.6;

    /** Nor has it one when more than this share of the rows hold a value: then values were lost. */
    private static final double MOST_ROWS = 0.6;

    private RateCheck() {}

    static List<Finding> of(EngineLog log, LogChannel channel, ChannelRows samples, double longestSteps) {
        double[] values = log.raw(channel);
        double row = Series.medianStep(log.times().placed());
        double own = samples.step();
        List<Finding> findings = new ArrayList<>();
        int n = samples.rows().length;
        boolean slower = Double.isFinite(own)
                && own >= OWN * row
                && n <= MOST_ROWS * (samples.rows()[n - 1] - samples.rows()[0] + 1);
        if (slower) {
            findings.add(new Finding(
                    Finding.Kind.OWN_RATE,
                    channel.words(),
                    samples.time()[0],
                    samples.time()[n - 1],
                    n,
                    String.format(
                            Locale.ROOT,
                            "The %s is logged every %.4g s, the rows every %.4g s; it is used at its own times.",
                            channel.words(),
                            own,
                            row)));
        }
        Spans nothing = new Spans(log, Finding.Kind.NO_VALUE, channel.words(), "has no value", "nothing is filled in");
        double longest = longestSteps * own;
        double[] placed = log.times().placed();
        ChannelChecks.runs(
                values.length,
                i -> Double.isNaN(values[i]) && (!slower || lost(samples, placed[i], longest)),
                nothing,
                new BitSet());
        findings.addAll(nothing.findings());
        return findings;
    }

    /** Whether a moment lies between two samples further apart than the channel's rate explains, or outside all of them. */
    private static boolean lost(ChannelRows samples, double at, double longest) {
        double[] time = samples.time();
        int found = Arrays.binarySearch(time, at);
        int after = found >= 0 ? found : -found - 1;
        if (Double.isNaN(at) || found >= 0) {
            return false;
        }
        if (after == 0 || after == time.length) {
            return Math.abs(at - time[after == 0 ? 0 : after - 1]) > longest;
        }
        return time[after] - time[after - 1] > longest;
    }
}
