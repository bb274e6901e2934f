package org.shotledger.confidence;

/**
 * What one unknown does to the wheel power.
 *
 * @param unknown the unknown
 * @param powerAtLow wheel power with it at its 5 % quantile and all others in the middle, W
 * @param powerAtHigh the same at its 95 % quantile, W
 * @param first share of the variance that goes when it is known
 * @param total share that stays when all others are known
 * @param gain by how much the standard uncertainty of the power shrinks when that of the unknown is halved, W; from the first
 *     order, so the least it can be
 */
public record Influence(
        Unknown unknown, double powerAtLow, double powerAtHigh, double first, double total, double gain) {

    /**
     * What measuring it is worth.
     *
     * @return {@link #gain} over the effort
     */
    public double gainPerEffort() {
        return gain / unknown.effort();
    }
}
