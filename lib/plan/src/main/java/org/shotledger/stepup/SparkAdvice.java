package org.shotledger.stepup;

import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.units.UnitFactors;

/** Computes the retard of a shot and sets the habit of the trade beside it. */
final class SparkAdvice {
    private static final double FIFTY_HORSEPOWER = 50 * UnitFactors.HORSEPOWER;
    /** Retard for each fifty horsepower, crank degrees: 1 to 2, common practice, no source. */
    private static final double HABIT_LOW = 1;

    private static final double HABIT_HIGH = 2;
    /** Largest retard that is tried, crank degrees, and the step: our choice. */
    private static final double MOST_RETARD = 25;

    private static final double STEP = 1;

    private SparkAdvice() {}

    static Spark of(Outcome outcome, OperatingPoint on) {
        PointModel model = Evaluate.model(outcome.car(), outcome.setup(), outcome.at());
        OperatingPoint off = model.at(on.rpm(), on.plenumPressure(), Mode.ARMED);
        double fifties = (on.power().brake() - off.power().brake()) / FIFTY_HORSEPOWER;
        return new Spark(
                HABIT_LOW * fifties,
                HABIT_HIGH * fifties,
                computed(outcome, on, off.cylinder().knock()),
                on.cylinder().retard(),
                on.cylinder().peakPressure(),
                on.cylinder().knock() / off.cylinder().knock());
    }

    private static double computed(Outcome outcome, OperatingPoint on, double base) {
        double allowed = outcome.car().limits().peakPressure();
        for (double retard = 0; retard <= MOST_RETARD; retard += STEP) {
            PointModel model =
                    PointModel.of(outcome.car(), outcome.setup().withRetard(retard), outcome.at(), on.bottle());
            OperatingPoint tried =
                    model.at(on.rpm(), on.plenumPressure(), Mode.NITROUS, on.nitrous(), on.nitrousFuel());
            if (tried.cylinder().peakPressure() <= allowed && tried.cylinder().knock() <= base) {
                return retard;
            }
        }
        return Double.NaN;
    }
}
