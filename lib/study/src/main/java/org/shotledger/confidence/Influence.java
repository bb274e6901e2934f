package org.shotledger.confidence;

/**
 * What one unknown does to a plan.
 *
 * @param unknown the unknown
 * @param powerAtLow wheel power with it at its 5 % quantile and all others in the middle, W
 * @param powerAtHigh the same at its 95 % quantile, W
 * @param power its share of the variance of the power
 * @param decisive its share of the variance of the decisive margin: the least of all margins and of the power beyond that asked
 * @param gain by how much the standard deviation of the decisive margin shrinks when that of the unknown is halved; from the first
 *     order, so the least it can be
 */
public record Influence(
        Unknown unknown, double powerAtLow, double powerAtHigh, Share power, Share decisive, double gain) {

    /**
     * Share of a variance.
     *
     * @param first share that goes when the unknown is known
     * @param total share that stays when all others are known
     */
    public record Share(double first, double total) {}

    /**
     * What measuring it is worth.
     *
     * @return {@link #gain} over the effort
     */
    public double gainPerEffort() {
        return gain / unknown.effort();
    }
}
