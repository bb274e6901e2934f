package org.shotledger.commission;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.Setup;

/**
 * A plan's setup over the engine speeds of a controller's own table: the figures that were evaluated, nothing worked out beside them.
 *
 * @param plan the plan
 * @param rows one an engine speed, ascending
 * @param boostAbove how far a controller that goes straight between these speeds runs above the armed boost that was evaluated, at most, Pa
 * @param boostAboveAt engine speed at which it is, rev/min
 */
public record ControllerTables(Plan plan, List<Row> rows, double boostAbove, double boostAboveAt) {
    /** Distance of the speeds at which a table is looked at between its cells, rpm: our choice. */
    private static final double LOOK = 25;

    public ControllerTables {
        rows = List.copyOf(rows);
    }

    /**
     * One engine speed.
     *
     * @param rpm engine speed, rev/min
     * @param boostOff boost with the nitrous not armed, Pa gauge
     * @param boostArmed boost with the nitrous armed, Pa gauge
     * @param nitrous whether the nitrous may open here
     * @param retard spark later than the builder's own timing while the nitrous flows, crank degrees; zero where it may not
     * @param lambdaTarget mixture of the main fuel on the air alone, for which the controller's own fuel is set
     * @param lambdaShown what a probe shows with the nitrous on, all streams; NaN where it may not be or has no answer
     * @param mainFuel change of the main fuel at the moment of opening, as a share: the nitrous oxide displaces and cools air; NaN as above
     * @param mainDuty duty of the main injectors with the nitrous on, or off where it may not be; NaN without an answer
     */
    public record Row(
            double rpm,
            double boostOff,
            double boostArmed,
            boolean nitrous,
            double retard,
            double lambdaTarget,
            double lambdaShown,
            double mainFuel,
            double mainDuty) {}

    /**
     * The tables of a plan at the engine speeds of its own boost tables.
     *
     * @param plan the plan
     * @return the tables
     */
    public static ControllerTables of(Plan plan) {
        java.util.TreeSet<Double> speeds = new java.util.TreeSet<>();
        for (BoostTable table :
                List.of(plan.setup().boost().off(), plan.setup().boost().armed())) {
            table.steps().forEach(step -> speeds.add(step.rpm()));
        }
        speeds.add(plan.setup().arming().rpmLow());
        speeds.add(plan.setup().arming().rpmHigh());
        return of(plan, speeds.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /**
     * The tables of a plan at the break points of a controller.
     *
     * @param plan the plan
     * @param rpm engine speeds of the controller's table, rev/min, ascending, 2 to 64 of them
     * @return the tables
     * @throws IllegalArgumentException when the speeds do not rise or are not 2 to 64
     */
    public static ControllerTables of(Plan plan, double... rpm) {
        if (rpm.length < 2 || rpm.length > 64) {
            throw new IllegalArgumentException(
                    "The controller's table has " + rpm.length + " engine speeds; give 2 to 64.");
        }
        for (int i = 1; i < rpm.length; i++) {
            if (!(rpm[i] > rpm[i - 1])) {
                throw new IllegalArgumentException("The engine speeds of the controller's table do not rise: "
                        + rpm[i - 1] + " rpm is followed by " + rpm[i] + " rpm; put them in order.");
            }
        }
        Outcome stated = plan.stated();
        PointModel model = Evaluate.model(plan.car(), plan.setup(), stated.at());
        List<Row> rows = new ArrayList<>();
        for (double speed : rpm) {
            rows.add(row(plan.setup(), stated, model, speed));
        }
        double[] above = above(plan.setup().boost().armed(), rpm);
        return new ControllerTables(plan, rows, above[0], above[1]);
    }

    private static Row row(Setup setup, Outcome stated, PointModel model, double rpm) {
        boolean open = setup.jets().isPresent() && setup.arming().contains(rpm);
        Optional<OperatingPoint> point = inside(stated, rpm) ? stated.at(rpm) : Optional.empty();
        Optional<OperatingPoint> on = open ? point : Optional.empty();
        Optional<OperatingPoint> off = on.flatMap(with -> closed(model, with));
        return new Row(
                rpm,
                setup.boost().off().at(rpm),
                setup.boost().armed().at(rpm),
                open,
                open ? setup.retard() : 0,
                setup.mixture(),
                on.map(OperatingPoint::lambda).orElse(Double.NaN),
                off.map(without -> on.get().main().massFlow() / without.main().massFlow() - 1)
                        .orElse(Double.NaN),
                point.map(at -> at.main().duty()).orElse(Double.NaN));
    }

    private static boolean inside(Outcome stated, double rpm) {
        var breathing = stated.car().engine().volumetricEfficiency();
        return rpm >= breathing.low() && rpm <= breathing.high();
    }

    private static Optional<OperatingPoint> closed(PointModel model, OperatingPoint with) {
        try {
            return Optional.of(model.at(with.rpm(), with.plenumPressure(), Mode.ARMED));
        } catch (NoAnswerException none) {
            return Optional.empty();
        }
    }

    /** Straight lines between the controller's speeds against the table that was evaluated. */
    private static double[] above(BoostTable evaluated, double[] rpm) {
        double[] gauge = new double[rpm.length];
        for (int i = 0; i < rpm.length; i++) {
            gauge[i] = evaluated.at(rpm[i]);
        }
        BoostTable entered = BoostTable.of(rpm, gauge);
        double most = 0;
        double at = rpm[0];
        double first = Math.min(rpm[0], evaluated.steps().get(0).rpm());
        double last = Math.max(
                rpm[rpm.length - 1],
                evaluated.steps().get(evaluated.steps().size() - 1).rpm());
        for (double speed = first; speed <= last; speed += LOOK) {
            double off = entered.at(speed) - evaluated.at(speed);
            if (off > most) {
                most = off;
                at = speed;
            }
        }
        return new double[] {most, at};
    }

    /**
     * Whether these break points carry the armed boost that was evaluated.
     *
     * @return false where the boost between them would lie above it by more than a boost control holds
     */
    public boolean carries() {
        return boostAbove <= plan.setup().boost().tolerance();
    }
}
