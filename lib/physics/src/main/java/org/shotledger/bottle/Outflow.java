package org.shotledger.bottle;

import org.shotledger.flow.FeedPath;
import org.shotledger.fluid.FluidState;

/** What is taken out of the bottle at a given state of its outlet. */
@FunctionalInterface
public interface Outflow {
    /** Largest constant flow accepted, kg/s: a bottle is then empty within milliseconds, and the step control still holds. */
    double LARGEST_FLOW = 1000;

    /**
     * Flow out of the bottle.
     *
     * @param time time from the start, s
     * @param outlet state at rest at the siphon's mouth
     * @return mass flow, kg/s, zero or above
     */
    double massFlow(double time, FluidState outlet);

    /** A closed bottle. */
    Outflow NONE = (time, outlet) -> 0;

    /**
     * Nothing is taken.
     *
     * @return a closed bottle, always the same one
     */
    static Outflow none() {
        return NONE;
    }

    /**
     * The same flow whatever the pressure.
     *
     * @param massFlow flow, kg/s
     * @return the outflow
     */
    static Outflow constant(double massFlow) {
        if (!(massFlow >= 0 && massFlow <= LARGEST_FLOW)) {
            throw new IllegalArgumentException(
                    "Bottle: the flow taken is " + massFlow + " kg/s; allowed are 0 to " + LARGEST_FLOW + " kg/s.");
        }
        return (time, outlet) -> massFlow;
    }

    /**
     * What a feed path passes.
     *
     * @param path the feed path
     * @param downstreamPressure absolute pressure behind the jets, Pa
     * @return the outflow
     */
    static Outflow through(FeedPath path, double downstreamPressure) {
        return (time, outlet) -> path.massFlow(outlet, downstreamPressure);
    }

    /**
     * The same for an outlet that mostly carries boiling liquid: its flow is tabulated over temperature and vapour share once, which
     * costs as much as some 60 calls for a range of 15 K. Within 1e-3 of {@link #through} for saturated liquid and 1.2e-2 for liquid with up to 0.2 of
     * vapour, most of it where the choking part changes, for liquid that boils at 2.5 times the pressure behind the jets or more, and
     * colder than 306 K (304 K with vapour in it); other states are not tabulated.
     *
     * @param path the feed path
     * @param downstreamPressure absolute pressure behind the jets, Pa, below the critical pressure by a factor of three
     * @param coldest lowest boiling temperature that will be asked for often, K
     * @param warmest highest, K
     * @return the outflow
     */
    static Outflow tabulated(FeedPath path, double downstreamPressure, double coldest, double warmest) {
        return new TabulatedOutflow(path, downstreamPressure, coldest, warmest);
    }
}
