package org.shotledger.view;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Limits;
import org.shotledger.stepup.Checkpoint;
import org.shotledger.stepup.Shot;
import org.shotledger.stepup.StepUp;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** The step-up plan as tables. */
public final class StepUpTables {
    private StepUpTables() {}

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
}
