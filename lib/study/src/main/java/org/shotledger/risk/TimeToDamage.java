package org.shotledger.risk;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;

/**
 * How long an engine bears a broken limit. There is no source for such times; they are habits of the trade, taken short, and can
 * be replaced.
 *
 * @param seconds time by the limit's key, s; a limit that is not listed does not hurt the engine by itself
 * @param overload share by which torque or peak pressure may exceed its limit before parts break in the next cycle
 * @param unmapped time where the models have no answer, as beyond the compressor map, s
 */
public record TimeToDamage(Map<String, Double> seconds, double overload, double unmapped) {
    /**
     * Common practice, no source: a builder's limit on pressure or torque holds a reserve of a tenth for a second and none beyond;
     * a lean mixture under nitrous burns a piston in a few tenths of a second, and hard knock breaks ring lands as soon; a rich one misfires for seconds before it washes a
     * bore; an overspeeding or surging compressor stands half a second.
     */
    public static final TimeToDamage USUAL = new TimeToDamage(
            Map.of(
                    "peak-pressure", 1.0,
                    "crank-torque", 1.0,
                    "lambda-lean", 0.3,
                    "knock", 0.5,
                    "turbo-speed", 0.5,
                    "compressor-surge", 0.5,
                    "lambda-rich", 5.0),
            0.1,
            0.5);

    private static final Set<String> LOADS = Set.of("peak-pressure", "crank-torque");

    public TimeToDamage {
        seconds = Map.copyOf(seconds);
    }

    /**
     * The broken limit that the engine bears the shortest.
     *
     * @param outcome an outcome
     * @return the limit, or empty when none that hurts is broken
     */
    public Optional<Limit> harmful(FaultOutcome outcome) {
        return hurting(outcome).min(Comparator.comparingDouble(this::of).thenComparingDouble(Limit::relativeMargin));
    }

    /**
     * Time the engine bears a broken limit.
     *
     * @param limit the limit
     * @return s; infinite when it does not hurt by itself
     */
    public double of(Limit limit) {
        if (LOADS.contains(limit.key()) && -limit.relativeMargin() > overload) {
            return 0;
        }
        return seconds.getOrDefault(limit.key(), Double.POSITIVE_INFINITY);
    }

    /** The different times that count in an outcome. */
    double[] times(FaultOutcome outcome) {
        DoubleStream ofLimits = hurting(outcome).mapToDouble(this::of);
        DoubleStream ofGaps = outcome.refusal().isEmpty() ? DoubleStream.empty() : DoubleStream.of(unmapped);
        return DoubleStream.concat(ofLimits, ofGaps).distinct().toArray();
    }

    /** Whether something is wrong that the engine bears no longer than a time. */
    boolean hurtsWithin(FaultOutcome outcome, double time) {
        return Arrays.stream(times(outcome)).anyMatch(t -> t <= time);
    }

    private Stream<Limit> hurting(FaultOutcome outcome) {
        return outcome.limits().all().stream()
                .filter(l -> l.verdict() == Verdict.BROKEN && seconds.containsKey(l.key()));
    }
}
