package org.shotledger.plan;

import java.util.Comparator;
import java.util.Optional;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.limits.Limit;
import org.shotledger.setup.Setup;

/** The spark with nitrous: the later of the builder's habit and what the knock index asks for, in half degrees. */
final class Spark {
    /** Step of the spark, deg: our choice, what a controller's table resolves. */
    private static final double STEP = 0.5;
    /** Latest retard that is proposed, deg: our choice. */
    private static final double LATEST = 20;
    /** Knock index that is aimed at: less than the base pull's by what is called tight. */
    private static final double AIM = 1 - Limit.CAUTION;

    private Spark() {}

    /** Retard at which the strongest knock of the plan is as weak as in the base pull; the latest there is where none is. */
    static double retard(Plan plan) {
        Setup setup = plan.setup();
        double retard = setup.retard();
        Optional<Worst> worst = plan.outcomes().stream()
                .flatMap(outcome -> outcome.withNitrous().stream().map(point -> new Worst(outcome, point)))
                .max(Comparator.comparingDouble(w -> w.point.cylinder().knock()));
        if (worst.isEmpty() || worst.get().point.cylinder().knock() <= AIM) {
            return retard;
        }
        while (retard < LATEST && knock(plan, worst.get(), retard) > AIM) {
            retard += STEP;
        }
        return retard;
    }

    private record Worst(Outcome outcome, OperatingPoint point) {}

    private static double knock(Plan plan, Worst worst, double retard) {
        try {
            return Evaluate.model(plan.car(), plan.setup().withRetard(retard), worst.outcome.at())
                    .at(worst.point.rpm(), worst.point.plenumPressure(), worst.point.mode())
                    .cylinder()
                    .knock();
        } catch (NoAnswerException none) {
            return Double.POSITIVE_INFINITY;
        }
    }
}
