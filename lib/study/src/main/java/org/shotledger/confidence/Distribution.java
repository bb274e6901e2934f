package org.shotledger.confidence;

import org.hipparchus.distribution.continuous.TriangularDistribution;
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
     * Limits and a most likely value are known (6.4.5 for the symmetric one).
     *
     * @param low lower limit
     * @param mode most likely value, between the limits
     * @param high upper limit
     * @return the triangular distribution
     */
    static Distribution triangular(double low, double mode, double high) {
        positive("width of the triangular distribution", high - low);
        if (!(mode >= low && mode <= high)) {
            throw new IllegalArgumentException("The most likely value of the triangular distribution is " + mode
                    + "; it must lie between its limits " + low + " and " + high + ".");
        }
        return new TriangularDistribution(low, mode, high)::inverseCumulativeProbability;
    }

    /**
     * A quantity that is known within a factor.
     *
     * @param median its median, above zero
     * @param logDeviation standard deviation of its natural logarithm, above zero
     * @return the lognormal distribution
     */
    static Distribution lognormal(double median, double logDeviation) {
        positive("median of the lognormal distribution", median);
        positive("standard deviation of the logarithm", logDeviation);
        return p -> median * Math.exp(logDeviation * NormalQuantile.of(p));
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

    /**
     * The same distribution given that the value lies between two of its quantiles.
     *
     * @param lowProbability probability cut off below, 0 to below 1
     * @param highProbability probability up to which it is kept, above the first, at most 1
     * @return the truncated distribution
     */
    default Distribution truncated(double lowProbability, double highProbability) {
        if (!(lowProbability >= 0 && highProbability <= 1 && lowProbability < highProbability)) {
            throw new IllegalArgumentException("The distribution is truncated from probability " + lowProbability
                    + " to " + highProbability + "; give 0 or more and then a larger one, at most 1.");
        }
        return p -> quantile(lowProbability + p * (highProbability - lowProbability));
    }

    private static void positive(String what, double value) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(
                    "The " + what + " is " + value + "; it must be a finite number above zero.");
        }
    }
}
