package org.shotledger.spread;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * How one relative quantity scatters about nominal: hole diameter, or share of a flow.
 *
 * @param halfWidth the tolerance, as a fraction of nominal, 0 to below 0.5
 * @param shape how the values lie within it
 */
public record Scatter(double halfWidth, Shape shape) {

    /** How values lie within their tolerance. */
    public enum Shape {
        /** Every value within the tolerance equally likely: what to assume when nothing else is known (JCGM 101, 6.4.2). */
        UNIFORM,
        /** A normal distribution with half the tolerance as standard deviation, cut at twice the tolerance. */
        NORMAL
    }

    /** Standard deviations at which the normal distribution is cut: a part further off would have been sorted out. */
    private static final double CUT = 4;

    private static final NormalDistribution STANDARD = new NormalDistribution();
    private static final double INSIDE = 1 - 2 * STANDARD.cumulativeProbability(-CUT);

    public Scatter {
        if (!(halfWidth >= 0 && halfWidth < 0.5)) {
            throw new IllegalArgumentException(
                    "A tolerance is " + halfWidth + " of nominal; allowed is 0 to below 0.5.");
        }
    }

    /**
     * Equally likely values.
     *
     * @param halfWidth tolerance as a fraction of nominal
     * @return the scatter
     */
    public static Scatter uniform(double halfWidth) {
        return new Scatter(halfWidth, Shape.UNIFORM);
    }

    /**
     * Normally distributed values.
     *
     * @param halfWidth tolerance as a fraction of nominal, two standard deviations
     * @return the scatter
     */
    public static Scatter normal(double halfWidth) {
        return new Scatter(halfWidth, Shape.NORMAL);
    }

    /**
     * The furthest any value lies from nominal.
     *
     * @return fraction of nominal
     */
    public double reach() {
        return shape == Shape.UNIFORM ? halfWidth : CUT / 2 * halfWidth;
    }

    /**
     * Probability that a value lies at most so far above nominal.
     *
     * @param deviation fraction of nominal
     * @return probability, 0 to 1
     */
    public double probability(double deviation) {
        if (halfWidth == 0) {
            return deviation >= 0 ? 1 : 0;
        }
        double z = Math.min(Math.max(deviation / reach(), -1), 1);
        return shape == Shape.UNIFORM
                ? (z + 1) / 2
                : (STANDARD.cumulativeProbability(CUT * z) - STANDARD.cumulativeProbability(-CUT)) / INSIDE;
    }

    /**
     * The deviation that a share of all values does not exceed.
     *
     * @param probability 0 to 1
     * @return fraction of nominal
     */
    public double quantile(double probability) {
        if (shape == Shape.UNIFORM) {
            return halfWidth * (2 * probability - 1);
        }
        double p = STANDARD.cumulativeProbability(-CUT) + INSIDE * probability;
        return halfWidth / 2 * STANDARD.inverseCumulativeProbability(p);
    }
}
