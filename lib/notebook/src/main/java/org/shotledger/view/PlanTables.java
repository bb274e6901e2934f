package org.shotledger.view;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.shotledger.budget.Comparison;
import org.shotledger.budget.Limit;
import org.shotledger.budget.Limits;
import org.shotledger.budget.Reach;
import org.shotledger.relief.Attempt;
import org.shotledger.relief.Relief;
import org.shotledger.stepup.Checkpoint;
import org.shotledger.stepup.Shot;
import org.shotledger.stepup.StepUp;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** What comes after a budget as tables: the step-up plan, what bites next, what would have to change, what did change. */
public final class PlanTables {
    private PlanTables() {}

    /**
     * The ladder of shots.
     *
     * @param plan the plan
     * @return one row a shot
     */
    public static Listing of(StepUp plan) {
        Listing.Builder rows = Listing.titled("Step-up plan; with the nitrous off this boost gives the power of step 0")
                .figures("Step", QuantityKind.COUNT)
                .figures("Nitrous jet", QuantityKind.BORE)
                .figures("Fuel jet", QuantityKind.BORE)
                .figures("Expected at the wheels", QuantityKind.POWER)
                .figures("Go from", QuantityKind.POWER)
                .figures("to", QuantityKind.POWER)
                .figures("Lambda", QuantityKind.RATIO)
                .figures("Least margin", QuantityKind.FRACTION)
                .words("First limit");
        rows.row(0, Double.NaN, Double.NaN, plan.offPower(), Double.NaN, Double.NaN, Double.NaN, Double.NaN, "");
        for (Shot shot : plan.shots()) {
            var option = shot.option();
            rows.row(
                    shot.step(),
                    option.pair().nitrousBore(),
                    option.pair().fuelBore(),
                    option.wheelPower(),
                    shot.lowPower(),
                    shot.highPower(),
                    option.lambda(),
                    option.leastMargin(),
                    option.firstLimit());
        }
        return rows.build();
    }

    /**
     * The retard of every shot, rule of thumb beside the computed figure.
     *
     * @param plan the plan
     * @return one row a shot
     */
    public static Listing sparks(StepUp plan) {
        Listing.Builder rows = Listing.titled(
                        "Spark retard: rule of thumb (common practice, no source) beside the computed one")
                .figures("Step", QuantityKind.COUNT)
                .figures("Thumb, 1 deg per 50 hp", QuantityKind.CRANK_ANGLE)
                .figures("Thumb, 2 deg per 50 hp", QuantityKind.CRANK_ANGLE)
                .figures("Computed", QuantityKind.CRANK_ANGLE)
                .figures("In the sheet", QuantityKind.CRANK_ANGLE)
                .figures("Begin with", QuantityKind.CRANK_ANGLE)
                .figures("Peak pressure as in the sheet", QuantityKind.ABSOLUTE_PRESSURE)
                .figures("Knock integral against boost alone", QuantityKind.FRACTION);
        for (Shot shot : plan.shots()) {
            var spark = shot.spark();
            rows.row(
                    shot.step(),
                    spark.habitLow(),
                    spark.habitHigh(),
                    spark.computed(),
                    spark.planned(),
                    spark.first(),
                    spark.peakPressure(),
                    spark.knockRatio());
        }
        return rows.build();
    }

    /**
     * What to read after a shot before the next.
     *
     * @param shot the shot
     * @return one row a figure
     */
    public static Listing of(Shot shot) {
        Listing.Builder rows = Listing.titled("Step " + shot.step() + ": go on only when every figure lies within")
                .words("Read")
                .mixed("Expected")
                .mixed("Go from")
                .mixed("to")
                .words("Otherwise")
                .words("Standing");
        for (Checkpoint point : shot.checkpoints()) {
            rows.row(
                    point.what(),
                    new Cell.Figure(point.expected(), point.kind()),
                    finite(point.low(), point.kind()),
                    finite(point.high(), point.kind()),
                    point.otherwise(),
                    point.standing().words());
        }
        return rows.build();
    }

    private static Cell.Figure finite(double value, QuantityKind kind) {
        return new Cell.Figure(Double.isInfinite(value) ? Double.NaN : value, kind);
    }

    /**
     * What would have to change.
     *
     * @param relief the search
     * @return one row a change that was tried, in the order of cost
     */
    public static Listing of(Relief relief) {
        Listing.Builder rows = Listing.titled(sentence(relief))
                .figures("Cost rank", QuantityKind.COUNT)
                .words("Change")
                .words("From")
                .words("To")
                .words("Reaches the target")
                .words("Helps")
                .figures("Least margin at the target", QuantityKind.FRACTION)
                .words("First limit then");
        for (Attempt attempt : relief.attempts()) {
            rows.row(
                    attempt.change().cost(),
                    attempt.change().words(),
                    attempt.before(),
                    attempt.after(),
                    attempt.reached() ? "yes" : "no",
                    attempt.helps() ? "yes" : "no",
                    attempt.leastMargin(),
                    attempt.limit());
        }
        return rows.build();
    }

    private static String sentence(Relief relief) {
        String asked = power(relief.wish().wheelPower());
        if (relief.before().reached()) {
            return asked + " is within reach as the build is";
        }
        String stop = asked + " is out of reach: the build gives "
                + power(relief.before().wheelPower()) + ", stopped by "
                + relief.before().limit() + ". ";
        return stop
                + relief.cheapest()
                        .map(a -> "Cheapest single change that reaches it: "
                                + a.change().words() + ", " + a.before() + " to " + a.after())
                        .orElse("No single change that was tried reaches it")
                + " (order of cost: common practice, no source)";
    }

    /**
     * How far the build goes beyond the wish, and what stops it there.
     *
     * @param reach the search
     * @return one row
     */
    public static Listing of(Reach reach) {
        return Listing.titled("Beyond the wish, boost and jets chosen anew at every power")
                .figures("Asked", QuantityKind.POWER)
                .words("Reached")
                .figures("Most inside every limit", QuantityKind.POWER)
                .words("Then stopped by")
                .row(reach.asked(), reach.reached() ? "yes" : "no", reach.wheelPower(), reach.limit())
                .build();
    }

    /**
     * The limits that more nitrous at the same boost brings closer, the next to bite first.
     *
     * @param limits the limits of a budget
     * @return one row a limit that depends on the size of the shot
     */
    public static Listing nextToBite(Limits limits) {
        Listing.Builder rows = Listing.titled("Next to bite with larger jets at the same boost")
                .words("Limit")
                .figures("Power until it bites", QuantityKind.POWER)
                .figures("Margin", QuantityKind.FRACTION)
                .words("When broken");
        List<Limit> biting = limits.all().stream()
                .filter(l -> !Double.isNaN(l.powerToBound()))
                .sorted(java.util.Comparator.comparingDouble(Limit::powerToBound))
                .toList();
        for (Limit limit : biting) {
            rows.row(limit.name(), limit.powerToBound(), limit.relativeMargin(), limit.consequence());
        }
        return rows.build();
    }

    /**
     * Two budgets line by line.
     *
     * @param comparison the comparison
     * @return one row a figure
     */
    public static Listing of(Comparison comparison) {
        Listing.Builder rows = Listing.titled("Line by line")
                .words("Figure")
                .mixed("Before")
                .mixed("After")
                .mixed("Change")
                .words("Moved by");
        for (Comparison.Line line : comparison.lines()) {
            rows.row(
                    line.name(),
                    new Cell.Figure(line.before(), line.kind()),
                    new Cell.Figure(line.after(), line.kind()),
                    change(line),
                    because(line.because()));
        }
        return rows.build();
    }

    /** Margins are compared in points, everything else in per cent of what it was; a temperature by its difference. */
    private static Cell change(Comparison.Line line) {
        if (Double.isNaN(line.change())) {
            return new Cell.Text("");
        }
        return switch (line.kind()) {
            case FRACTION -> new Cell.Text(String.format(Locale.ROOT, "%+.1f points", 100 * line.change()));
            case TEMPERATURE -> new Cell.Figure(line.change(), QuantityKind.TEMPERATURE_DIFFERENCE, true);
            default -> new Cell.Figure(line.relativeChange(), QuantityKind.FRACTION, true);
        };
    }

    private static String because(Collection<String> names) {
        return String.join(", ", names);
    }

    private static String power(double watts) {
        return QuantityKind.POWER.text(watts, org.shotledger.units.UnitSystem.US);
    }
}
