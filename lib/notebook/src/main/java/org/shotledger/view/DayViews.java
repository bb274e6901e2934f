package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.words;
import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.CHARGE;
import static org.shotledger.units.QuantityKind.COUNT;
import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.shotledger.bottle.HeatedRest;
import org.shotledger.bottle.HeaterTime;
import org.shotledger.bottle.Passes.ScaleRow;
import org.shotledger.evaluate.DayOutcome;
import org.shotledger.evaluate.DayOutcome.Filled;
import org.shotledger.evaluate.DayOutcome.Run;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** A day with the bottles as tables and sentences, among them the table to take along to the scale. */
public final class DayViews {
    private static final double HOUR = 3600;

    private DayViews() {}

    /**
     * The passes of the day.
     *
     * @param day the day
     * @return one row a pass, the one that is cut short among them
     */
    public static Listing passes(DayOutcome day) {
        return Listing.of(
                "The day, pass by pass",
                day.runs(),
                column("Pass", COUNT, Run::number),
                column("Bottle", COUNT, Run::bottle),
                column("Heated after", TIME, run -> wait(run, HeatedRest::seconds)),
                column("From the battery", CHARGE, run -> HOUR * wait(run, HeatedRest::ampereHours)),
                column("Charge", MASS, run -> run.pass().start().mass()),
                column("Starts at", TEMPERATURE, run -> run.pass().start().temperature()),
                column("and", ABSOLUTE_PRESSURE, run -> run.pass().start().pressure()),
                column("Lasts", TIME, run -> run.pass().seconds()),
                column("Takes", MASS, run -> run.pass().massUsed()),
                words("Ends with", run -> run.pass().end().words()));
    }

    private static double wait(Run run, ToDoubleFunction<HeatedRest> figure) {
        return run.before().map(figure::applyAsDouble).orElse(Double.NaN);
    }

    /**
     * Refills from the mother bottle.
     *
     * @param day the day
     * @return one row a refill, the first that does not suffice among them; no row without a mother bottle
     */
    public static Listing refills(DayOutcome day) {
        return Listing.of(
                "Filled again from the mother bottle, nothing vented",
                day.refills(),
                column("Mother before", MASS, filled -> filled.mother().mass()),
                column("In the bottle", MASS, filled -> filled.before().mass()),
                column("Takes unchilled", MASS, Filled::unchilled),
                column("Chill to", TEMPERATURE, Filled::warmest),
                column("Filled at", TEMPERATURE, filled -> filled.before().temperature()),
                column("Goes over", MASS, filled -> filled.refill().transferred()),
                column("Then holds", MASS, filled -> filled.refill().own().mass()),
                column("Mother keeps", MASS, filled -> filled.refill().mother().mass()),
                column("Heated after", TIME, filled -> heating(filled.heating(), HeaterTime::seconds)),
                column("From the battery", CHARGE, filled -> HOUR * heating(filled.heating(), HeaterTime::ampereHours)),
                words("Full", filled -> filled.refill().reached() ? "yes" : "no"));
    }

    private static double heating(Optional<HeaterTime> heating, ToDoubleFunction<HeaterTime> figure) {
        return heating.map(figure::applyAsDouble).orElse(Double.NaN);
    }

    /**
     * What the scale tells: the table to take along.
     *
     * @param day the day
     * @return one row a weight, from the full charge down
     */
    public static Listing scale(DayOutcome day) {
        return scale(day, Integer.MAX_VALUE);
    }

    /** The same with so many rows at most, spread over all weights. */
    static Listing scale(DayOutcome day, int most) {
        int every = Math.max(1, (day.scale().size() + most - 1) / most);
        List<ScaleRow> rows = IntStream.range(0, day.scale().size())
                .filter(i -> i % every == 0)
                .mapToObj(day.scale()::get)
                .toList();
        double shell = day.runs().get(0).pass().start().bottle().wallMass();
        return Listing.of(
                "From the scale to passes left, each begun at the start temperature; the shell is taken as "
                        + Both.of(MASS, shell) + ", weigh the empty bottle with its valve",
                rows,
                column("On the scale", MASS, row -> shell + row.charge()),
                column("Charge", MASS, ScaleRow::charge),
                column("Whole passes left", COUNT, ScaleRow::passes),
                column("and then", TIME, ScaleRow::spareSeconds),
                words("which ends with", row -> row.end().words()));
    }

    /**
     * All tables of the day.
     *
     * @param day the day
     * @return the passes, the refills where there is a mother bottle, the table for the scale
     */
    public static List<Listing> tables(DayOutcome day) {
        return day.refills().isEmpty()
                ? List.of(passes(day), scale(day))
                : List.of(passes(day), refills(day), scale(day));
    }

    /**
     * What the day comes to.
     *
     * @param day the day
     * @return one sentence or two each
     */
    public static List<String> sentences(DayOutcome day) {
        List<String> said = new ArrayList<>();
        int bottles = day.runs().get(day.runs().size() - 1).bottle();
        said.add(plural(day.wholePasses(), "whole pass", "whole passes") + " from "
                + plural(bottles, "bottle", "bottles") + " as filled, waits and heater as they are; the waits take "
                + CHARGE.text(HOUR * day.ampereHours(), UnitSystem.SI) + " from the battery.");
        day.heating()
                .map(heater -> Double.isNaN(heater.seconds())
                        ? "The heater does not bring the full bottle from the air's temperature to its start."
                        : "The full bottle, begun as cold as the air, is warm after " + minutes(heater.seconds())
                                + " and " + CHARGE.text(HOUR * heater.ampereHours(), UnitSystem.SI) + ".")
                .ifPresent(said::add);
        day.tooShort()
                .map(run -> "The wait before pass " + run.number() + " is too short: the bottle has "
                        + Both.of(TEMPERATURE, run.pass().start().temperature())
                        + " when it begins. Wait longer, take more heater, or another bottle.")
                .ifPresent(said::add);
        day.refills().stream()
                .reduce((first, last) -> last)
                .map(DayViews::lastRefill)
                .ifPresent(said::add);
        return said;
    }

    private static String lastRefill(Filled last) {
        String keeps = Both.of(MASS, last.refill().mother().mass());
        return last.refill().reached()
                ? "After the last refill counted the mother bottle keeps " + keeps + "."
                : "The mother bottle fills no further: " + keeps
                        + " stay behind in it as the pressures meet or its liquid"
                        + " ends. Fill outdoors, by the scale, and never beyond the charge of the plan.";
    }

    private static String plural(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    private static String minutes(double seconds) {
        return QuantityKind.COUNT.number(Math.ceil(seconds / 60), UnitSystem.SI) + " min";
    }
}
