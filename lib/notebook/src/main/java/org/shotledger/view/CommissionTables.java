package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shotledger.commission.ControllerTables;
import org.shotledger.commission.JobItem;
import org.shotledger.commission.JobList;
import org.shotledger.commission.SensorChecks;
import org.shotledger.commission.StartLine;
import org.shotledger.commission.StartList;
import org.shotledger.limits.Verdict;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;
import org.shotledger.wiring.CheckValue;
import org.shotledger.wiring.SensorReading;
import org.shotledger.wiring.SensorVerdict;

/** Commissioning as tables: check values and their form, readings judged, the list of a first start, controller tables, the job list. */
public final class CommissionTables {
    private CommissionTables() {}

    /**
     * What every sensor must show in each known state, with room for the reading.
     *
     * @param checks the checks
     * @return one row a sensor and state; the column of readings holds what the sheet has, else it is empty, to be written in
     */
    public static Listing form(SensorChecks checks) {
        Listing.Builder rows = Listing.titled("Readings: " + Both.of(QuantityKind.ABSOLUTE_PRESSURE, checks.barometer())
                        + " and " + Both.of(QuantityKind.TEMPERATURE, checks.air()) + " outside")
                .words("State")
                .words("Sensor")
                .mixed("Must show")
                .mixed("Give or take")
                .words("Read")
                .words("Because");
        for (CheckValue.State state : CheckValue.State.values()) {
            for (CheckValue value : checks.values()) {
                if (value.state() == state) {
                    QuantityKind kind = checks.input(value.sensor()).sensor().kind();
                    rows.row(
                            state.words(),
                            value.sensor(),
                            new Cell.Figure(value.expected(), kind),
                            new Cell.Figure(value.halfWidth(), SensorTables.difference(kind)),
                            read(checks, value).map(v -> Both.of(kind, v)).orElse(""),
                            value.why());
                }
            }
        }
        return rows.build();
    }

    private static Optional<Double> read(SensorChecks checks, CheckValue value) {
        return checks.readings().readings().stream()
                .filter(r -> r.sensor().equals(value.sensor()) && r.state() == value.state())
                .map(SensorReading::value)
                .findFirst();
    }

    /**
     * What the readings mean.
     *
     * @param verdicts the readings, judged
     * @return one row a sensor
     */
    public static Listing verdicts(List<SensorVerdict> verdicts) {
        Listing.Builder rows = Listing.titled("Readings judged")
                .words("Sensor")
                .words("Verdict")
                .figures("Off, over its band", QuantityKind.RATIO)
                .words("Likely cause");
        for (SensorVerdict one : verdicts) {
            rows.row(
                    one.sensor(),
                    one.good() ? Verdict.HOLDS : Verdict.BROKEN,
                    one.worst(),
                    one.good()
                            ? ""
                            : one.causes().isEmpty()
                                    ? "none that explains every reading by itself"
                                    : one.causes().stream()
                                            .map(SensorVerdict.Cause::what)
                                            .collect(Collectors.joining("; or ")));
        }
        return rows.build();
    }

    /**
     * The list of a first start and a first shot.
     *
     * @param list the list
     * @return one row a line
     */
    public static Listing of(StartList list) {
        Listing.Builder rows = Listing.titled("First start and first shot, in this order")
                .words("No.")
                .words("When")
                .words("Do")
                .words("Must be seen")
                .words("Stop when")
                .words("Mind");
        int number = 0;
        for (StartLine line : list.lines()) {
            rows.row(
                    String.valueOf(++number),
                    line.stage().words(),
                    line.action(),
                    expected(line),
                    line.stop(),
                    line.caution());
        }
        return rows.build();
    }

    /** Everything that must be seen after a line. */
    static String expected(StartLine line) {
        return line.expected().stream().map(CommissionTables::words).collect(Collectors.joining("; "));
    }

    private static String words(StartLine.Expected expected) {
        String band = Double.isNaN(expected.band())
                ? ""
                : " \u00b1 " + Both.of(SensorTables.difference(expected.kind()), expected.band());
        String value = expected.kind() == QuantityKind.TIME && expected.value() < 1
                ? String.format(Locale.ROOT, "%.0f ms", 1000 * expected.value())
                : Both.of(expected.kind(), expected.value());
        return expected.what() + " " + value + band;
    }

    /**
     * Boost, spark, mixture and fuel over the engine speeds of a controller.
     *
     * @param tables the tables
     * @return one row an engine speed
     */
    public static Listing of(ControllerTables tables) {
        Listing.Builder rows = Listing.titled("Controller tables over engine speed")
                .figures("Engine speed", QuantityKind.ROTATION)
                .figures("Boost, nitrous off", QuantityKind.GAUGE_PRESSURE)
                .figures("Boost, armed", QuantityKind.GAUGE_PRESSURE)
                .words("Nitrous may open")
                .figures("Spark later by", QuantityKind.CRANK_ANGLE)
                .figures("Lambda target of the main fuel", QuantityKind.RATIO)
                .figures("Lambda shown with nitrous", QuantityKind.RATIO)
                .figures("Main fuel changes by", QuantityKind.FRACTION)
                .figures("Injector duty", QuantityKind.FRACTION);
        for (ControllerTables.Row row : tables.rows()) {
            rows.row(
                    row.rpm(),
                    row.boostOff(),
                    row.boostArmed(),
                    row.nitrous() ? "yes" : "no",
                    row.retard(),
                    row.lambdaTarget(),
                    row.lambdaShown(),
                    new Cell.Figure(row.mainFuel(), QuantityKind.FRACTION, true),
                    row.mainDuty());
        }
        return rows.build();
    }

    /**
     * The rules that go with the tables: which boost table counts when, how the nitrous comes on, and whether these engine speeds carry what
     * was evaluated.
     *
     * @param tables the tables
     * @return one sentence each
     */
    public static List<String> rules(ControllerTables tables) {
        var setup = tables.plan().setup();
        var coming = tables.plan().job().workshop().track().arming();
        List<String> rules = new ArrayList<>();
        rules.add(
                "Boost: the armed table from the moment the nitrous is armed, at every engine speed, whether or not it flows; the other"
                        + " table only while it is not armed.");
        rules.add("The nitrous opens only while the boost is at most "
                + Both.of(QuantityKind.PRESSURE_DIFFERENCE, setup.boost().tolerance()) + " above the armed table.");
        rules.add(String.format(
                Locale.ROOT,
                "It opens from %.0f to %.0f rpm, and after closing only %.0f rpm inside both; from gear %d on; %.2f s after the"
                        + " conditions are met; %s.",
                setup.arming().rpmLow(),
                setup.arming().rpmHigh(),
                coming.hysteresis(),
                coming.gear(),
                coming.delay(),
                coming.ramp() > 0
                        ? String.format(
                                Locale.ROOT, "at %.0f %%, whole %.2f s later", 100 * coming.startShare(), coming.ramp())
                        : "whole at once"));
        rules.add(
                "Fuel: the wet system brings its own fuel; the controller's main fuel stays set for the air alone, and changes only as"
                        + " the air does.");
        rules.add(
                tables.carries()
                        ? "Straight lines between these engine speeds run at most "
                                + Both.of(QuantityKind.PRESSURE_DIFFERENCE, tables.boostAbove())
                                + " above the armed boost that was evaluated."
                        : String.format(
                                        Locale.ROOT,
                                        "Near %.0f rpm straight lines between these engine speeds run ",
                                        tables.boostAboveAt())
                                + Both.of(QuantityKind.PRESSURE_DIFFERENCE, tables.boostAbove())
                                + " above the armed boost that was evaluated: set a break point there, or enter less boost.");
        return rules;
    }

    /**
     * The job list with its bill of materials.
     *
     * @param list the list
     * @param items which of its items
     * @return one row an item
     */
    public static Listing of(JobList list, List<JobItem> items) {
        String money = list.currency().isEmpty() ? "" : ", " + list.currency();
        Listing.Builder rows = Listing.titled("Job list and bill of materials")
                .words("Name in the sheet")
                .words("Circuit")
                .words("What")
                .mixed("Size")
                .words("Amount")
                .words("Before")
                .words("Fitted")
                .words("Cost" + money)
                .words("Hours");
        for (JobItem item : items) {
            rows.row(
                    item.key(),
                    item.circuit().words(),
                    item.what(),
                    new Cell.Figure(item.size(), item.sizeKind()),
                    amount(item),
                    item.before().words(),
                    item.fitted() ? "yes" : "no",
                    money(item.cost()),
                    Double.isNaN(item.hours()) ? "" : String.format(Locale.ROOT, "%.1f", item.hours()));
        }
        return rows.build();
    }

    /** Lengths to a tenth: a hose that is rounded down is too short. */
    static String amount(JobItem item) {
        return item.amountKind() == QuantityKind.ALTITUDE
                ? WireList.length(item.amount())
                : Both.of(item.amountKind(), item.amount());
    }

    private static String money(double value) {
        return Double.isNaN(value) ? "" : String.format(Locale.ROOT, "%.2f", value);
    }

    /**
     * What it costs.
     *
     * @param list the list
     * @return two sentences: the whole and what is open, and a pass
     */
    public static String costs(JobList list) {
        String currency = list.currency().isEmpty() ? "" : " " + list.currency();
        List<JobItem> open = list.open();
        return "All that has a price comes to " + money(list.cost(list.items())) + currency + ", what is still open to "
                + money(list.cost(open)) + currency + "; " + list.unpriced(open) + " of the " + open.size()
                + " open items have no price. "
                + (Double.isNaN(list.passCost())
                        ? "The cost of a pass needs the prices of nitrous oxide and fuel."
                        : "A pass takes nitrous oxide and fuel for " + money(list.passCost()) + currency + ".");
    }
}
