package org.shotledger.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.shotledger.ledger.Entry;
import org.shotledger.ledger.Ledger;
import org.shotledger.limits.Limit;
import org.shotledger.units.QuantityKind;

/**
 * Two plans line by line: what each figure was, what it is, and which inputs moved it.
 *
 * @param before name of the first
 * @param after name of the second
 * @param lines one a figure that either ledger has, in the order of the second; figures that did not move stand in it too
 */
public record Comparison(String before, String after, List<Line> lines) {
    /** Relative change below which a figure counts as unmoved: the solvers' own noise. */
    private static final double NOISE = 1e-6;

    /** Keys of the figures a reader asks for first, in that order: what is asked, what is set, what comes of it. */
    private static final List<String> DIGEST = List.of(
            "target",
            "wheel-power",
            "boost",
            "nitrous-jet",
            "fuel-jet",
            "nitrous-flow",
            "nitrous-fuel-flow",
            "lambda",
            "peak-pressure",
            "pass-seconds",
            "passes");

    /** Copies the list. */
    public Comparison {
        lines = List.copyOf(lines);
    }

    /**
     * One figure in both.
     *
     * @param key its key in the ledgers, or {@code "limit "} and the key of a limit
     * @param name the figure in words
     * @param kind what it measures
     * @param before value in the first, SI; NaN when it has none
     * @param after value in the second, SI; NaN when it has none
     * @param because names of the figures below it with which the change began: those that moved while nothing they rest on did; empty
     *     for such a figure itself and for a limit
     */
    public record Line(String key, String name, QuantityKind kind, double before, double after, List<String> because) {

        /** Copies the list. */
        public Line {
            because = List.copyOf(because);
        }

        /**
         * Absolute change.
         *
         * @return after less before, SI
         */
        public double change() {
            return after - before;
        }

        /**
         * Tells whether the figure moved.
         *
         * @return true when it differs by more than the solvers' noise, or only one ledger has it
         */
        public boolean moved() {
            if (Double.isNaN(before) || Double.isNaN(after)) {
                return Double.isNaN(before) != Double.isNaN(after);
            }
            return Math.abs(change()) > NOISE * Math.max(Math.abs(before), Math.abs(after));
        }
    }

    /**
     * Compares two plans.
     *
     * @param before the first
     * @param after the second
     * @return every figure of both ledgers, then every limit's margin
     */
    public static Comparison of(Plan before, Plan after) {
        List<Line> lines = new ArrayList<>(of(before.ledger(), after.ledger()).lines());
        for (Limit limit : after.limits().all()) {
            double was =
                    before.limits().find(limit.key()).map(Limit::relativeMargin).orElse(Double.NaN);
            lines.add(new Line(
                    "limit " + limit.key(),
                    "margin to the limit: " + limit.name(),
                    QuantityKind.FRACTION,
                    was,
                    limit.relativeMargin(),
                    List.of()));
        }
        return new Comparison(before.job().name(), after.job().name(), lines);
    }

    /**
     * Compares two ledgers.
     *
     * @param before the first
     * @param after the second
     * @return every figure of both, those only the first has at the end
     */
    public static Comparison of(Ledger before, Ledger after) {
        List<Line> lines = new ArrayList<>();
        for (Entry entry : after.entries()) {
            double was = before.find(entry.key()).map(Entry::value).orElse(Double.NaN);
            lines.add(line(before, after, entry, was, entry.value()));
        }
        for (Entry entry : before.entries()) {
            if (after.find(entry.key()).isEmpty()) {
                lines.add(line(before, before, entry, entry.value(), Double.NaN));
            }
        }
        return new Comparison("before", "after", lines);
    }

    /**
     * Only what moved.
     *
     * @return the same comparison without the unmoved lines
     */
    public Comparison moved() {
        return new Comparison(before, after, lines.stream().filter(Line::moved).toList());
    }

    /**
     * Only the figures a reader asks for first.
     *
     * @return target, power, boost, jets, flows, mixture, cylinder pressure and time from one bottle, in that order, whether they moved
     *     or not
     */
    public Comparison digest() {
        List<Line> few = DIGEST.stream()
                .flatMap(key -> lines.stream().filter(line -> line.key().equals(key)))
                .toList();
        return new Comparison(before, after, few);
    }

    private static Line line(Ledger before, Ledger in, Entry entry, double was, double is) {
        Line bare = new Line(entry.key(), entry.name(), entry.kind(), was, is, List.of());
        if (!bare.moved() || in.why(entry.key()).size() == 1) {
            return bare;
        }
        Set<String> because = new LinkedHashSet<>();
        for (Entry below : in.why(entry.key())) {
            boolean moved = moved(before, below);
            boolean first = below.inputs().stream()
                    .noneMatch(input -> moved(before, in.find(input).orElseThrow()));
            if (moved && first && !below.key().equals(entry.key())) {
                because.add(below.name());
            }
        }
        return new Line(entry.key(), entry.name(), entry.kind(), was, is, new ArrayList<>(because));
    }

    private static boolean moved(Ledger before, Entry now) {
        double was = before.find(now.key()).map(Entry::value).orElse(Double.NaN);
        return new Line(now.key(), now.name(), now.kind(), was, now.value(), List.of()).moved();
    }
}
