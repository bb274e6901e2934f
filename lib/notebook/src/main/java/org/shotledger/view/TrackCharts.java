package org.shotledger.view;

import static org.shotledger.view.Rows.column;

import java.util.Locale;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.Plot;
import org.shotledger.chart.Scale;
import org.shotledger.limits.Side;
import org.shotledger.track.PassComparison;
import org.shotledger.track.TrackPass;
import org.shotledger.track.TrackPass.Moment;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** A pass in time as pictures. */
public final class TrackCharts {
    private TrackCharts() {}

    /**
     * Power and boost over time.
     *
     * @param pass the pass
     * @param units of the axes
     * @return the picture
     */
    public static ChartPicture power(TrackPass pass, UnitSystem units) {
        return Plot.of(
                        "pass-power",
                        "A pass in time: power and boost",
                        TrackTables.summary(pass),
                        new Scale("Time since the car moved", QuantityKind.TIME, units),
                        new Scale("Power at the flywheel", QuantityKind.POWER, units))
                .line("power", column(pass.moments(), Moment::time), column(pass.moments(), Moment::power))
                .rightAxis(new Scale("Boost", QuantityKind.GAUGE_PRESSURE, units))
                .rightLine("boost", column(pass.moments(), Moment::time), column(pass.moments(), Moment::boost))
                .picture();
    }

    /**
     * Engine speed over time, and the nitrous oxide used.
     *
     * @param pass the pass
     * @param units of the axes
     * @return the picture
     */
    public static ChartPicture speed(TrackPass pass, UnitSystem units) {
        return Plot.of(
                        "pass-speed",
                        "A pass in time: engine speed and nitrous oxide used",
                        String.format(
                                Locale.ROOT,
                                "%d shifts; nitrous for %.2f s.",
                                pass.result().shifts().size(),
                                pass.nitrousSeconds()),
                        new Scale("Time since the car moved", QuantityKind.TIME, units),
                        new Scale("Engine speed", QuantityKind.ROTATION, units))
                .line("engine speed", column(pass.moments(), Moment::time), column(pass.moments(), Moment::rpm))
                .rightAxis(new Scale("Nitrous oxide used", QuantityKind.MASS, units))
                .rightLine(
                        "nitrous oxide used",
                        column(pass.moments(), Moment::time),
                        column(pass.moments(), Moment::used))
                .picture();
    }

    /**
     * Peak pressure in the cylinders and bottle pressure over distance.
     *
     * @param pass the pass
     * @param units of the axes
     * @return the picture
     */
    public static ChartPicture pressures(TrackPass pass, UnitSystem units) {
        double bound = pass.outcome().car().limits().peakPressure();
        Plot plot = Plot.of(
                        "pass-pressures",
                        "A pass along the track: pressures",
                        "Highest peak pressure " + Both.of(QuantityKind.ABSOLUTE_PRESSURE, highest(pass)) + " of "
                                + Both.of(QuantityKind.ABSOLUTE_PRESSURE, bound) + " allowed.",
                        new Scale("Distance", QuantityKind.ALTITUDE, units),
                        new Scale("Pressure", QuantityKind.ABSOLUTE_PRESSURE, units))
                .line(
                        "peak in the cylinders",
                        column(pass.moments(), Moment::distance),
                        column(pass.moments(), Moment::peakPressure))
                .limit("peak allowed", bound, Side.AT_MOST);
        if (pass.nitrousSeconds() > 0) {
            plot.line(
                    "bottle", column(pass.moments(), Moment::distance), column(pass.moments(), Moment::bottlePressure));
        }
        return plot.picture();
    }

    private static double highest(TrackPass pass) {
        return pass.highest(Moment::peakPressure).map(Moment::peakPressure).orElse(Double.NaN);
    }

    /**
     * Mixture over distance.
     *
     * @param pass the pass
     * @param units of the axes
     * @return the picture
     */
    public static ChartPicture lambda(TrackPass pass, UnitSystem units) {
        var limits = pass.outcome().car().limits();
        return Plot.of(
                        "pass-lambda",
                        "A pass along the track: mixture",
                        "Mixture with the builder's bounds; gaps are shifts.",
                        new Scale("Distance", QuantityKind.ALTITUDE, units),
                        new Scale("Lambda", QuantityKind.RATIO, units))
                .line("lambda", column(pass.moments(), Moment::distance), column(pass.moments(), Moment::lambda))
                .limit("leanest", limits.lambdaHigh(), Side.AT_MOST)
                .limit("richest", limits.lambdaLow(), Side.AT_LEAST)
                .picture();
    }

    /**
     * Speed over distance of several passes.
     *
     * @param compared the passes
     * @param units of the axes
     * @return the picture
     */
    public static ChartPicture of(PassComparison compared, UnitSystem units) {
        Plot plot = Plot.of(
                "passes",
                "Passes side by side: speed over distance",
                "Each line is one pass.",
                new Scale("Distance", QuantityKind.ALTITUDE, units),
                new Scale("Speed", QuantityKind.SPEED, units));
        for (PassComparison.Row row : compared.rows()) {
            plot.line(
                    row.name(),
                    column(row.pass().moments(), Moment::distance),
                    column(row.pass().moments(), Moment::speed));
        }
        return plot.picture();
    }
}
