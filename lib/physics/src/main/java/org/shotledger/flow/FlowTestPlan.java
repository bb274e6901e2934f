package org.shotledger.flow;

import java.util.Comparator;
import java.util.List;

/**
 * What a flow test costs and is worth, before it is made.
 *
 * @param seconds discharge needed, s
 * @param mass what goes through meanwhile, kg
 */
public record FlowTestPlan(double seconds, double mass) {
    /**
     * The discharge after which a factor is known well enough.
     *
     * <p>The test's own deviation must be {@code e = 1/sqrt(1/w^2 - 1/s^2)} for a wanted w from a prior s, and a discharge of t
     * seconds at flow m has {@code e^2 = ((M/m)^2 + T^2)/t^2 + z^2} with M and T the errors of mass and time, z that of the state.
     *
     * @param before what is known of the factor
     * @param wanted wanted standard deviation of its logarithm, above 0
     * @param flow expected flow, kg/s, above 0
     * @param massDeviation one standard deviation of the mass gone, kg; two weighings count with sqrt(2) times the scale's error
     * @param secondsDeviation one standard deviation of the time, s
     * @param stateDeviation one standard deviation of the logarithm from what is not known of the state
     * @return seconds and kilograms; zero when it is known well enough already
     * @throws IllegalArgumentException when no discharge is long enough because the state is not known so well
     */
    public static FlowTestPlan of(
            FlowFactor before,
            double wanted,
            double flow,
            double massDeviation,
            double secondsDeviation,
            double stateDeviation) {
        Checks.positive("Flow test", "wanted deviation", wanted, "");
        Checks.positive("Flow test", "expected flow", flow, "kg/s");
        if (before.deviation() <= wanted) {
            return new FlowTestPlan(0, 0);
        }
        double own = 1 / (1 / (wanted * wanted) - 1 / (before.deviation() * before.deviation()));
        double left = own - stateDeviation * stateDeviation;
        if (!(left > 0)) {
            throw new IllegalArgumentException("The wanted deviation of " + wanted
                    + " cannot be had by any discharge: the state before the jets is known to " + stateDeviation
                    + " only; measure pressure or temperature better or ask for less.");
        }
        double seconds = Math.hypot(massDeviation / flow, secondsDeviation) / Math.sqrt(left);
        return new FlowTestPlan(seconds, flow * seconds);
    }

    /**
     * A test that could be made.
     *
     * @param name what is tested
     * @param sensitivity change of the outcome for a change of 1 of the logarithm of this factor, unit of the outcome
     * @param before what is known of the factor
     * @param testDeviation one standard deviation of the logarithm that the test would have; infinite for a test that is not worth
     *     making
     */
    public record Candidate(String name, double sensitivity, FlowFactor before, double testDeviation) {}

    /**
     * What a test does to the outcome.
     *
     * @param name what is tested
     * @param before one standard deviation of the outcome from all candidates before the test, unit of the outcome
     * @param after the same after this one test
     */
    public record Gain(String name, double before, double after) {}

    /**
     * Which test first.
     *
     * @param candidates the tests that could be made
     * @return one entry a test, the one that narrows the outcome most first
     */
    public static List<Gain> rank(List<Candidate> candidates) {
        double variance = candidates.stream()
                .mapToDouble(c -> square(c.sensitivity() * c.before().deviation()))
                .sum();
        return candidates.stream()
                .map(c -> gain(c, variance))
                .sorted(Comparator.comparingDouble(Gain::after))
                .toList();
    }

    private static Gain gain(Candidate c, double variance) {
        double prior = c.before().deviation();
        double test = 1 / (square(1 / prior) + square(1 / c.testDeviation()));
        double left = Math.sqrt(test + square(FlowFactor.OTHER_STATES));
        double change = square(c.sensitivity()) * (square(prior) - square(Math.min(prior, left)));
        return new Gain(c.name(), Math.sqrt(variance), Math.sqrt(variance - change));
    }

    private static double square(double x) {
        return x * x;
    }
}
