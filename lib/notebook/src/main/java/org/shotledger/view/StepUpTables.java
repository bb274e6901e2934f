package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.words;

import org.shotledger.limits.Limit;
import org.shotledger.nitrous.JetPair;
import org.shotledger.stepup.Checkpoint;
import org.shotledger.stepup.Shot;
import org.shotledger.stepup.StepUp;
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
        return Listing.of(
                "Step-up plan; with the nitrous off this boost gives " + Both.of(QuantityKind.POWER, plan.offPower()),
                plan.shots(),
                column("Step", QuantityKind.COUNT, Shot::step),
                column("Nitrous jet", QuantityKind.BORE, shot -> jets(shot).nitrousBore()),
                column("Fuel jet", QuantityKind.BORE, shot -> jets(shot).fuelBore()),
                column("Expected at the wheels", QuantityKind.POWER, Shot::wheelPower),
                column("Go from", QuantityKind.POWER, Shot::lowPower),
                column("to", QuantityKind.POWER, Shot::highPower),
                column("Lambda", QuantityKind.RATIO, shot -> shot.point().lambda()),
                column(
                        "Least margin",
                        QuantityKind.FRACTION,
                        shot -> shot.plan().parts().leastMargin()),
                words(
                        "First limit",
                        shot -> shot.plan().parts().first().map(Limit::name).orElse("")));
    }

    private static JetPair jets(Shot shot) {
        return shot.setup().jets().orElseThrow();
    }

    /**
     * The retard of every shot, rule of thumb beside the computed figure.
     *
     * @param plan the plan
     * @return one row a shot
     */
    public static Listing sparks(StepUp plan) {
        return Listing.of(
                "Spark retard: rule of thumb (common practice, no source) beside the computed one",
                plan.shots(),
                column("Step", QuantityKind.COUNT, Shot::step),
                column(
                        "Thumb, 1 deg per 50 hp",
                        QuantityKind.CRANK_ANGLE,
                        shot -> shot.spark().habitLow()),
                column(
                        "Thumb, 2 deg per 50 hp",
                        QuantityKind.CRANK_ANGLE,
                        shot -> shot.spark().habitHigh()),
                column(
                        "Computed",
                        QuantityKind.CRANK_ANGLE,
                        shot -> shot.spark().computed()),
                column(
                        "In the setup",
                        QuantityKind.CRANK_ANGLE,
                        shot -> shot.spark().planned()),
                column(
                        "Most that habit and model ask for",
                        QuantityKind.CRANK_ANGLE,
                        shot -> shot.spark().most()),
                column(
                        "Peak pressure as in the setup",
                        QuantityKind.ABSOLUTE_PRESSURE,
                        shot -> shot.spark().peakPressure()),
                column(
                        "Knock integral against boost alone",
                        QuantityKind.FRACTION,
                        shot -> shot.spark().knockRatio()));
    }

    /**
     * What to read after a shot before the next.
     *
     * @param shot the shot
     * @return one row a figure
     */
    public static Listing of(Shot shot) {
        return Listing.of(
                "Step " + shot.step() + ": go on only when every figure lies within",
                shot.checkpoints(),
                words("Read", Checkpoint::what),
                column("Expected", Checkpoint::kind, Checkpoint::expected),
                column("Go from", Checkpoint::kind, point -> finite(point.low())),
                column("to", Checkpoint::kind, point -> finite(point.high())),
                words("Otherwise", Checkpoint::otherwise),
                words("Known as", point -> point.provenance().words()));
    }

    private static double finite(double value) {
        return Double.isInfinite(value) ? Double.NaN : value;
    }
}
