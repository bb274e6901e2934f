package org.shotledger.budget;

import org.shotledger.build.Build;
import org.shotledger.flow.JetFlow;

/**
 * What a ledger is written about: the operating point of most power of one plan.
 *
 * @param build the build
 * @param wish what was asked
 * @param evaluator the calibrated models
 * @param peak the operating point of most power
 * @param off the same point with the nitrous off
 * @param bottle what one bottle gives
 */
record LedgerSubject(Build build, Wish wish, Evaluator evaluator, Evaluation peak, Evaluation off, BottlePlan bottle) {

    static LedgerSubject of(Build build, Wish wish, Evaluator evaluator, Evaluation peak, BottlePlan bottle) {
        Evaluation off = evaluator.at(
                peak.conditions(), peak.rpm(), Demand.boost(peak.demand().plenumPressure()));
        return new LedgerSubject(build, wish, evaluator, peak, off, bottle);
    }

    /** Relative error the flow model expects of itself. */
    double nitrousError() {
        return peak.nitrous().jets().stream()
                .mapToDouble(JetFlow::expectedError)
                .max()
                .orElse(Double.NaN);
    }

    /** Wheel power that the nitrous adds, W. */
    double added() {
        return peak.wheelPower() - off.wheelPower();
    }

    /** The base pull carries the power without nitrous, the flow model what nitrous adds; the two are independent, W. */
    double wheelUncertainty() {
        double base = build.basePull().uncertainty() / build.basePull().wheelPower() * off.wheelPower();
        return Math.hypot(base, nitrousError() * added());
    }
}
