package org.shotledger.chart;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Combinations that reach the target, judged by two things at once: what each one costs in the first is bought in the
 * second. No combination on the front can be bettered in one without losing in the other.
 *
 * @param xName what the horizontal axis judges, for example {@code "Share of power from nitrous oxide"}
 * @param xKind its kind
 * @param yName what the vertical axis judges
 * @param yKind its kind
 * @param choices the combinations
 */
public record TradeOffChart(String xName, QuantityKind xKind, String yName, QuantityKind yKind, List<Choice> choices) {

    /**
     * One combination.
     *
     * @param name its name, written beside it when it stands on the front; may be empty
     * @param x value on the horizontal axis, SI
     * @param y value on the vertical axis, SI
     * @param place where it stands
     */
    public record Choice(String name, double x, double y, Place place) {}

    /** Where a combination stands. */
    public enum Place {
        /** Breaks a limit. */
        REJECTED,
        /** Keeps every limit, but another one is better in both. */
        BETTERED,
        /** On the front. */
        FRONT,
        /** The one that was chosen. */
        CHOSEN
    }

    /** Copies the list of combinations. */
    @SuppressWarnings("doclint:missing")
    public TradeOffChart {
        choices = List.copyOf(choices);
    }

    /**
     * Draws all combinations, the front and the chosen one told apart by marker and colour.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        String alt = at(Place.REJECTED, Place.REJECTED).size() + " combinations break a limit, "
                + at(Place.BETTERED, Place.BETTERED).size() + " are bettered by another one, "
                + at(Place.FRONT, Place.CHOSEN).size() + " stand on the front"
                + at(Place.CHOSEN, Place.CHOSEN).stream()
                        .findFirst()
                        .map(c -> "; chosen: " + c.name + ", " + xKind.text(c.x, system) + " against "
                                + yKind.text(c.y, system) + ".")
                        .orElse(".");
        Plot plot = Plot.of(
                "trade-off",
                "Which combinations are worth having",
                alt,
                new Scale(xName, xKind, system),
                new Scale(yName, yKind, system));
        points(plot, "breaks a limit", Place.REJECTED, Look.REJECTED);
        points(plot, "bettered by another", Place.BETTERED, Look.SIXTH);
        List<Choice> front = new ArrayList<>(at(Place.FRONT, Place.CHOSEN));
        front.sort(java.util.Comparator.comparingDouble(Choice::x));
        if (!front.isEmpty()) {
            plot.add("the front", xs(front), ys(front), Look.FRONT, Plot.Style.LINE_WITH_MARKERS, false);
        }
        points(plot, "chosen", Place.CHOSEN, Look.SECOND);
        for (Choice choice : front) {
            if (choice.place == Place.CHOSEN) {
                plot.strongLabel("chosen: " + choice.name, choice.x, choice.y);
            } else if (!choice.name.isEmpty()) {
                plot.label(choice.name, choice.x, choice.y);
            }
        }
        return plot.picture();
    }

    private void points(Plot plot, String name, Place place, Look look) {
        List<Choice> found = at(place, place);
        if (!found.isEmpty()) {
            plot.add(name, xs(found), ys(found), look, Plot.Style.POINTS, false);
        }
    }

    private List<Choice> at(Place one, Place other) {
        return choices.stream().filter(c -> c.place == one || c.place == other).toList();
    }

    private static double[] xs(List<Choice> of) {
        return of.stream().mapToDouble(Choice::x).toArray();
    }

    private static double[] ys(List<Choice> of) {
        return of.stream().mapToDouble(Choice::y).toArray();
    }
}
