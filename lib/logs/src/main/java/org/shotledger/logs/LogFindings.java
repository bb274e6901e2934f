package org.shotledger.logs;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.shotledger.units.Require;

/** What is wrong with a log, and its series with the rows left out that this takes away. */
public final class LogFindings {
    /** Steps without a row that count as a gap when nothing else is said; our own choice. */
    public static final double USUAL_GAP = 3;

    private final EngineLog log;
    private final double longestStep;
    private final List<Finding> all;
    private final Map<LogChannel, BitSet> tainted;

    private LogFindings(EngineLog log, double longestStep, List<Finding> all, Map<LogChannel, BitSet> tainted) {
        this.log = log;
        this.longestStep = longestStep;
        this.all = List.copyOf(all);
        this.tainted = tainted;
    }

    /**
     * Looks for everything that is wrong.
     *
     * @param log the log
     * @param gapSteps how many median steps without a row count as a gap, 1.5 to 1000
     * @return the findings
     */
    public static LogFindings of(EngineLog log, double gapSteps) {
        Require.within("number of steps that count as a gap", gapSteps, 1.5, 1000, "");
        List<Finding> all = new ArrayList<>(log.reading());
        all.addAll(TimeChecks.of(log, gapSteps));
        Map<LogChannel, BitSet> tainted = new EnumMap<>(LogChannel.class);
        for (LogChannel channel : log.channels()) {
            if (channel != LogChannel.TIME) {
                BitSet rows = new BitSet();
                all.addAll(ChannelChecks.of(log, channel, rows));
                tainted.put(channel, rows);
            }
        }
        return new LogFindings(log, gapSteps * TimeChecks.medianStep(log.raw(LogChannel.TIME)), all, tainted);
    }

    /**
     * The log they are about.
     *
     * @return the log
     */
    public EngineLog log() {
        return log;
    }

    /**
     * All findings: of the heading, of time, then channel by channel.
     *
     * @return the findings
     */
    public List<Finding> all() {
        return all;
    }

    /**
     * The findings of one kind.
     *
     * @param kind the kind
     * @return the findings, perhaps none
     */
    public List<Finding> of(Finding.Kind kind) {
        return all.stream().filter(f -> f.kind() == kind).toList();
    }

    /**
     * The longest step across which a series is joined.
     *
     * @return seconds; infinite when the log has no two times
     */
    public double longestStep() {
        return longestStep;
    }

    /**
     * A channel over rising time, without what is not to be trusted.
     *
     * @param channel the channel
     * @return the series: rows whose time is missing or does not rise are left out; values found implausible, clipped or frozen are
     *     NaN
     * @throws IllegalArgumentException when the log has no such channel
     */
    public Series series(LogChannel channel) {
        double[] time = log.raw(LogChannel.TIME);
        double[] values = log.raw(channel);
        BitSet bad = tainted.getOrDefault(channel, new BitSet());
        double[] t = new double[time.length];
        double[] v = new double[time.length];
        int n = 0;
        for (int i = 0; i < time.length; i++) {
            if (time[i] > (n == 0 ? Double.NEGATIVE_INFINITY : t[n - 1])) {
                t[n] = time[i];
                v[n++] = bad.get(i) ? Double.NaN : values[i];
            }
        }
        return new Series(java.util.Arrays.copyOf(t, n), java.util.Arrays.copyOf(v, n));
    }

    /**
     * Tells whether a value was found implausible, clipped or frozen.
     *
     * @param channel its channel
     * @param row its row from 0
     * @return true when it is not to be trusted
     */
    public boolean tainted(LogChannel channel, int row) {
        BitSet bad = tainted.get(channel);
        return bad != null && bad.get(row);
    }

    /**
     * The findings in one line.
     *
     * @return counts by kind, or that there is nothing
     */
    public String summary() {
        if (all.isEmpty()) {
            return log.file() + ": " + log.rows() + " rows, nothing wrong found.";
        }
        Map<Finding.Kind, Long> counts = all.stream()
                .collect(Collectors.groupingBy(
                        Finding::kind, () -> new EnumMap<>(Finding.Kind.class), Collectors.counting()));
        return log.file() + ": " + log.rows() + " rows; found "
                + counts.entrySet().stream()
                        .map(e -> e.getKey().words() + (e.getValue() > 1 ? " (" + e.getValue() + ")" : ""))
                        .collect(Collectors.joining(", "))
                + ".";
    }

    @Override
    public String toString() {
        return summary() + all.stream().map(f -> "\n- " + f.sentence()).collect(Collectors.joining());
    }
}
