package org.shotledger.chart;

import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * What flows through the jets over one condition, with the band in which the flow lies nine times out of ten.
 *
 * @param what the condition along the axis, for example {@code "Bottle pressure"}
 * @param kind what the condition measures
 * @param at the condition, SI, increasing
 * @param nitrous nitrous oxide flow expected, kg/s
 * @param nitrousLow lower end of the band, kg/s
 * @param nitrousHigh upper end of the band, kg/s
 * @param fuel nitrous-fuel flow expected, kg/s
 * @param fuelLow least fuel flow within the tolerances, kg/s
 * @param fuelHigh greatest fuel flow within the tolerances, kg/s
 * @param told number of the condition whose figures are told in words
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
        double[] fuelHigh,
        int told) {

    /**
     * Draws both flows with their bands.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        String alt = "At " + kind.text(at[told], system) + " nitrous oxide flows at "
                + QuantityKind.MASS_FLOW.brief(nitrous[told], system) + " (between "
                + QuantityKind.MASS_FLOW.brief(nitrousLow[told], system) + " and "
                + QuantityKind.MASS_FLOW.brief(nitrousHigh[told], system) + "), its fuel at "
                + QuantityKind.MASS_FLOW.brief(fuel[told], system) + ".";
        Plot plot = Plot.of(
                "feed-flow",
                "Flow through the jets, with its band",
                alt,
                new Scale(what, kind, system),
                new Scale("Mass flow", QuantityKind.MASS_FLOW, system));
        plot.reach(Double.NaN, 0);
        plot.line("nitrous oxide, expected", at, nitrous);
        plot.band("nine times out of ten", at, nitrousLow, nitrousHigh, Look.FIRST, false);
        plot.line("nitrous fuel, expected", at, fuel);
        plot.band("within tolerance", at, fuelLow, fuelHigh, Look.SECOND, true);
        return plot.label("the plan", at[told], nitrous[told]).picture();
    }
}
