package org.shotledger.confidence;

/** Points of the unit cube, one after the other. */
@FunctionalInterface
public interface Points {
    /**
     * Writes the next point.
     *
     * @param into its coordinates, each above 0 and below 1
     */
    void next(double[] into);
}
