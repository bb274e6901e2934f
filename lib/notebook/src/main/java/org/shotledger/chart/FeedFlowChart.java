package org.shotledger.chart;

import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * What flows through the jets over one condition, with the bracket between the model that gives least and the one that
 * gives most.
 *
 * @param what the condition along the axis, for example {@code "Bottle pressure"}
 * @param kind what the condition measures
 * @param at the condition, SI, increasing
 * @param nitrous nitrous oxide flow expected, kg/s
 * @param nitrousLow least flow of the models, kg/s
 * @param nitrousHigh greatest flow of the models, kg/s
 * @param fuel nitrous-fuel flow expected, kg/s
 * @param fuelLow least fuel flow within the tolerances, kg/s
 * @param fuelHigh greatest fuel flow within the tolerances, kg/s
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record FeedFlowChart(
        String what,
        QuantityKind kind,
        double[] at,
        double[] nitrous,
        double[] nitrousLow,
        double[] nitrousHigh,
        double[] fuel,
        double[] fuelLow,
        double[] fuelHigh) {

    /**
     * Draws both flows with their brackets.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        int mid = at.length / 2;
        String alt = "At " + kind.text(at[mid], system) + " nitrous oxide flows at "
                + QuantityKind.MASS_FLOW.text(nitrous[mid], system) + " (between "
                + QuantityKind.MASS_FLOW.text(nitrousLow[mid], system) + " and "
                + QuantityKind.MASS_FLOW.text(nitrousHigh[mid], system) + "), its fuel at "
                + QuantityKind.MASS_FLOW.text(fuel[mid], system) + ".";
        Plot plot = Plot.of(
                "feed-flow",
                "Flow through the jets, with the bracket of the models",
                alt,
                new Axis(what, kind, system),
                new Axis("Mass flow", QuantityKind.MASS_FLOW, system));
        plot.reach(Double.NaN, 0);
        plot.line("nitrous oxide, expected", at, nitrous);
        plot.band("least to most", at, nitrousLow, nitrousHigh, Look.FIRST, false);
        plot.line("nitrous fuel, expected", at, fuel);
        return plot.band("within tolerance", at, fuelLow, fuelHigh, Look.SECOND, true)
                .picture();
    }
}
