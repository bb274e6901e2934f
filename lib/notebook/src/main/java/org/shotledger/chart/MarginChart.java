package org.shotledger.chart;

import java.util.Comparator;
import java.util.List;
import org.shotledger.display.Units;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Side;
import org.shotledger.limits.Verdict;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * How far each limit is from biting, as a fraction of its bound.
 *
 * @param limits the limits, at least one
 */
public record MarginChart(List<Limit> limits) {
    private static final double SHOWN_AT_MOST = 1.0;
    /** More bars leave no room on a sheet of paper for what is said of them. */
    private static final int MOST_ROWS = 10;

    private static final double SHOWN_AT_LEAST = -0.5;

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException when there is no limit
     */
    @SuppressWarnings("doclint:missing")
    public MarginChart {
        limits = List.copyOf(limits);
        if (limits.isEmpty()) {
            throw new IllegalArgumentException("There is no limit to draw; give at least one.");
        }
    }

    /**
     * Draws one bar for each limit, the closest first, and no more than a page holds. Verdicts differ by word, by shape and by hatching, not by colour alone.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        List<Limit> drawn = limits.stream()
                .sorted(Comparator.comparingDouble(MarginChart::shown))
                .limit(MOST_ROWS)
                .toList();
        int rows = drawn.size();
        Plot plot = Plot.of(
                        "margins",
                        rows == limits.size()
                                ? "Room left to each limit"
                                : "Room left to the " + rows + " closest of " + limits.size() + " limits",
                        alt(),
                        new Scale("Margin to the bound", QuantityKind.FRACTION, system),
                        new Scale("", QuantityKind.COUNT, system))
                .rows(rows);
        plot.limitAt("", 0, Side.AT_LEAST);
        for (int i = 0; i < rows; i++) {
            Limit limit = drawn.get(i);
            double margin = Math.min(Math.max(shown(limit), SHOWN_AT_LEAST), SHOWN_AT_MOST);
            plot.reach(1.08 * margin, Double.NaN);
            plot.mark(new BarMark(
                    words(limit, system),
                    i,
                    rows,
                    0,
                    QuantityKind.FRACTION.shown(margin, system),
                    look(limit),
                    hatch(limit)));
        }
        return plot.reach(0.2, Double.NaN).reach(-0.06, Double.NaN).picture();
    }

    private static double shown(Limit limit) {
        double margin = limit.relativeMargin();
        return Double.isNaN(margin) ? SHOWN_AT_LEAST : margin;
    }

    /**
     * A limit in one line: shape and word of its verdict, what is limited, value and bound.
     *
     * @param limit the limit
     * @param system the units
     * @return the line
     */
    public static String words(Limit limit, UnitSystem system) {
        String side = limit.side() == Side.AT_MOST ? " of at most " : ", at least ";
        return shape(limit.verdict()) + " " + limit.verdict().word() + ":  " + limit.name() + ", "
                + limit.kind().number(limit.value(), system) + side
                + Units.printed(limit.kind().text(limit.bound(), system));
    }

    /** The shape that stands for a verdict, so that it can be told without colour. */
    static String shape(Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> "\u25cf";
            case TIGHT -> "\u25b2";
            case BROKEN -> "\u25a0";
        };
    }

    private static Look look(Limit limit) {
        return switch (limit.verdict()) {
            case HOLDS -> Look.THIRD;
            case TIGHT -> Look.FIFTH;
            case BROKEN -> Look.SECOND;
        };
    }

    private static double hatch(Limit limit) {
        return switch (limit.verdict()) {
            case HOLDS -> 0;
            case TIGHT -> 8;
            case BROKEN -> 4;
        };
    }

    private String alt() {
        Limit least = limits.get(0);
        for (Limit limit : limits) {
            least = shown(limit) < shown(least) ? limit : least;
        }
        return count(Verdict.HOLDS) + " limits hold, " + count(Verdict.TIGHT) + " are tight, " + count(Verdict.BROKEN)
                + " are broken; the least room is left by: " + least.name() + ", "
                + QuantityKind.FRACTION.text(shown(least), UnitSystem.SI) + " of the bound.";
    }

    private long count(Verdict verdict) {
        return limits.stream().filter(limit -> limit.verdict() == verdict).count();
    }
}
