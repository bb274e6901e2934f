package org.shotledger.reconcile;

import java.util.List;
import java.util.Optional;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.fluid.NitrousOxide;

/**
 * What the outcome of a setup expects an engine speed and a moment of the nitrous to look like. Boost is what the setup holds while
 * the nitrous is armed; the bottle has cooled as the outcome's pass says.
 */
final class Expectation {
    private final Outcome outcome;
    private final PointModel model;
    private final List<PassOutcome.Moment> bottle;

    Expectation(Outcome outcome) {
        this.outcome = outcome;
        this.model = Evaluate.model(outcome.car(), outcome.setup(), outcome.at());
        this.bottle = outcome.overPass();
    }

    /** The point with the nitrous on for a time; empty where the outcome has no answer. */
    Optional<OperatingPoint> on(double rpm, double seconds) {
        return on(rpm, seconds, 1);
    }

    /** The same with another flow of the fuel jets than planned. */
    Optional<OperatingPoint> on(double rpm, double seconds, double fuelShare) {
        double temperature = PassOutcome.at(bottle, seconds, PassOutcome.Moment::temperature);
        if (Double.isNaN(temperature)) {
            return Optional.empty();
        }
        PointModel cooled = model.withBottle(NitrousOxide.saturatedLiquid(temperature));
        double plenum = plenum(rpm);
        return answer(() -> cooled.at(
                rpm,
                plenum,
                Mode.NITROUS,
                cooled.feed(plenum),
                cooled.nitrousFuel(plenum).times(fuelShare)));
    }

    /** The point with the nitrous closed, at the boost that is held while it is armed. */
    Optional<OperatingPoint> off(double rpm) {
        return answer(() -> model.at(rpm, plenum(rpm), Mode.ARMED));
    }

    /** The same point without its nitrous. */
    Optional<OperatingPoint> without(OperatingPoint on) {
        return answer(() -> model.at(on.rpm(), on.plenumPressure(), Mode.ARMED));
    }

    /** The same point with shares of its two flows. */
    Optional<OperatingPoint> sharing(OperatingPoint on, double nitrousShare, double fuelShare) {
        return answer(() -> model.withBottle(on.bottle())
                .at(
                        on.rpm(),
                        on.plenumPressure(),
                        on.mode(),
                        on.nitrous().times(nitrousShare),
                        on.nitrousFuel().times(fuelShare)));
    }

    /** Pressure in the bottle after a time with the nitrous on, Pa absolute. */
    double bottlePressure(double seconds) {
        return PassOutcome.at(bottle, seconds, PassOutcome.Moment::pressure);
    }

    private double plenum(double rpm) {
        return outcome.at().air().pressure() + outcome.setup().boost().armed().at(rpm);
    }

    private static Optional<OperatingPoint> answer(java.util.function.Supplier<OperatingPoint> point) {
        try {
            return Optional.of(point.get());
        } catch (IllegalArgumentException outside) {
            return Optional.empty();
        }
    }

    /** What is expected of a channel; NaN where it cannot be. */
    double value(ComparedChannel what, OperatingPoint point, double seconds) {
        boolean on = point.mode().nitrousFlows();
        return switch (what) {
            case WHEEL_POWER -> point.wheelPower();
            case CRANK_POWER -> point.power().brake();
            case MANIFOLD_PRESSURE -> point.plenumPressure();
            case LAMBDA -> point.lambda();
            case FUEL_PRESSURE -> point.main().railPressure();
            case NITROUS_FUEL_PRESSURE -> on ? point.nitrousFuel().railPressure() : Double.NaN;
            case BOTTLE_PRESSURE -> on ? bottlePressure(seconds) : Double.NaN;
        };
    }
}
