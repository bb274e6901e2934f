package org.shotledger.logs;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What can be wrong with the time of a log. */
final class TimeChecks {
    private static final int MOST_TOLD = 12;

    private TimeChecks() {}

    static List<Finding> of(EngineLog log, double longest) {
        RowTimes times = log.times();
        double[] raw = log.raw(LogChannel.TIME);
        Spans nothing = new Spans(
                log,
                Finding.Kind.NO_VALUE,
                "time",
                "has no value",
                "these rows cannot be placed and are left out of series");
        Spans falls = new Spans(
                log,
                Finding.Kind.TIME_FALLS,
                "time",
                "falls below what it was before",
                "rows are left out of series until it is passed again");
        Spans again = new Spans(
                log,
                Finding.Kind.ROWS_REPEATED,
                "time",
                "is gone through once more with the same values",
                "the second of such rows is left out of series");
        Spans twice = new Spans(
                log,
                Finding.Kind.TIME_TWICE,
                "time",
                "is that of the row before",
                "of such rows each channel uses the first that has a value");
        for (int i = 0; i < raw.length; i++) {
            boolean same = i > 0 && raw[i] == raw[i - 1] && !times.coarse();
            Spans found = Double.isNaN(raw[i])
                    ? nothing
                    : times.fallen().get(i) ? falls : times.repeated().get(i) ? again : same ? twice : null;
            if (found != null) {
                found.add(i, i);
            }
        }
        List<Finding> findings = new ArrayList<>(nothing.findings());
        findings.addAll(falls.findings());
        findings.addAll(again.findings());
        findings.addAll(twice.findings());
        findings.addAll(clocks(log));
        findings.addAll(fewer(gaps(log, longest)));
        return findings;
    }

    private static List<Finding> clocks(EngineLog log) {
        List<Finding> findings = new ArrayList<>();
        double[] raw = log.raw(LogChannel.TIME);
        List<Integer> starts = log.times().starts();
        for (int start : starts.subList(Math.min(1, starts.size()), Math.min(MOST_TOLD, starts.size()))) {
            findings.add(finding(
                    Finding.Kind.CLOCK_RESTARTS,
                    raw[start],
                    String.format(
                            Locale.ROOT,
                            "The clock begins anew at %.3f s (line %d); what follows is a stretch of its own, laid %.0f s behind"
                                    + " the one before, and nothing is joined across.",
                            raw[start],
                            log.line(start),
                            RowTimes.PAUSE)));
        }
        if (log.times().coarse()) {
            double step = Series.medianStep(raw);
            findings.add(finding(
                    Finding.Kind.COARSE_CLOCK,
                    raw[0],
                    String.format(
                            Locale.ROOT,
                            "Several rows in turn carry one time, the clock steps by %.4g s; they are spread evenly up to the next"
                                    + " time, so that each may stand wrong by as much.",
                            step)));
        }
        return findings;
    }

    private static Finding finding(Finding.Kind kind, double at, String sentence) {
        return new Finding(kind, "time", at, at, 1, sentence);
    }

    private static List<Finding> gaps(EngineLog log, double longest) {
        double[] raw = log.raw(LogChannel.TIME);
        double[] placed = log.times().placed();
        Set<Integer> starts = new HashSet<>(log.times().starts());
        double step = Series.medianStep(placed);
        List<Finding> gaps = new ArrayList<>();
        int last = -1;
        for (int i = 0; i < placed.length; i++) {
            if (Double.isNaN(placed[i])) {
                continue;
            }
            if (last >= 0 && placed[i] - placed[last] > longest && !starts.contains(i)) {
                gaps.add(gap(raw[last], raw[i], step, log.line(i)));
            }
            last = i;
        }
        return gaps;
    }

    private static List<Finding> fewer(List<Finding> gaps) {
        if (gaps.size() <= MOST_TOLD) {
            return gaps;
        }
        double lost = gaps.stream().mapToDouble(g -> g.to() - g.from()).sum();
        Finding first = gaps.get(0);
        Finding last = gaps.get(gaps.size() - 1);
        return List.of(new Finding(
                Finding.Kind.GAP,
                "time",
                first.from(),
                last.to(),
                gaps.size(),
                String.format(
                        Locale.ROOT,
                        "Between %.3f s and %.3f s there are %d gaps of together %.3f s; nothing is laid across them.",
                        first.from(),
                        last.to(),
                        gaps.size(),
                        lost)));
    }

    private static Finding gap(double from, double to, double step, int line) {
        return new Finding(
                Finding.Kind.GAP,
                "time",
                from,
                to,
                1,
                String.format(
                        Locale.ROOT,
                        "From %.3f s to %.3f s (line %d) there are no rows, where the usual step is %.4g s: about %.0f are lost;"
                                + " nothing is laid across it.",
                        from,
                        to,
                        line,
                        step,
                        (to - from) / step - 1));
    }
}
