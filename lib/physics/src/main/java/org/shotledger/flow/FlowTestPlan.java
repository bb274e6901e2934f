package org.shotledger.flow;

/**
 * What a flow test costs, before it is made.
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
}
