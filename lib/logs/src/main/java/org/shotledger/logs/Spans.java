package org.shotledger.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shotledger.units.UnitSystem;

/** Runs of rows that share one fault; many of them become one finding, so that a noisy sensor does not fill the page. */
final class Spans {
    private static final int MOST = 12;

    private final EngineLog log;
    private final Finding.Kind kind;
    private final String channel;
    private final String fault;
    private final String advice;
    private final List<int[]> kept = new ArrayList<>();
    private int spans;
    private int rows;
    private int first = -1;
    private int last;

    /** Spans of one fault; the sentence is channel, fault, place, advice. */
    Spans(EngineLog log, Finding.Kind kind, String channel, String fault, String advice) {
        this.log = log;
        this.kind = kind;
        this.channel = channel;
        this.fault = fault;
        this.advice = advice;
    }

    /** Adds the rows from one to another, both included. */
    void add(int from, int to) {
        if (first < 0) {
            first = from;
        }
        last = to;
        spans++;
        rows += to - from + 1;
        if (kept.size() < MOST) {
            kept.add(new int[] {from, to});
        }
    }

    List<Finding> findings() {
        if (spans == 0) {
            return List.of();
        }
        if (spans > MOST) {
            String where = String.format(
                    Locale.ROOT,
                    "%d times between %s and %s (%d rows, the first on line %d)",
                    spans,
                    time(first),
                    time(last),
                    rows,
                    log.line(first));
            return List.of(finding(first, last, rows, where));
        }
        return kept.stream()
                .map(span -> finding(span[0], span[1], span[1] - span[0] + 1, where(span[0], span[1])))
                .toList();
    }

    private Finding finding(int from, int to, int count, String where) {
        String sentence = channel + " " + fault + " " + where + "; " + advice + ".";
        return new Finding(
                kind,
                channel,
                log.raw(LogChannel.TIME)[from],
                log.raw(LogChannel.TIME)[to],
                count,
                Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1));
    }

    private String where(int from, int to) {
        return from == to
                ? "at " + time(from) + " (line " + log.line(from) + ")"
                : String.format(
                        Locale.ROOT,
                        "from %s to %s (%d rows from line %d)",
                        time(from),
                        time(to),
                        to - from + 1,
                        log.line(from));
    }

    private String time(int row) {
        return seconds(log.raw(LogChannel.TIME)[row]);
    }

    /** A time as findings write it. */
    static String seconds(double time) {
        return Double.isNaN(time) ? "an unknown time" : String.format(Locale.ROOT, "%.3f s", time);
    }

    /** A value as findings write it, in both systems where they differ. */
    static String value(LogChannel channel, double si) {
        String metric = channel.kind().text(si, UnitSystem.SI);
        String american = channel.kind().text(si, UnitSystem.US);
        return metric.equals(american) ? metric : metric + " (" + american + ")";
    }
}
