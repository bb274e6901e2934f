package org.shotledger.stepup;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;
import org.shotledger.car.BuilderLimits;
import org.shotledger.curve.Bracket;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.limits.Provenance;
import org.shotledger.setup.BottleState;
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

    /** Share of a range to which its bound is found. */
    private static final double CLOSE = 1e-9;

    private final Outcome outcome;
    private final PointModel model;
    private final OperatingPoint shot;
    private final BuilderLimits allowed;

    Checkpoints(Outcome outcome, OperatingPoint shot) {
        this.outcome = outcome;
        this.model = Evaluate.model(outcome.car(), outcome.setup(), outcome.at());
        this.shot = shot;
        this.allowed = outcome.car().limits();
    }

    List<Checkpoint> all(double lowPower, double highPower) {
        List<Checkpoint> checkpoints = new ArrayList<>();
        checkpoints.add(new Checkpoint(
                Checkpoint.Figure.WHEEL_POWER,
                "power at the wheels",
                QuantityKind.POWER,
                shot.wheelPower(),
                lowPower,
                highPower,
                "stop: find out why before the next step; refit the model to this pull",
                Provenance.CALCULATED));
        checkpoints.add(new Checkpoint(
                Checkpoint.Figure.LAMBDA,
                "lambda in the pull",
                QuantityKind.RATIO,
                shot.lambda(),
                Math.max(shot.lambda() - 2 * SENSOR, allowed.lambdaLow()),
                Math.min(shot.lambda() + SENSOR, allowed.lambdaHigh()),
                "lean: off at once, larger fuel jet; rich: smaller fuel jet before the next step",
                Provenance.COMMON_PRACTICE));
        checkpoints.add(fuelPressure());
        checkpoints.add(bottlePressure());
        checkpoints.add(bound(
                Checkpoint.Figure.INJECTOR_DUTY,
                "main injector duty",
                QuantityKind.FRACTION,
                shot.main().duty(),
                allowed.injectorDuty(),
                "stop: the main fuel is at its end"));
        checkpoints.add(bound(
                Checkpoint.Figure.CRANK_TORQUE,
                "crankshaft torque",
                QuantityKind.TORQUE,
                shot.crankTorque(),
                allowed.crankTorque(),
                "stop: take boost back"));
        checkpoints.add(new Checkpoint(
                Checkpoint.Figure.EXHAUST_SPREAD,
                "exhaust temperature, hottest cylinder above coldest",
                QuantityKind.TEMPERATURE_DIFFERENCE,
                Double.NaN,
                0,
                EXHAUST_SPREAD,
                "stop: look for a blocked or wrong jet",
                Provenance.COMMON_PRACTICE));
        return checkpoints;
    }

    /** The rail pressure above the plenum at which the mixture meets the lean limit; flow goes with its square root. */
    private Checkpoint fuelPressure() {
        double drop = shot.nitrousFuel().railPressure() - shot.plenumPressure();
        double least = boundary(this::leanWith, 0, 1);
        return new Checkpoint(
                Checkpoint.Figure.NITROUS_FUEL_PRESSURE,
                outcome.car().nitrous().fuel().onMainRail()
                        ? "main rail pressure above the plenum"
                        : "nitrous fuel pressure above the plenum",
                QuantityKind.PRESSURE_DIFFERENCE,
                drop,
                drop * Math.max(least * least, FUEL_SAG),
                Double.POSITIVE_INFINITY,
                "cut the nitrous below this; " + lean(drop * least * least),
                Provenance.COMMON_PRACTICE);
    }

    /** On the main rail the injectors pass less at that pressure too; where no model answers, there is no fuel left to burn. */
    private boolean leanWith(double fuelShare) {
        double plenum = shot.plenumPressure();
        double rail = plenum + fuelShare * fuelShare * (shot.nitrousFuel().railPressure() - plenum);
        try {
            return model.at(
                                    shot.rpm(),
                                    plenum,
                                    Mode.NITROUS,
                                    shot.nitrous(),
                                    shot.nitrousFuel().at(rail, plenum))
                            .lambda()
                    > allowed.lambdaHigh();
        } catch (NoAnswerException none) {
            return true;
        }
    }

    private static String lean(double pressure) {
        return "the mixture would meet the lean limit at "
                + QuantityKind.PRESSURE_DIFFERENCE.text(pressure, UnitSystem.US) + " ("
                + QuantityKind.PRESSURE_DIFFERENCE.text(pressure, UnitSystem.SI) + ")";
    }

    private Checkpoint bottlePressure() {
        double leanAbove = boundary(this::richEnoughAt, shot.bottle().temperature(), HOTTEST);
        return new Checkpoint(
                Checkpoint.Figure.BOTTLE_PRESSURE,
                "bottle pressure before opening",
                QuantityKind.ABSOLUTE_PRESSURE,
                shot.bottle().pressure(),
                allowed.bottlePressureLow(),
                Math.min(bottle(leanAbove).pressure(), allowed.bottlePressureHigh()),
                "do not open: warm or cool the bottle first",
                Provenance.CALCULATED);
    }

    private boolean richEnoughAt(double bottleTemperature) {
        try {
            return model.withBottle(bottle(bottleTemperature))
                            .at(shot.rpm(), shot.plenumPressure(), Mode.NITROUS)
                            .lambda()
                    <= allowed.lambdaHigh();
        } catch (NoAnswerException none) {
            return false;
        }
    }

    /** The bottle of the case at another temperature: as it was charged, or with liquid and vapour. */
    private FluidState bottle(double temperature) {
        return outcome.at().bottle().moment() == BottleState.Moment.FIRST_OPENING
                ? outcome.car()
                        .bottle()
                        .vessel()
                        .charged(outcome.setup().bottle().charge(), temperature)
                        .outlet()
                : NitrousOxide.saturatedLiquid(temperature);
    }

    private static Checkpoint bound(
            Checkpoint.Figure figure, String what, QuantityKind kind, double expected, double high, String otherwise) {
        return new Checkpoint(
                figure, what, kind, expected, Double.NEGATIVE_INFINITY, high, otherwise, Provenance.ASSUMED);
    }

    /** The value up to which a predicate holds, from one that holds; the far end when it holds there too. */
    private static double boundary(DoublePredicate holds, double low, double high) {
        return holds.test(high)
                ? high
                : Bracket.edge(holds, low, high, CLOSE * (high - low)).inside();
    }
}
