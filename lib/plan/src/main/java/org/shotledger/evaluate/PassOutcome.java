package org.shotledger.evaluate;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.shotledger.bottle.PassEnd;

/**
 * One pass over its seconds, and what one filling of the bottle gives.
 *
 * @param number which pass of the day, from 1
 * @param moments from opening to the end of the pass, in time order
 * @param seconds time with liquid and pressure in the band, s
 * @param massUsed nitrous oxide used in it, kg
 * @param end why it ends
 * @param wholePasses full passes from one filling, counted to one more than asked for
 * @param given the same with the share of the one that was cut short
 */
public record PassOutcome(
        int number, List<Moment> moments, double seconds, double massUsed, PassEnd end, int wholePasses, double given) {

    public PassOutcome {
        moments = List.copyOf(moments);
    }

    /**
     * A figure at a time, on the straight line between two moments.
     *
     * @param pass moments in time order
     * @param seconds since opening, s
     * @param figure which
     * @return the figure; NaN before the first and after the last moment
     */
    public static double at(List<Moment> pass, double seconds, ToDoubleFunction<Moment> figure) {
        for (int i = 1; i < pass.size(); i++) {
            Moment a = pass.get(i - 1);
            Moment b = pass.get(i);
            if (seconds >= a.time && seconds <= b.time) {
                double share = (seconds - a.time) / (b.time - a.time);
                double from = figure.applyAsDouble(a);
                return from + share * (figure.applyAsDouble(b) - from);
            }
        }
        return Double.NaN;
    }

    /**
     * One moment.
     *
     * @param time since opening, s
     * @param temperature bottle temperature, K
     * @param pressure bottle pressure, Pa absolute
     * @param liquid liquid left, kg
     * @param massFlow nitrous oxide flow, kg/s
     * @param lambda mixture at that moment at the speed of most power
     * @param wheelPower power at the wheels at that moment at the speed of most power, W
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
