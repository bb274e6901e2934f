package org.shotledger.evaluate;

import java.util.List;
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

    /** Copies the list. */
    public PassOutcome {
        moments = List.copyOf(moments);
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
