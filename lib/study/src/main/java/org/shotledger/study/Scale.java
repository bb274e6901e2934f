package org.shotledger.study;

/**
 * A range stretched to -1 to 1; a range of no width becomes 0.
 *
 * @param low its lower end
 * @param high its upper end
 */
record Scale(double low, double high) {
    double to(double value) {
        return high > low ? (2 * value - low - high) / (high - low) : 0;
    }

    double from(double x) {
        return 0.5 * (low + high + x * (high - low));
    }

    /** By how much the stretched value grows with the value. */
    double slope() {
        return high > low ? 2 / (high - low) : 0;
    }
}
