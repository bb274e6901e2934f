package org.shotledger.bottle;

import org.shotledger.flow.FeedPath;
import org.shotledger.fluid.FluidState;

/** What is taken out of the bottle at a given state of its outlet. */
@FunctionalInterface
public interface Draw {
    /**
     * Flow out of the bottle.
     *
     * @param time time from the start, s
     * @param outlet state at rest at the siphon's mouth
     * @return mass flow, kg/s, zero or above
     */
    double massFlow(double time, FluidState outlet);

    /**
     * Nothing is taken.
     *
     * @return a closed bottle
     */
    static Draw none() {
        return (time, outlet) -> 0;
    }

    /**
     * The same flow whatever the pressure.
     *
     * @param massFlow flow, kg/s
     * @return the draw
     */
    static Draw constant(double massFlow) {
        if (!(massFlow >= 0)) {
            throw new IllegalArgumentException(
                    "Bottle: the flow taken is " + massFlow + " kg/s; it must be zero or above.");
        }
        return (time, outlet) -> massFlow;
    }

    /**
     * What a feed path passes.
     *
     * @param path the feed path
     * @param downstreamPressure absolute pressure behind the jets, Pa
     * @return the draw
     */
    static Draw through(FeedPath path, double downstreamPressure) {
        return (time, outlet) -> path.massFlow(outlet, downstreamPressure);
    }
}
