package org.shotledger.plan;

import org.shotledger.limits.Verdict;
import org.shotledger.setup.Setup;

/**
 * One setup that was weighed.
 *
 * @param setup the setup, its jets between the rungs of the ladder
 * @param gaugePressure boost held where nothing takes it back, Pa above ambient
 * @param wheelPower power at the wheels in the case of the target, W
 * @param nitrousPower what the nitrous adds of that, W
 * @param nitrousFlow nitrous oxide through all nozzles, kg/s
 * @param leastMargin smallest relative margin over all cases, at some engine speeds only
 * @param firstLimit the limit with that margin, in words
 * @param verdict the verdict by that margin
 */
public record Alternative(
        Setup setup,
        double gaugePressure,
        double wheelPower,
        double nitrousPower,
        double nitrousFlow,
        double leastMargin,
        String firstLimit,
        Verdict verdict) {}
