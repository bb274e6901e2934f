package org.shotledger.flow;

/**
 * The stream behind one part of a feed path.
 *
 * @param after name of the part it comes from; "bottle" for the start
 * @param massFlow flow through that part, kg/s
 * @param pressure absolute stagnation pressure, Pa
 * @param temperature temperature, K
 * @param quality vapour mass fraction, NaN in a single phase
 * @param density density, kg/m3
 * @param voidFraction vapour share of the volume, 0 to 1
 */
public record FeedNode(
        String after,
        double massFlow,
        double pressure,
        double temperature,
        double quality,
        double density,
        double voidFraction) {}
