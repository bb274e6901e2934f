package org.shotledger.chart;

import java.util.List;
import org.shotledger.limits.Side;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * The mixture over the seconds of a pass, one curve a case, between what the builder allows.
 *
 * @param cases the cases, at least one
 * @param rich least lambda the builder allows
 * @param lean greatest lambda the builder allows
 */
public record PassMixtureChart(List<Trace> cases, double rich, double lean) {

    /**
     * Lambda in one case.
     *
     * @param name name of the case
     * @param time time since the nitrous oxide was opened, s, increasing
     * @param lambda lambda of all streams together
     */
    @SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
    public record Trace(String name, double[] time, double[] lambda) {}

    /** Copies the list. */
    @SuppressWarnings("doclint:missing")
    public PassMixtureChart {
        cases = List.copyOf(cases);
    }

    /**
     * Draws lambda in every case between both limits.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        Trace first = cases.get(0);
        String alt = "In the case '" + first.name + "' lambda goes from " + words(first.lambda[0]) + " to "
                + words(first.lambda[first.lambda.length - 1]) + " in "
                + QuantityKind.TIME.text(first.time[first.time.length - 1], system) + "; allowed: " + words(rich)
                + " to " + words(lean) + ".";
        Plot plot = Plot.of(
                "pass-mixture",
                "The mixture over the seconds of a pass",
                alt,
                new Scale("Time since opening", QuantityKind.TIME, system),
                new Scale("Lambda, all streams together", QuantityKind.RATIO, system));
        cases.forEach(trace -> plot.line(trace.name, trace.time, trace.lambda));
        return plot.limit("lean: at most " + words(lean), lean, Side.AT_MOST)
                .limit("rich: at least " + words(rich), rich, Side.AT_LEAST)
                .picture();
    }

    private static String words(double lambda) {
        return QuantityKind.RATIO.text(lambda, UnitSystem.SI);
    }
}
