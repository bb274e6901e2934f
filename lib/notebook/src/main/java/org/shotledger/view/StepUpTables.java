package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.limits.Limit;
import org.shotledger.nitrous.JetPair;
import org.shotledger.stepup.Checkpoint;
import org.shotledger.stepup.Shot;
import org.shotledger.stepup.StepUp;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

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

    /** What to read after a shot, without what is known of it. */
    static Listing brief(Shot shot) {
        return Listing.of(
                "Step " + shot.step() + ", the plan's own: go on only when every figure lies within",
                shot.checkpoints(),
                words("Read", Checkpoint::what),
                column("Expected", Checkpoint::kind, Checkpoint::expected),
                column("Go from", Checkpoint::kind, point -> finite(point.low())),
                column("to", Checkpoint::kind, point -> finite(point.high())));
    }

    /**
     * What the steps after the first change in what is read, told from the step before.
     *
     * @param plan the plan
     * @param system the units
     * @return one row a figure that moves; none when there is one step or nothing moves
     */
    static Listing changes(StepUp plan, UnitSystem system) {
        List<Shot> shots = plan.shots();
        Listing.Builder rows = Listing.titled(
                        "Later steps: what is expected, and in brackets from where to where to go on;"
                                + " what is not listed stays as in the step before")
                .words("Read");
        shots.stream().skip(1).forEach(shot -> rows.words("Step " + shot.step()));
        for (Checkpoint first : shots.get(0).checkpoints()) {
            List<String> told = shots.stream()
                    .map(shot -> told(shot, first.figure(), system))
                    .toList();
            if (told.stream().distinct().count() > 1) {
                List<Object> row = new ArrayList<>(List.of(first.what()));
                for (int i = 1; i < told.size(); i++) {
                    row.add(told.get(i).equals(told.get(i - 1)) ? "as before" : told.get(i));
                }
                rows.row(row.toArray());
            }
        }
        return rows.build();
    }

    /** What else a later step says than the one before about what to do outside. */
    static List<String> otherwise(StepUp plan) {
        List<String> said = new ArrayList<>();
        for (int i = 1; i < plan.shots().size(); i++) {
            Shot shot = plan.shots().get(i);
            for (Checkpoint point : shot.checkpoints()) {
                Optional<Checkpoint> before = at(plan.shots().get(i - 1), point.figure());
                if (before.isEmpty() || !before.get().otherwise().equals(point.otherwise())) {
                    said.add("Step " + shot.step() + ", " + point.what() + ": otherwise " + point.otherwise() + ".");
                }
            }
        }
        return said;
    }

    private static Optional<Checkpoint> at(Shot shot, Checkpoint.Figure figure) {
        return shot.checkpoints().stream()
                .filter(point -> point.figure() == figure)
                .findFirst();
    }

    private static String told(Shot shot, Checkpoint.Figure figure, UnitSystem system) {
        return at(shot, figure).map(point -> told(point, system)).orElse("not read");
    }

    private static String told(Checkpoint point, UnitSystem system) {
        String expected = Double.isNaN(point.expected()) ? "" : point.kind().text(point.expected(), system);
        String low =
                Double.isInfinite(point.low()) ? "" : "from " + point.kind().number(point.low(), system);
        String high =
                Double.isInfinite(point.high()) ? "" : "to " + point.kind().number(point.high(), system);
        return (expected + " (" + (low + " " + high).strip() + ")").strip();
    }

    private static double finite(double value) {
        return Double.isInfinite(value) ? Double.NaN : value;
    }
}
