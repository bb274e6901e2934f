package org.shotledger.causes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.evaluate.Outcome;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;
import org.shotledger.logs.OnInterval;
import org.shotledger.logs.Pull;
import org.shotledger.logs.PullRule;
import org.shotledger.logs.Pulls;
import org.shotledger.logs.Series;

/** Cuts the pulls of a log into short pieces clear of every change of the nitrous and of the boost. */
final class Stretches {
    /** Time after a change before figures count, s; our own choice, as where a log is laid over a plan. */
    private static final double SETTLING = 0.4;
    /** Time before a change that its smoothing and the controller's clock may reach, s; our own choice. */
    private static final double AHEAD = 0.1;
    /** Shortest piece, s, and about how many there are in a log: our own choice. */
    private static final double SHORTEST = 0.15;

    private static final int PIECES = 20;
    /** Boost that changes by more of itself within a piece is not settled: our own choice. */
    private static final double MOST_RISE = 0.05;

    private final List<OnInterval> on;
    private final Series rpm;
    private final double longest;
    private final Optional<Series> boost;
    private final double[] edges;

    private Stretches(Outcome outcome, LogFindings findings) {
        this.on = OnInterval.in(findings);
        this.rpm = findings.series(LogChannel.ENGINE_SPEED);
        this.longest = Math.max(0.5, findings.longestStep(LogChannel.ENGINE_SPEED));
        this.boost = findings.log().has(LogChannel.MANIFOLD_PRESSURE)
                ? Optional.of(findings.series(LogChannel.MANIFOLD_PRESSURE))
                : Optional.empty();
        this.edges = new double[] {
            outcome.setup().arming().rpmLow(), outcome.setup().arming().rpmHigh()
        };
    }

    static List<Bin> of(Outcome outcome, LogFindings findings, List<Pull> pulls) {
        return new Stretches(outcome, findings).bins(pulls);
    }

    /** The pulls of a log in order of time. */
    static List<Pull> pulls(LogFindings findings) {
        Pulls pulls = Pulls.in(findings, PullRule.USUAL);
        return pulls.chosen("all");
    }

    private List<Bin> bins(List<Pull> pulls) {
        List<double[]> free = new ArrayList<>();
        double whole = 0;
        for (Pull pull : pulls) {
            for (double[] stretch : free(pull)) {
                free.add(stretch);
                whole += stretch[1] - stretch[0];
            }
        }
        double width = Math.max(SHORTEST, whole / PIECES);
        List<Bin> bins = new ArrayList<>();
        for (double[] stretch : free) {
            int n = Math.max(1, (int) Math.floor((stretch[1] - stretch[0]) / width));
            for (int i = 0; i < n; i++) {
                double from = stretch[0] + (stretch[1] - stretch[0]) * i / n;
                double to = stretch[0] + (stretch[1] - stretch[0]) * (i + 1) / n;
                bin(from, to, stretch[2] > 0).ifPresent(bins::add);
            }
        }
        return bins;
    }

    private Optional<Bin> bin(double from, double to, boolean with) {
        Series there = rpm.between(from, to);
        double sum = 0;
        int n = 0;
        for (double value : there.values()) {
            if (!Double.isNaN(value)) {
                sum += value;
                n++;
            }
        }
        double speed = n > 0 ? sum / n : rpm.at(new double[] {(from + to) / 2}, longest)[0];
        if (Double.isNaN(speed) || crosses(from, to) || rising(from, to)) {
            return Optional.empty();
        }
        return Optional.of(new Bin(from, to, speed, with, with ? seconds((from + to) / 2) : 0));
    }

    /** For how long the nitrous has been on in this log by a moment. */
    private double seconds(double moment) {
        return on.stream()
                .mapToDouble(o -> Math.max(0, Math.min(moment, o.to()) - o.from()))
                .sum();
    }

    /** Whether the engine passed a speed at which the boost changes, within the piece or just before it. */
    private boolean crosses(double from, double to) {
        double[] at = rpm.at(new double[] {from - SETTLING, to}, longest);
        for (double edge : edges) {
            if (at[0] < edge && at[1] > edge) {
                return true;
            }
        }
        return false;
    }

    private boolean rising(double from, double to) {
        if (boost.isEmpty()) {
            return false;
        }
        double[] at = boost.get().at(new double[] {from, to}, longest);
        return Math.abs(at[1] - at[0]) > MOST_RISE * at[1];
    }

    /** Settled stretches of a pull: beginning, end, 1 where the nitrous is on. */
    private List<double[]> free(Pull pull) {
        List<double[]> free = new ArrayList<>();
        double at = pull.from();
        for (OnInterval o : on) {
            if (o.to() < pull.from() || o.from() > pull.to()) {
                continue;
            }
            add(free, at, Math.min(o.from() - AHEAD, pull.to()), 0);
            add(free, Math.max(o.from() + SETTLING, pull.from()), Math.min(o.to() - AHEAD, pull.to() - AHEAD), 1);
            at = o.to() + SETTLING;
        }
        add(free, at, pull.to() - AHEAD, 0);
        return free;
    }

    private static void add(List<double[]> free, double from, double to, int on) {
        if (to - from >= SHORTEST) {
            free.add(new double[] {from, to, on});
        }
    }
}
