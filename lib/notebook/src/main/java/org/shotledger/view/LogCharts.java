package org.shotledger.view;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.shotledger.causes.Causes;
import org.shotledger.causes.ChannelTrace;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.LogOverlayChart;
import org.shotledger.chart.LogStripsChart;
import org.shotledger.chart.Plot;
import org.shotledger.chart.Scale;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;
import org.shotledger.logs.Series;
import org.shotledger.reconcile.NitrousShare;
import org.shotledger.reconcile.Overlay;
import org.shotledger.units.Excerpt;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Logs and what they say of a plan, as charts. */
public final class LogCharts {
    private static final int MOST_POINTS = 2000;

    private LogCharts() {}

    /**
     * One figure of a log over the plan, by engine speed.
     *
     * @param overlay the figure
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(Overlay overlay, UnitSystem system) {
        return of(overlay, new double[0], system);
    }

    /**
     * One figure of a log over the plan before and after it was fitted to the log, by engine speed.
     *
     * @param overlay the figure
     * @param updated the plan after the fit at the engine speeds of the overlay, SI; empty when it was not fitted
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(Overlay overlay, double[] updated, UnitSystem system) {
        return new LogOverlayChart(
                        Excerpt.beginning(overlay.what().words()),
                        overlay.what().channel().kind(),
                        LogOverlayChart.Along.ENGINE_SPEED,
                        overlay.rpm(),
                        overlay.measured(),
                        overlay.expected(),
                        updated)
                .picture(system);
    }

    /**
     * What the nitrous added, with its band, and what the plan expected.
     *
     * @param share the share
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(NitrousShare share, UnitSystem system) {
        List<NitrousShare.Point> points = share.points();
        double[] rpm = Rows.column(points, NitrousShare.Point::rpm);
        double[] measured = Rows.column(points, NitrousShare.Point::measured);
        return Plot.of(
                        "nitrous-share",
                        "What the nitrous adds: two pulls and the plan",
                        share.summary(system),
                        new Scale("Engine speed", QuantityKind.ROTATION, system),
                        new Scale("Wheel power from nitrous", QuantityKind.POWER, system))
                .band(
                        "two standard uncertainties",
                        rpm,
                        points.stream()
                                .mapToDouble(p -> p.measured() - 2 * p.uncertainty())
                                .toArray(),
                        points.stream()
                                .mapToDouble(p -> p.measured() + 2 * p.uncertainty())
                                .toArray())
                .total("pull with less pull without", rpm, measured)
                .line(
                        "plan",
                        rpm,
                        points.stream()
                                .mapToDouble(NitrousShare.Point::expected)
                                .toArray())
                .picture();
    }

    /**
     * Every channel over the plan in one column, on one axis of time.
     *
     * @param causes what the log differs by
     * @param system the units
     * @return the picture: logged over planned, with the band of the plan, what lies outside both band and scatter marked
     */
    public static ChartPicture of(Causes causes, UnitSystem system) {
        List<LogStripsChart.Strip> strips = causes.traces().stream()
                .filter(t -> t.channel() != LogChannel.BOTTLE_TEMPERATURE)
                .map(LogCharts::strip)
                .toList();
        return new LogStripsChart(causes.file(), strips).picture(system);
    }

    private static LogStripsChart.Strip strip(ChannelTrace trace) {
        int n = trace.size();
        double[] ratio = new double[n];
        double[] explained = new double[n];
        double[] band = new double[n];
        boolean[] off = new boolean[n];
        for (int i = 0; i < n; i++) {
            ratio[i] = trace.logged()[i] / trace.planned()[i];
            explained[i] = trace.explained()[i] / trace.planned()[i];
            band[i] = 2 * trace.band()[i] / trace.planned()[i];
            off[i] = trace.off(i);
        }
        return new LogStripsChart.Strip(
                trace.channel().words(), trace.time(), trace.nitrous(), ratio, explained, band, off);
    }

    /**
     * A channel over time, what is not to be trusted as points of its own.
     *
     * @param findings the log with its findings
     * @param channel a channel it has
     * @param system the units
     * @return the picture; of a log longer than 2000 samples every second, third and so on
     */
    public static ChartPicture of(LogFindings findings, LogChannel channel, UnitSystem system) {
        EngineLog log = findings.log();
        Series trusted = findings.series(channel);
        int every = (trusted.size() + MOST_POINTS - 1) / MOST_POINTS;
        int[] shown = IntStream.range(0, trusted.size())
                .filter(i -> i % Math.max(1, every) == 0)
                .toArray();
        double[] time = Arrays.stream(shown).mapToDouble(i -> trusted.time()[i]).toArray();
        double[] values =
                Arrays.stream(shown).mapToDouble(i -> trusted.values()[i]).toArray();
        Plot plot = Plot.of(
                "log-" + channel.key(),
                Excerpt.beginning(channel.words()) + " in " + log.file(),
                findings.summary(),
                new Scale("Time", QuantityKind.TIME, system),
                new Scale(Excerpt.beginning(channel.words()), channel.kind(), system));
        plot.total("logged", time, values);
        double[] rawTime = log.time();
        double[] raw = log.values(channel);
        int[] tainted = IntStream.range(0, raw.length)
                .filter(i -> i % Math.max(1, every) == 0 && findings.tainted(channel, i))
                .toArray();
        if (tainted.length > 0) {
            plot.points(
                    String.format(Locale.ROOT, "not to be trusted (%d samples)", tainted.length),
                    Arrays.stream(tainted).mapToDouble(i -> rawTime[i]).toArray(),
                    Arrays.stream(tainted).mapToDouble(i -> raw[i]).toArray());
        }
        return plot.picture();
    }
}
