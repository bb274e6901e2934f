package org.shotledger.stepup;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Evaluator;
import org.shotledger.budget.Standing;
import org.shotledger.build.BuilderLimits;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Finds the figures at which a shot goes on or stops, from the model's own answer to a fault of each stream. */
final class Checkpoints {
    /** A wide-band sensor under load, lambda: common practice, no source. */
    private static final double SENSOR = 0.02;
    /** Cylinders' exhaust temperatures that differ by more point to an uneven mixture, K: common practice, no source. */
    private static final double EXHAUST_SPREAD = 50;

    /** Share of the set fuel pressure below which a pull is cut, long before the mixture is lean: common practice, no source. */
    private static final double FUEL_SAG = 0.9;

    /** Hottest bottle looked at, K: liquid ends at 309.52 K. */
    private static final double HOTTEST = 308.5;

    private static final int HALVINGS = 30;

    private final Budget budget;
    private final Evaluation shot;
    private final BuilderLimits allowed;

    Checkpoints(Budget budget, Evaluation shot) {
        this.budget = budget;
        this.shot = shot;
        this.allowed = budget.build().limits();
    }

    List<Checkpoint> all(double lowPower, double highPower) {
        List<Checkpoint> checkpoints = new ArrayList<>();
        checkpoints.add(new Checkpoint(
                "power at the wheels",
                QuantityKind.POWER,
                shot.wheelPower(),
                lowPower,
                highPower,
                "stop: find out why before the next step; refit the model to this pull",
                Standing.CALCULATED));
        checkpoints.add(new Checkpoint(
                "lambda in the pull",
                QuantityKind.RATIO,
                shot.lambda(),
                Math.max(shot.lambda() - 2 * SENSOR, allowed.lambdaLow()),
                Math.min(shot.lambda() + SENSOR, allowed.lambdaHigh()),
                "lean: off at once, larger fuel jet; rich: smaller fuel jet before the next step",
                Standing.COMMON_PRACTICE));
        checkpoints.add(fuelPressure());
        checkpoints.add(bottlePressure());
        checkpoints.add(bound(
                "main injector duty",
                QuantityKind.FRACTION,
                shot.main().duty(),
                allowed.injectorDuty(),
                "stop: the main fuel is at its end"));
        checkpoints.add(bound(
                "crankshaft torque",
                QuantityKind.TORQUE,
                shot.crankTorque(),
                allowed.crankTorque(),
                "stop: take boost back"));
        checkpoints.add(new Checkpoint(
                "exhaust temperature, hottest cylinder above coldest",
                QuantityKind.TEMPERATURE_DIFFERENCE,
                Double.NaN,
                0,
                EXHAUST_SPREAD,
                "stop: look for a blocked or wrong jet",
                Standing.COMMON_PRACTICE));
        return checkpoints;
    }

    /** The rail pressure above the plenum at which the mixture meets the lean limit; flow goes with its square root. */
    private Checkpoint fuelPressure() {
        double drop = shot.nitrousFuel().railPressure() - shot.demand().plenumPressure();
        Evaluator evaluator = budget.evaluator();
        double least = boundary(
                share -> evaluator
                                .sharing(shot.conditions(), shot.rpm(), shot.demand(), shot.nitrous(), 1, share)
                                .lambda()
                        > allowed.lambdaHigh(),
                0,
                1);
        return new Checkpoint(
                "nitrous fuel pressure above the plenum",
                QuantityKind.PRESSURE_DIFFERENCE,
                drop,
                drop * Math.max(least * least, FUEL_SAG),
                Double.POSITIVE_INFINITY,
                "cut the nitrous below this; " + lean(drop * least * least),
                Standing.COMMON_PRACTICE);
    }

    private static String lean(double pressure) {
        return "the mixture would meet the lean limit at "
                + QuantityKind.PRESSURE_DIFFERENCE.text(pressure, UnitSystem.US) + " ("
                + QuantityKind.PRESSURE_DIFFERENCE.text(pressure, UnitSystem.SI) + ")";
    }

    private Checkpoint bottlePressure() {
        double now = shot.conditions().bottleLiquid().temperature();
        double leanAbove = boundary(t -> lambdaAt(t) <= allowed.lambdaHigh(), now, HOTTEST);
        double pressure = shot.conditions()
                .withBottleTemperature(leanAbove)
                .bottleLiquid()
                .pressure();
        return new Checkpoint(
                "bottle pressure before opening",
                QuantityKind.ABSOLUTE_PRESSURE,
                shot.conditions().bottleLiquid().pressure(),
                allowed.bottlePressureLow(),
                Math.min(pressure, allowed.bottlePressureHigh()),
                "do not open: warm or cool the bottle first",
                Standing.CALCULATED);
    }

    private double lambdaAt(double bottleTemperature) {
        return budget.evaluator()
                .at(shot.conditions().withBottleTemperature(bottleTemperature), shot.rpm(), shot.demand())
                .lambda();
    }

    private static Checkpoint bound(String what, QuantityKind kind, double expected, double high, String otherwise) {
        return new Checkpoint(what, kind, expected, Double.NEGATIVE_INFINITY, high, otherwise, Standing.ASSUMED);
    }

    /** The value up to which a predicate holds, from one that holds; the far end when it holds there too. */
    private static double boundary(DoublePredicate holds, double low, double high) {
        if (holds.test(high)) {
            return high;
        }
        double good = low;
        double bad = high;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (good + bad) / 2;
            if (holds.test(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }
}
