package org.shotledger.stepup;

import org.shotledger.budget.Budget;
import org.shotledger.budget.Demand;
import org.shotledger.budget.Evaluation;
import org.shotledger.engine.Cycle;

/** Computes the retard of a shot and sets the habit of the trade beside it. */
final class SparkAdvice {
    private static final double FIFTY_HORSEPOWER = 50 * 745.69987158227022;
    private static final double HABIT_LOW = 1;
    private static final double HABIT_HIGH = 2;
    private static final double MOST_RETARD = 25;
    private static final double STEP = 0.5;

    private SparkAdvice() {}

    static Spark of(Budget budget, Evaluation on) {
        Evaluation off = budget.evaluator()
                .at(on.conditions(), on.rpm(), Demand.boost(on.demand().plenumPressure()));
        double crank = on.power().brake() - off.power().brake();
        double fifties = crank / FIFTY_HORSEPOWER;
        double base = off.cylinder().knockIntegral();
        return new Spark(
                HABIT_LOW * fifties,
                HABIT_HIGH * fifties,
                computed(budget, on, base),
                on.cylinder().retard(),
                on.cylinder().peakPressure(),
                on.cylinder().knockIntegral() / base);
    }

    private static double computed(Budget budget, Evaluation on, double base) {
        double allowed = budget.build().limits().peakPressure();
        for (double retard = 0; retard <= MOST_RETARD; retard += STEP) {
            Cycle cycle = budget.evaluator().cycle(on, retard);
            if (cycle.peakPressure() <= allowed && cycle.knockIntegral() <= base) {
                return retard;
            }
        }
        return Double.NaN;
    }
}
