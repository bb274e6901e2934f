package org.shotledger.risk;

import java.util.Optional;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Limits;
import org.shotledger.limits.Verdict;

/**
 * What becomes of the engine in a scenario over the examined speeds.
 *
 * @param peak the operating point of most power, all cylinders together; empty where the models have an answer at no speed
 * @param lambda mixture of all cylinders together at that point, what a sensor in the collector reads
 * @param leanest lambda of the leanest cylinder over all speeds
 * @param richest lambda of the richest cylinder over all speeds
 * @param wheelPower most wheel power over the speeds, W
 * @param peakPressure highest cylinder pressure over speeds and cylinders, Pa absolute
 * @param crankTorque highest torque at the crankshaft, N m
 * @param knockIntegral highest end-gas integral of any cylinder; to be compared only with that of the plan
 * @param limits every limit, each where it is closest; of the mixture and the pressure, in the worst cylinder
 * @param refusal why the models have no answer at one speed or more, which then count in nothing else; empty when they have one
 *     at every speed
 */
public record FaultOutcome(
        Optional<OperatingPoint> peak,
        double lambda,
        double leanest,
        double richest,
        double wheelPower,
        double peakPressure,
        double crankTorque,
        double knockIntegral,
        Limits limits,
        String refusal) {

    static FaultOutcome refused(String reason) {
        double none = Double.NaN;
        return new FaultOutcome(
                Optional.empty(), none, none, none, none, none, none, none, new Limits(java.util.List.of()), reason);
    }

    /**
     * Tells whether the models have an answer at any speed.
     *
     * @return false where they cover none
     */
    public boolean known() {
        return peak.isPresent();
    }

    /**
     * Tells whether every limit is kept at every speed.
     *
     * @return true when no limit is broken and the models have an answer everywhere
     */
    public boolean safe() {
        return verdict() != Verdict.BROKEN;
    }

    /**
     * The verdict; without an answer nothing is allowed.
     *
     * @return the worst verdict of all limits, broken where the models have no answer at some speed
     */
    public Verdict verdict() {
        return refusal.isEmpty() ? limits.verdict() : Verdict.BROKEN;
    }

    /**
     * The broken limit, or the closest one.
     *
     * @return the limit with the smallest relative margin; empty when none is broken but the models have no answer at some speed
     */
    public Optional<Limit> first() {
        return limits.first().filter(l -> refusal.isEmpty() || l.verdict() == Verdict.BROKEN);
    }

    /**
     * The smallest relative margin of all limits.
     *
     * @return negative when one is broken; negative infinity when the models have no answer at some speed
     */
    public double minMargin() {
        return refusal.isEmpty() ? limits.leastMargin() : Double.NEGATIVE_INFINITY;
    }

    /**
     * The first limit in words.
     *
     * @return its name, or why there is no answer
     */
    public String firstWords() {
        return first().map(Limit::name).orElse(refusal);
    }
}
