package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.Plot;
import org.shotledger.chart.Scale;
import org.shotledger.table.Listing;
import org.shotledger.trust.Comparison;
import org.shotledger.trust.Family;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** How far models meet figures from outside the project, as pictures and tables. */
public final class TrustViews {
    /** More sources than this share one look in a picture. */
    private static final int MOST_SOURCES = 7;

    private static final int WORST = 5;

    private TrustViews() {}

    /**
     * Predicted over outside, figure by figure, with the band in which each should lie.
     *
     * @param family the family
     * @return the picture
     */
    public static ChartPicture picture(Family family) {
        List<Comparison> figures = family.figures();
        int n = figures.size();
        double[] number = new double[n];
        double[] low = new double[n];
        double[] high = new double[n];
        Map<String, double[]> ratios = new LinkedHashMap<>();
        boolean many = family.sources() > MOST_SOURCES;
        for (int i = 0; i < n; i++) {
            number[i] = i + 1;
            low[i] = figures.get(i).band().low();
            high[i] = figures.get(i).band().high();
            String look = many ? family.sources() + " sources" : figures.get(i).source();
            double[] own = ratios.computeIfAbsent(look, any -> gaps(n));
            own[i] = figures.get(i).ratio();
        }
        Plot plot = Plot.of(
                "trust-" + family.name().toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-"),
                "Predicted over outside: " + family.name(),
                String.format(
                        Locale.ROOT,
                        "%d figures from %d sources; predicted over outside is %.3f on average, %.0f %% lie inside the band.",
                        n,
                        family.sources(),
                        family.mean(),
                        100 * family.inside()),
                new Scale("Figure, source by source", QuantityKind.COUNT, UnitSystem.SI),
                new Scale("Predicted over outside", QuantityKind.RATIO, UnitSystem.SI));
        plot.band("band: " + family.band(), number, low, high);
        ratios.forEach((source, values) -> plot.points(source, number, values));
        return plot.mark("met exactly", 1).picture();
    }

    private static double[] gaps(int n) {
        double[] none = new double[n];
        java.util.Arrays.fill(none, Double.NaN);
        return none;
    }

    /**
     * All families, one row each.
     *
     * @param families the families
     * @return the table
     */
    public static Listing of(List<Family> families) {
        return Listing.of(
                "Every model beside figures from outside the project",
                families,
                words("Compared", Family::name),
                column("Figures", QuantityKind.COUNT, family -> family.figures().size()),
                column("Sources", QuantityKind.COUNT, Family::sources),
                column("Predicted over outside, mean", QuantityKind.RATIO, Family::mean),
                column("RMS error", QuantityKind.FRACTION, Family::error),
                column("Worst", QuantityKind.FRACTION, family -> family.worst().ratio() - 1),
                column("Inside the band", QuantityKind.FRACTION, Family::inside),
                words("How foreign to the model", Family::independence));
    }

    /**
     * The figures of a family that are met worst.
     *
     * @param family the family
     * @return at most five rows, the worst first
     */
    public static Listing worst(Family family) {
        return Listing.of(
                "Met worst",
                family.figures().stream()
                        .sorted(java.util.Comparator.comparingDouble(one -> -Math.abs(Math.log(one.ratio()))))
                        .limit(WORST)
                        .toList(),
                words("Figure", Comparison::what),
                words("Source", Comparison::source),
                column("Predicted over outside", QuantityKind.RATIO, Comparison::ratio),
                column("band from", QuantityKind.RATIO, one -> one.band().low()),
                column("to", QuantityKind.RATIO, one -> one.band().high()));
    }

    /**
     * A family in one sentence.
     *
     * @param family the family
     * @return figures, sources, errors and how many lie inside
     */
    public static String said(Family family) {
        return String.format(
                Locale.ROOT,
                "%d figures from %d source%s: %s. Predicted over outside is %.3f on average, with an RMS error of %.2g %%; %.0f %% lie"
                        + " inside the band (%s).",
                family.figures().size(),
                family.sources(),
                family.sources() == 1 ? "" : "s",
                family.independence(),
                family.mean(),
                100 * family.error(),
                100 * family.inside(),
                family.band());
    }

    /** How a notebook shows a family: the sentence, the picture, the worst figures. */
    public static final class OfFamily extends ResultRenderer<Family> {
        /** Made by the service loader. */
        public OfFamily() {
            super(
                    Family.class,
                    (family, shown) -> View.of(
                            new Sentence(said(family)),
                            picture(family),
                            worst(family).in(shown)));
        }
    }
}
