package org.shotledger.bottle;

/**
 * Bottle pressures between which the jets are meant to work.
 *
 * @param low lowest, Pa absolute, zero or above
 * @param high highest, Pa absolute, above the lowest
 */
public record WorkingBand(double low, double high) {
    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException when they do not rise
     */
    public WorkingBand {
        if (!(low >= 0 && low < high)) {
            throw new IllegalArgumentException("Working band: the lowest pressure is " + low + " Pa and the highest "
                    + high + " Pa; the first must be zero or above and below the second.");
        }
    }
}
