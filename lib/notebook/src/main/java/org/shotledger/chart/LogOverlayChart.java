package org.shotledger.chart;

import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * A logged channel over what the plan said it would read.
 *
 * @param channel the channel, for example {@code "Bottle pressure"}
 * @param kind what it measures
 * @param time time, s, increasing
 * @param logged logged values, SI; not-a-number where the sensor was lost
 * @param planned values of the plan, SI
 * @param updated values after the plan was fitted to the log, SI; empty when it was not
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record LogOverlayChart(
        String channel, QuantityKind kind, double[] time, double[] logged, double[] planned, double[] updated) {

    /**
     * Draws the log in black, the plan and the updated plan in colour.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        String alt = "The plan lies off the log by " + size(rms(planned), system) + " (root mean square)"
                + (updated.length > 0 ? ", the updated plan by " + size(rms(updated), system) : "") + "."
                + (lost() > 0 ? " The sensor was lost for " + lost() + " of " + logged.length + " samples." : "");
        Plot plot = Plot.of(
                "log-overlay",
                channel + ": log and plan",
                alt,
                new Axis("Time", QuantityKind.TIME, system),
                new Axis(channel, kind, system));
        plot.total("logged", time, logged);
        plot.line("planned", time, planned);
        if (updated.length > 0) {
            plot.line("plan after the log", time, updated);
        }
        return plot.picture();
    }

    private String size(double si, UnitSystem system) {
        double shown = kind.shown(si, system) - kind.shown(0, system);
        String unit = new Axis(channel, kind, system).unit().replaceFirst(" (abs|gauge)$", "");
        return TickText.of(Double.parseDouble(String.format(java.util.Locale.ROOT, "%.3g", shown))) + " " + unit;
    }

    private double rms(double[] other) {
        double sum = 0;
        int n = 0;
        for (int i = 0; i < logged.length; i++) {
            double off = other[i] - logged[i];
            if (Double.isFinite(off)) {
                sum += off * off;
                n++;
            }
        }
        return Math.sqrt(sum / Math.max(n, 1));
    }

    private int lost() {
        int lost = 0;
        for (double value : logged) {
            lost += Double.isNaN(value) ? 1 : 0;
        }
        return lost;
    }
}
