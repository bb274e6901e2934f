package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * Share of the ideal fuel-air cycle's work that an engine indicates with its own spark: what heat to the walls, burning that
 * takes time, valves that open early and charge that does not burn leave of it. One number, found on the base pull with the
 * fuel, air and mixture of that pull, and carried over to every other point. Heywood (chapter 5) gives about 0.8 to 0.9
 * for engines at best timing; the carried-over number is good to a few per cent over speed and load, which {@link Cylinder}
 * shows.
 *
 * @param value indicated work over the cycle's work, 0.4 to 1
 */
public record EngineFactor(double value) {
    /** Bounds: below it a figure of the pull is wrong, above it the engine would beat the ideal cycle. */
    private static final double LEAST = 0.4;

    private static final double MOST = 1.0;

    public EngineFactor {
        Require.within("share of the fuel-air cycle's work", value, LEAST, MOST, "");
    }
}
