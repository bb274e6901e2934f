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
    private final double gapSteps;
    private final List<Finding> all;
    private final Map<LogChannel, BitSet> tainted;
    private final Map<LogChannel, Double> longest = new EnumMap<>(LogChannel.class);

    private LogFindings(EngineLog log, double gapSteps, List<Finding> all, Map<LogChannel, BitSet> tainted) {
        this.log = log;
        this.gapSteps = gapSteps;
        this.all = List.copyOf(all);
        this.tainted = tainted;
        log.channels()
                .forEach(c ->
                        longest.put(c, longest(gapSteps, ChannelRows.of(log, c).step())));
    }

    /** So many steps, and half a step for clocks that are not even. */
    private static double longest(double gapSteps, double step) {
        return (gapSteps + 0.5) * step;
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
        all.addAll(TimeChecks.of(
                log, longest(gapSteps, Series.medianStep(log.times().placed()))));
        Map<LogChannel, BitSet> tainted = new EnumMap<>(LogChannel.class);
        for (LogChannel channel : log.channels()) {
            if (channel != LogChannel.TIME) {
                BitSet rows = new BitSet();
                all.addAll(ChannelChecks.of(log, channel, gapSteps + 0.5, rows));
                tainted.put(channel, rows);
            }
        }
        return new LogFindings(log, gapSteps, all, tainted);
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
     * The longest step across which rows are joined.
     *
     * @return seconds; infinite when the log has no two times
     */
    public double longestStep() {
        return longest(gapSteps, Series.medianStep(log.times().placed()));
    }

    /**
     * The longest step across which the samples of a channel are joined; it follows the channel's own rate.
     *
     * @param channel a channel of the log
     * @return seconds; infinite when the channel has no two samples
     */
    public double longestStep(LogChannel channel) {
        return longest.getOrDefault(channel, longestStep());
    }

    /**
     * A channel over its own rising times, without what is not to be trusted.
     *
     * @param channel the channel
     * @return the series: cells without value and rows that cannot be placed in time are no samples, so that a channel logged at half
     *     the rate of the rows has half as many; values found implausible, clipped or frozen are NaN, and so is one sample between two
     *     stretches of a clock that began anew
     * @throws IllegalArgumentException when the log has no such channel
     */
    public Series series(LogChannel channel) {
        return ChannelRows.of(log, channel).series(tainted.getOrDefault(channel, new BitSet()));
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
