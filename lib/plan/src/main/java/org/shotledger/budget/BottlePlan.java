package org.shotledger.budget;

import java.util.List;

/**
 * What one bottle gives at the chosen jets.
 *
 * @param charge nitrous oxide in the full bottle, kg
 * @param startTemperature bottle temperature at the start of each pass, K
 * @param startPressure bottle pressure then, Pa absolute
 * @param seconds time from the first opening to the end of liquid, without a pause, s
 * @param liquidUsed nitrous oxide delivered as liquid in that time, kg
 * @param passes full passes by the wish's time under nitrous, reheated between
 * @param history state over one continuous emptying, in time order
 */
public record BottlePlan(
        double charge,
        double startTemperature,
        double startPressure,
        double seconds,
        double liquidUsed,
        int passes,
        List<Moment> history) {

    /** Copies the list. */
    public BottlePlan {
        history = List.copyOf(history);
    }

    /**
     * One moment of the emptying.
     *
     * @param time since opening, s
     * @param temperature bottle temperature, K
     * @param pressure bottle pressure, Pa absolute
     * @param liquid liquid left, kg
     * @param massFlow nitrous oxide flow, kg/s
     * @param lambda mixture at that moment at the power peak
     * @param wheelPower wheel power at that moment at the power peak, W
     */
    public record Moment(
            double time,
            double temperature,
            double pressure,
            double liquid,
            double massFlow,
            double lambda,
            double wheelPower) {}
}
