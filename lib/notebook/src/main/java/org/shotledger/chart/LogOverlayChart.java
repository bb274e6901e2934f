package org.shotledger.chart;

import java.util.Locale;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * A logged channel over what the plan said it would read.
 *
 * @param channel the channel, for example {@code "Bottle pressure"}
 * @param kind what it measures
 * @param along whether it is drawn over time or over engine speed
 * @param at times, s, or engine speeds, rev/min, increasing
 * @param logged logged values, SI; not-a-number where the sensor was lost
 * @param planned values of the plan, SI
 * @param updated values after the plan was fitted to the log, SI; empty when it was not
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
public record LogOverlayChart(
        String channel,
        QuantityKind kind,
        Along along,
        double[] at,
        double[] logged,
        double[] planned,
        double[] updated) {

    /** What runs along the horizontal axis. */
    public enum Along {
        /** Time, s. */
        TIME("Time", QuantityKind.TIME),
        /** Engine speed, rev/min. */
        ENGINE_SPEED("Engine speed", QuantityKind.ROTATION);

        private final String words;
        private final QuantityKind kind;

        Along(String words, QuantityKind kind) {
            this.words = words;
            this.kind = kind;
        }
    }

    /**
     * Draws the log in black, the plan and the updated plan in colour.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        String alt = "The plan lies off the log by " + size(rms(planned), system) + " (root mean square)"
                + (updated.length > 0 ? ", the updated plan by " + size(rms(updated), system) : "") + "."
                + (lost() > 0
                        ? " The log has no value to be trusted at " + lost() + " of " + logged.length + " places."
                        : "");
        Plot plot = Plot.of(
                "log-overlay-" + channel.toLowerCase(Locale.ROOT).replace(' ', '-'),
                channel + ": log and plan",
                alt,
                new Scale(along.words, along.kind, system),
                new Scale(channel, kind, system));
        plot.total("logged", at, logged);
        plot.line("planned", at, planned);
        if (updated.length > 0) {
            plot.line("plan after the log", at, updated);
        }
        return plot.picture();
    }

    private String size(double si, UnitSystem system) {
        double shown = kind.shown(si, system) - kind.shown(0, system);
        String unit = new Scale(channel, kind, system).unit().replaceFirst(" (abs|gauge)$", "");
        return (TickText.of(Double.parseDouble(String.format(Locale.ROOT, "%.3g", shown))) + " " + unit).strip();
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
