package org.shotledger.logs;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntPredicate;

/** What can be wrong with the values of a channel. */
final class ChannelChecks {
    /** Speed, rpm, below which a turbocharger gives no boost worth the name: common practice, no source. */
    private static final double IDLE_SPEED = 1500;
    /** Boost, Pa, that a gauge without a fault does not show there: our choice, far above a sensor's error. */
    private static final double IDLE_BOOST = 0.5e5;

    private ChannelChecks() {}

    static List<Finding> of(EngineLog log, LogChannel channel, double longestSteps, BitSet tainted) {
        double[] values = log.raw(channel);
        ChannelRows samples = ChannelRows.of(log, channel);
        List<Finding> findings = new ArrayList<>(RateCheck.of(log, channel, samples, longestSteps));
        Spans implausible = new Spans(
                log,
                Finding.Kind.IMPLAUSIBLE,
                channel.words(),
                "leaves what is plausible, " + channel.range() + ", with values of " + extremes(channel, values) + ",",
                advice(channel));
        runs(values.length, i -> !Double.isNaN(values[i]) && !channel.plausible(values[i]), implausible, tainted);
        findings.addAll(implausible.findings());
        if (channel.pace() != LogChannel.Pace.STATE) {
            findings.addAll(new StuckCheck(log, channel, samples, tainted).findings());
        }
        if (channel == LogChannel.MANIFOLD_PRESSURE) {
            findings.addAll(boostAtIdle(log));
        }
        return findings;
    }

    static void runs(int n, IntPredicate bad, Spans spans, BitSet rows) {
        for (int from = 0; from < n; from++) {
            if (bad.test(from)) {
                int to = from;
                while (to + 1 < n && bad.test(to + 1)) {
                    to++;
                }
                spans.add(from, to);
                rows.set(from, to + 1);
                from = to;
            }
        }
    }

    private static String extremes(LogChannel channel, double[] values) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            if (!Double.isNaN(value)) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
        return Spans.value(channel, low) + " to " + Spans.value(channel, high);
    }

    private static String advice(LogChannel channel) {
        return switch (channel) {
            case LAMBDA -> "check the sensor, and map the column with \"stoichiometric\" if it holds an air-fuel ratio";
            case MANIFOLD_PRESSURE, FUEL_PRESSURE, BOTTLE_PRESSURE, NITROUS_FUEL_PRESSURE ->
                "check the sensor, the unit, and whether a gauge pressure was taken for an absolute one";
            case NITROUS_ON -> "a state is 0 or 1, on or off; map the column that holds it";
            default -> "check the sensor and the unit";
        };
    }

    /** An engine that idles makes no boost: an absolute pressure was probably taken for a gauge one. */
    private static List<Finding> boostAtIdle(EngineLog log) {
        if (!log.has(LogChannel.ENGINE_SPEED) || Double.isNaN(log.ambient())) {
            return List.of();
        }
        double[] rpm = log.raw(LogChannel.ENGINE_SPEED);
        double[] pressure = log.raw(LogChannel.MANIFOLD_PRESSURE);
        Spans spans = new Spans(
                log,
                Finding.Kind.SUSPECT_UNIT,
                "manifold pressure",
                "is more than " + Spans.value(LogChannel.MANIFOLD_PRESSURE, log.ambient() + IDLE_BOOST) + " below "
                        + Math.round(IDLE_SPEED) + " rpm",
                "an engine that idles makes no boost, check whether an absolute pressure was taken for a gauge one");
        runs(rpm.length, i -> rpm[i] < IDLE_SPEED && pressure[i] > log.ambient() + IDLE_BOOST, spans, new BitSet());
        return spans.findings();
    }
}
