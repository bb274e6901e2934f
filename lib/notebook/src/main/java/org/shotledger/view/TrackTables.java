package org.shotledger.view;

import java.util.Locale;
import java.util.Optional;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.limits.Verdict;
import org.shotledger.pass.PassMark;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.track.PassComparison;
import org.shotledger.track.SettledPlan;
import org.shotledger.track.TrackCard;
import org.shotledger.track.TrackPass;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitFactors;

/** Passes in time and the card for the day, as tables and sentences. */
public final class TrackTables {
    private static final double KMH = 3.6;
    private static final double MPH = 1 / UnitFactors.MILE_PER_HOUR;

    private TrackTables() {}

    /**
     * Time and speed at each mark.
     *
     * @param pass the pass
     * @return one row a mark
     */
    public static Listing of(TrackPass pass) {
        Listing.Builder rows = Listing.titled("Time and speed along the track")
                .figures("Distance", QuantityKind.ALTITUDE)
                .figures("Time", QuantityKind.TIME)
                .words("Speed");
        for (PassMark mark : pass.result().marks()) {
            rows.row(mark.distance(), mark.time(), speed(mark.speed()));
        }
        return rows.build();
    }

    static String speed(double metresPerSecond) {
        return String.format(Locale.ROOT, "%.1f mph (%.1f km/h)", metresPerSecond * MPH, metresPerSecond * KMH);
    }

    /**
     * The pass in a few sentences: the finish, the nitrous, and what the plan's seconds are checked against.
     *
     * @param pass the pass
     * @return the sentences
     */
    public static String summary(TrackPass pass) {
        double counted = pass.outcome().setup().passes().seconds();
        double seconds = pass.nitrousSeconds();
        String finish = String.format(
                Locale.ROOT,
                "%s in %.2f s at %s.",
                Both.of(QuantityKind.ALTITUDE, pass.finish().distance()),
                pass.finish().time(),
                speed(pass.finish().speed()));
        if (seconds == 0) {
            return finish + " The nitrous does not come on.";
        }
        String bottle = pass.bottleLasts() ? "" : " The bottle does not last to the finish.";
        return finish
                + String.format(
                        Locale.ROOT,
                        " Nitrous for %.2f s, %s of it; the plan counts %.2f s a pass, %s.",
                        seconds,
                        Both.of(QuantityKind.MASS, pass.result().nitrousUsed()),
                        counted,
                        seconds > counted
                                ? "too few: bottle and nitrous fuel are planned for less than this pass"
                                : "enough")
                + bottle + " An estimate, to be proven in small steps.";
    }

    /**
     * Passes side by side.
     *
     * @param compared the comparison
     * @return one row a pass
     */
    public static Listing of(PassComparison compared) {
        Listing.Builder rows = Listing.titled("Passes side by side")
                .words("Pass")
                .figures("Time", QuantityKind.TIME)
                .words("Speed")
                .figures("Nitrous on", QuantityKind.TIME)
                .figures("Nitrous used", QuantityKind.MASS)
                .figures("Highest peak pressure", QuantityKind.ABSOLUTE_PRESSURE)
                .figures("Leanest", QuantityKind.RATIO)
                .figures("Held by grip", QuantityKind.TIME);
        for (PassComparison.Row row : compared.rows()) {
            TrackPass pass = row.pass();
            rows.row(
                    row.name(),
                    pass.finish().time(),
                    speed(pass.finish().speed()),
                    pass.nitrousSeconds(),
                    pass.result().nitrousUsed(),
                    value(pass.highest(TrackPass.Moment::peakPressure).map(TrackPass.Moment::peakPressure)),
                    value(pass.highest(TrackPass.Moment::lambda).map(TrackPass.Moment::lambda)),
                    held(pass));
        }
        return rows.build();
    }

    private static double value(Optional<Double> found) {
        return found.orElse(Double.NaN);
    }

    private static double held(TrackPass pass) {
        double sum = 0;
        for (int i = 1; i < pass.moments().size(); i++) {
            if (pass.moments().get(i).held()) {
                sum += pass.moments().get(i).time() - pass.moments().get(i - 1).time();
            }
        }
        return sum;
    }

    /**
     * How plan and pass came to agree.
     *
     * @param settled the plan
     * @return a sentence
     */
    public static String summary(SettledPlan settled) {
        StringBuilder rounds = new StringBuilder();
        for (double seconds : settled.rounds()) {
            rounds.append(rounds.isEmpty() ? "" : ", then ").append(String.format(Locale.ROOT, "%.2f s", seconds));
        }
        return "Seconds under nitrous counted by the plan: " + rounds + "; its own pass takes "
                + String.format(Locale.ROOT, "%.2f s", settled.pass().nitrousSeconds())
                + (settled.settled() ? ": both agree." : ": they did not come to agree.");
    }

    /**
     * The card for the day.
     *
     * @param card the card
     * @return one row a line
     */
    public static Listing of(TrackCard card) {
        Listing.Builder rows = day("Track card", card);
        for (TrackCard.Left left : card.left()) {
            rows.row(
                    "passes left with " + Both.of(QuantityKind.MASS, left.charge()) + " on the scale",
                    new Cell.Figure(left.passes(), QuantityKind.RATIO),
                    new Cell.Text(""),
                    "tare off");
        }
        return rows.build();
    }

    /** The day alone, where the scale has a table of its own. */
    static Listing weather(TrackCard card) {
        return day("The day, and an hour hotter", card).build();
    }

    private static Listing.Builder day(String caption, TrackCard card) {
        Listing.Builder rows = Listing.titled(caption)
                .words("What")
                .mixed("Now")
                .mixed("Hotter by 10 \u00b0C (18 \u00b0F)")
                .words("Mind");
        var plan = card.plan();
        var hot = card.hotter();
        figure(
                rows,
                "air density",
                card.density(),
                hot.at().air().density(),
                QuantityKind.DENSITY,
                "by barometer, thermometer and hygrometer");
        figure(
                rows,
                "height at which standard air is as thin",
                card.densityAltitude(),
                Double.NaN,
                QuantityKind.ALTITUDE,
                "ISO 2533");
        figure(
                rows,
                "bottle temperature to aim at",
                plan.setup().bottle().startTemperature(),
                hot.setup().bottle().startTemperature(),
                QuantityKind.TEMPERATURE,
                "no heater cools: in hotter air it is as warm as the air");
        figure(
                rows,
                "bottle pressure then",
                card.bottlePressure(),
                hot.pass().map(p -> p.moments().get(0).pressure()).orElse(Double.NaN),
                QuantityKind.ABSOLUTE_PRESSURE,
                "more means a bottle full of liquid");
        figure(rows, "wheel power", plan.stated().power(), hot.power(), QuantityKind.POWER, "same setup");
        figure(
                rows,
                "lambda",
                lambda(plan.stated().strongest()),
                lambda(hot.strongest()),
                QuantityKind.RATIO,
                "at the speed of most power");
        return rows;
    }

    private static double lambda(Optional<OperatingPoint> point) {
        return point.map(OperatingPoint::lambda).orElse(Double.NaN);
    }

    private static void figure(
            Listing.Builder rows, String what, double now, double hotter, QuantityKind kind, String mind) {
        rows.row(what, new Cell.Figure(now, kind), new Cell.Figure(hotter, kind), mind);
    }

    /**
     * What the hotter hour does to the verdict.
     *
     * @param card the card
     * @return one or two sentences
     */
    public static String hotter(TrackCard card) {
        var limits = card.hotter().limits();
        var first = limits.first();
        return "Hotter by 10 \u00b0C the same setup " + (limits.verdict() == Verdict.HOLDS ? "" : "is ")
                + limits.verdict().word()
                + first.map(l -> ", the closest is " + l.name()
                                + String.format(Locale.ROOT, " with %.1f %% ", Math.abs(100 * l.relativeMargin()))
                                + (l.relativeMargin() >= 0 ? "left" : "beyond its bound") + ".")
                        .orElse(".");
    }
}
