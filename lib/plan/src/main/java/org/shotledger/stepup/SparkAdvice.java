package org.shotledger.stepup;

import org.shotledger.engine.Cycle;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointModel;

/** Computes the retard of a shot and sets the habit of the trade beside it. */
final class SparkAdvice {
    private static final double FIFTY_HORSEPOWER = 50 * 745.69987158227022;
    private static final double HABIT_LOW = 1;
    private static final double HABIT_HIGH = 2;
    private static final double MOST_RETARD = 25;
    private static final double STEP = 0.5;

    private SparkAdvice() {}

    static Spark of(PointModel model, OperatingPoint on, double allowedPressure) {
        OperatingPoint off = model.at(on.rpm(), on.plenumPressure(), Mode.ARMED);
        double fifties = (on.power().brake() - off.power().brake()) / FIFTY_HORSEPOWER;
        double base = off.cylinder().knockIntegral();
        return new Spark(
                HABIT_LOW * fifties,
                HABIT_HIGH * fifties,
                computed(model, on, base, allowedPressure),
                on.cylinder().retard(),
                on.cylinder().peakPressure(),
                on.cylinder().knockIntegral() / base);
    }

    private static double computed(PointModel model, OperatingPoint on, double base, double allowed) {
        for (double retard = 0; retard <= MOST_RETARD; retard += STEP) {
            Cycle cycle = model.cycle(on, retard);
            if (cycle.peakPressure() <= allowed && cycle.knockIntegral() <= base) {
                return retard;
            }
        }
        return Double.NaN;
    }
}
