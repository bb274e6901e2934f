package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.Plot;
import org.shotledger.chart.Scale;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.evaluate.PassOutcome.Moment;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Every pass of one filling, one after the other, without the waits between. */
public final class DayCharts {
    private DayCharts() {}

    /**
     * Bottle pressure and mixture over the seconds of every pass.
     *
     * @param passes the passes in order, at least one
     * @param system the units
     * @return the picture
     */
    public static ChartPicture mixture(List<PassOutcome> passes, UnitSystem system) {
        return picture("day-mixture", passes, "mixture", QuantityKind.RATIO, Moment::lambda, system);
    }

    /**
     * Bottle pressure and power over the seconds of every pass.
     *
     * @param passes the passes in order, at least one
     * @param system the units
     * @return the picture
     */
    public static ChartPicture power(List<PassOutcome> passes, UnitSystem system) {
        return picture("day-power", passes, "power", QuantityKind.POWER, Moment::wheelPower, system);
    }

    private static ChartPicture picture(
            String name,
            List<PassOutcome> passes,
            String what,
            QuantityKind kind,
            ToDoubleFunction<Moment> right,
            UnitSystem system) {
        List<Moment> moments =
                passes.stream().flatMap(pass -> pass.moments().stream()).toList();
        double[] time = seconds(passes);
        double[] value = Rows.column(moments, right);
        Plot plot = Plot.of(
                        name,
                        "Bottle and " + what + " over every pass",
                        said(passes, what, value, kind, system),
                        new Scale("Time with the nitrous on", QuantityKind.TIME, system),
                        new Scale("Bottle pressure", QuantityKind.ABSOLUTE_PRESSURE, system))
                .rightAxis(new Scale(kind == QuantityKind.RATIO ? "Lambda" : "Power at the wheels", kind, system))
                .line("pressure (left)", time, Rows.column(moments, Moment::pressure))
                .rightLine(what + " (right)", time, value);
        double start = 0;
        for (PassOutcome pass : passes) {
            plot = plot.markAt("pass " + pass.number(), start);
            start += length(pass);
        }
        return plot.picture();
    }

    /** Time since the first opening, the waits left out. */
    private static double[] seconds(List<PassOutcome> passes) {
        List<Double> time = new ArrayList<>();
        double start = 0;
        for (PassOutcome pass : passes) {
            for (Moment moment : pass.moments()) {
                time.add(start + moment.time());
            }
            start += length(pass);
        }
        return time.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double length(PassOutcome pass) {
        return pass.moments().isEmpty()
                ? 0
                : pass.moments().get(pass.moments().size() - 1).time();
    }

    private static String said(
            List<PassOutcome> passes, String what, double[] value, QuantityKind kind, UnitSystem system) {
        double low = java.util.Arrays.stream(value).min().orElse(Double.NaN);
        double high = java.util.Arrays.stream(value).max().orElse(Double.NaN);
        return String.format(
                Locale.ROOT,
                "Over %d %s the %s lies from %s to %s.",
                passes.size(),
                passes.size() == 1 ? "pass" : "passes",
                what,
                kind.text(low, system),
                kind.text(high, system));
    }
}
