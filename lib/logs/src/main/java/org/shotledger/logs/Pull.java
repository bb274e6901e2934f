package org.shotledger.logs;

import java.util.Comparator;
import java.util.List;

/**
 * A stretch of a log in which the engine, wide open, runs up.
 *
 * @param from beginning, s
 * @param to end, s
 * @param rpmLow engine speed at the beginning, rev/min
 * @param rpmHigh engine speed at the end, rev/min
 * @param why by which rule it was found, in one sentence
 */
public record Pull(double from, double to, double rpmLow, double rpmHigh, String why) {
    /**
     * Finds the pulls of a log.
     *
     * @param findings the log with its findings
     * @param rule what counts as a pull
     * @return the pulls, the one over the widest range of engine speed first; none when there is none, and {@link Pulls#why()} says why
     * @throws IllegalArgumentException when the log has no engine speed
     */
    public static List<Pull> in(LogFindings findings, PullRule rule) {
        return Pulls.in(findings, rule).all().stream()
                .sorted(Comparator.comparingDouble((Pull p) -> p.rpmLow() - p.rpmHigh()))
                .toList();
    }
}
