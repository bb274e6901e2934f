package org.shotledger.confidence;

import org.shotledger.flow.FlowBand;

/** A distribution of one quantity, given by its quantile function; JCGM 101:2008, 6.4, says which one suits what is known. */
@FunctionalInterface
public interface Distribution {
    /**
     * The value not exceeded with a probability.
     *
     * @param probability above 0 and below 1
     * @return the value, in the quantity's own unit
     */
    double quantile(double probability);

    /**
     * Best estimate and standard uncertainty are known (JCGM 101:2008, 6.4.7).
     *
     * @param mean best estimate
     * @param deviation standard uncertainty, above zero
     * @return the Gaussian distribution
     */
    static Distribution normal(double mean, double deviation) {
        positive("standard deviation of the normal distribution", deviation);
        return p -> mean + deviation * NormalQuantile.of(p);
    }

    /**
     * Only limits are known (6.4.2).
     *
     * @param low lower limit
     * @param high upper limit, above it
     * @return the rectangular distribution
     */
    static Distribution uniform(double low, double high) {
        positive("width of the uniform distribution", high - low);
        return p -> low + p * (high - low);
    }

    /**
     * A quantity known by a best estimate and its 90 % band, even in the logarithm on either side.
     *
     * @param band low, best and high; the best is the median
     * @return the distribution
     */
    static Distribution band(FlowBand band) {
        positive("width of the band", band.high() - band.low());
        double end = NormalQuantile.of(0.95);
        return p -> band.at(NormalQuantile.of(p) / end);
    }

    private static void positive(String what, double value) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(
                    "The " + what + " is " + value + "; it must be a finite number above zero.");
        }
    }
}
