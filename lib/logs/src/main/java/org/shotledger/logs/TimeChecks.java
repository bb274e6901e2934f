package org.shotledger.logs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What can be wrong with the time of a log. */
final class TimeChecks {
    private TimeChecks() {}

    static List<Finding> of(EngineLog log, double gapSteps) {
        double[] time = log.raw(LogChannel.TIME);
        double step = medianStep(time);
        double longest = gapSteps * step;
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
                "rows are left out of series until it is passed again; check whether two logs stand in one file");
        Spans twice = new Spans(
                log,
                Finding.Kind.TIME_TWICE,
                "time",
                "is that of the row before",
                "only the first of such rows is used in series");
        List<Finding> findings = new ArrayList<>();
        List<Finding> gaps = new ArrayList<>();
        double reached = Double.NaN;
        for (int i = 0; i < time.length; i++) {
            double t = time[i];
            if (Double.isNaN(t)) {
                nothing.add(i, i);
                continue;
            }
            if (t == reached) {
                twice.add(i, i);
            } else if (t < reached) {
                falls.add(i, i);
            } else if (t - reached > longest) {
                gaps.add(gap(reached, t, step, gapSteps, log.line(i)));
            }
            reached = Double.isNaN(reached) ? t : Math.max(reached, t);
        }
        findings.addAll(nothing.findings());
        findings.addAll(falls.findings());
        findings.addAll(twice.findings());
        findings.addAll(fewer(gaps));
        return findings;
    }

    private static List<Finding> fewer(List<Finding> gaps) {
        if (gaps.size() <= 12) {
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

    private static Finding gap(double from, double to, double step, double steps, int line) {
        return new Finding(
                Finding.Kind.GAP,
                "time",
                from,
                to,
                1,
                String.format(
                        Locale.ROOT,
                        "From %.3f s to %.3f s (line %d) there are no rows, where the usual step is %.4g s and more than %.3g"
                                + " steps count as a gap; nothing is laid across it.",
                        from,
                        to,
                        line,
                        step,
                        steps));
    }

    /** The median of the rising steps; infinite when there are none, so that nothing is a gap. */
    static double medianStep(double[] time) {
        double[] steps = new double[time.length];
        int n = 0;
        for (int i = 1; i < time.length; i++) {
            if (time[i] > time[i - 1]) {
                steps[n++] = time[i] - time[i - 1];
            }
        }
        if (n == 0) {
            return Double.POSITIVE_INFINITY;
        }
        Arrays.sort(steps, 0, n);
        return steps[n / 2];
    }
}
