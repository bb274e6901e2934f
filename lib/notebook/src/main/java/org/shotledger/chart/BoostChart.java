package org.shotledger.chart;

import org.shotledger.limits.Side;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Boost over engine speed as it is set: with the nitrous off, and armed.
 *
 * @param rpm engine speeds, rev/min, increasing
 * @param off boost with the nitrous off, Pa gauge
 * @param armed boost with the nitrous armed, Pa gauge
 * @param ceiling highest boost the builder allows, Pa gauge
 * @param from lowest speed at which nitrous oxide may flow, rev/min; not-a-number when none is used
 * @param to highest speed at which nitrous oxide may flow, rev/min; not-a-number when none is used
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record BoostChart(double[] rpm, double[] off, double[] armed, double ceiling, double from, double to) {

    /**
     * Draws both tables under the builder's ceiling.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        QuantityKind kind = QuantityKind.GAUGE_PRESSURE;
        String alt = "With the nitrous off at most " + highest(off, system) + ", armed at most "
                + highest(armed, system) + "; the builder allows " + kind.text(ceiling, system) + ".";
        Plot plot = Plot.of(
                        "boost",
                        "Boost as it is set",
                        alt,
                        new Scale("Engine speed", QuantityKind.ROTATION, system),
                        new Scale("Boost", kind, system))
                .reach(Double.NaN, 0)
                .line("nitrous off", rpm, off)
                .line("nitrous armed", rpm, armed)
                .limit("at most " + kind.text(ceiling, system), ceiling, Side.AT_MOST);
        if (Double.isFinite(from)) {
            plot.markAt("may open", from).markAt("closes", to);
        }
        return plot.picture();
    }

    private String highest(double[] boost, UnitSystem system) {
        int best = 0;
        for (int i = 1; i < boost.length; i++) {
            best = boost[i] > boost[best] ? i : best;
        }
        return QuantityKind.GAUGE_PRESSURE.text(boost[best], system) + " at "
                + QuantityKind.ROTATION.text(rpm[best], system);
    }
}
