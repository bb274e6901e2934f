package org.shotledger.study;

import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Limits;

/**
 * One combination with everything that is known of it, worked out by the exact evaluation.
 *
 * @param combination the combination
 * @param outcome what it does
 * @param peak the operating point of most power
 * @param limits every limit, each at the speed where it is closest
 * @param passSeconds time under nitrous in one pass, s
 */
public record Candidate(Combination combination, Figures outcome, Evaluation peak, Limits limits, double passSeconds) {

    /**
     * Nitrous oxide for one pass at the flow of the peak point; a bottle that cools gives a little less.
     *
     * @return kg
     */
    public double nitrousPerPass() {
        return outcome.nitrousFlow() * passSeconds;
    }
}
