package org.shotledger.chart;

import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * How the power at the wheels is split between boost and nitrous oxide over engine speed.
 *
 * @param rpm engine speeds, rev/min, increasing
 * @param boost power on boost alone, W
 * @param nitrous power that nitrous oxide adds, W
 * @param target power asked for, W; not-a-number when nothing was asked
 * @param from lowest speed at which nitrous oxide may flow, rev/min
 * @param to highest speed at which nitrous oxide may flow, rev/min
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record PowerSplitChart(double[] rpm, double[] boost, double[] nitrous, double target, double from, double to) {

    /**
     * Draws the split: boost below, nitrous oxide on top of it, the sum as a black line, the target across.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        double[] sum = new double[rpm.length];
        int best = 0;
        for (int i = 0; i < sum.length; i++) {
            sum[i] = boost[i] + nitrous[i];
            best = sum[i] > sum[best] ? i : best;
        }
        Axis y = new Axis("Power at the wheels", QuantityKind.POWER, system);
        Plot plot = Plot.of(
                "power-split",
                "Power from boost and from nitrous oxide",
                alt(sum, best, system),
                new Axis("Engine speed", QuantityKind.ROTATION, system),
                y);
        plot.reach(Double.NaN, 0);
        plot.line("boost alone", rpm, boost);
        plot.band("added by nitrous oxide", rpm, boost, sum, Look.SECOND, true);
        plot.total("both together", rpm, sum);
        if (Double.isFinite(target)) {
            plot.mark("asked for: " + QuantityKind.POWER.text(target, system), target);
        }
        return plot.markAt("nitrous on", from).markAt("nitrous off", to).picture();
    }

    private String alt(double[] sum, int best, UnitSystem system) {
        String text = "Together at most " + QuantityKind.POWER.text(sum[best], system) + " at "
                + QuantityKind.ROTATION.text(rpm[best], system) + ", of which boost gives "
                + QuantityKind.POWER.text(boost[best], system) + " and nitrous oxide "
                + QuantityKind.POWER.text(nitrous[best], system);
        return Double.isFinite(target)
                ? text + "; asked for: " + QuantityKind.POWER.text(target, system) + "."
                : text + ".";
    }
}
