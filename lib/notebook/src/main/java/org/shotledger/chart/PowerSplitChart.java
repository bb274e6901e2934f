package org.shotledger.chart;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
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
        plot.line("boost alone", parted(rpm, rpm), parted(boost, null));
        double[] on = during(rpm);
        if (on.length > 0) {
            plot.band("added by nitrous oxide", on, during(boost), during(sum), Look.SECOND, true);
        }
        plot.total("both together", parted(rpm, rpm), parted(sum, null));
        if (Double.isFinite(target)) {
            plot.mark("asked for: " + QuantityKind.POWER.text(target, system), target);
        }
        return plot.markAt("nitrous on", from).markAt("nitrous off", to).picture();
    }

    /** Only where nitrous oxide flows. */
    private double[] during(double[] values) {
        return IntStream.range(0, rpm.length)
                .filter(i -> nitrous[i] > 0)
                .mapToDouble(i -> values[i])
                .toArray();
    }

    /**
     * Values with a gap wherever the nitrous oxide is switched: a straight line from the last speed without it to the first with it
     * would show a power that nobody calculated. The gap's place is taken from {@code places}; null makes the gap itself.
     */
    private double[] parted(double[] values, double[] places) {
        DoubleStream.Builder out = DoubleStream.builder();
        for (int i = 0; i < values.length; i++) {
            if (i > 0 && nitrous[i] > 0 != nitrous[i - 1] > 0) {
                out.add(places == null ? Double.NaN : (places[i - 1] + places[i]) / 2);
            }
            out.add(values[i]);
        }
        return out.build().toArray();
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
