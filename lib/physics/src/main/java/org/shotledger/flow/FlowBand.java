package org.shotledger.flow;

/**
 * A flow or a coefficient with the band in which the true one lies nine times out of ten.
 *
 * @param low lower end, above 0, at most the best
 * @param best best estimate
 * @param high upper end, at least the best
 */
public record FlowBand(double low, double best, double high) {
    /** Half a 90 % interval of the normal distribution in standard deviations. */
    static final double NINETY = 1.6449;

    /** A value that is known exactly, relative to itself. */
    public static final FlowBand EXACT = new FlowBand(1, 1, 1);

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException when the three are not in order or not above zero
     */
    public FlowBand {
        if (!(low > 0 && low <= best && best <= high && high < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("A band goes from " + low + " over " + best + " to " + high
                    + "; give three finite numbers above zero in rising order.");
        }
    }

    /**
     * A band that is even in the logarithm.
     *
     * @param best best estimate, above 0
     * @param logarithmicDeviation one standard deviation of the natural logarithm, zero or above
     * @return best times and over exp(1.645 deviations)
     */
    public static FlowBand around(double best, double logarithmicDeviation) {
        double half = Math.exp(NINETY * logarithmicDeviation);
        return new FlowBand(best / half, best, best * half);
    }

    /**
     * A value inside the band.
     *
     * @param place -1 for the lower end, 0 for the best, 1 for the upper end; even in the logarithm on either side; beyond
     *     the ends it goes on
     * @return the value
     */
    public double at(double place) {
        return best * (place < 0 ? Math.pow(best / low, place) : Math.pow(high / best, place));
    }

    /**
     * The band of a scaled value.
     *
     * @param factor above 0
     * @return all three multiplied
     */
    public FlowBand times(double factor) {
        return new FlowBand(factor * low, factor * best, factor * high);
    }

    /**
     * One standard deviation of the natural logarithm, from the whole width.
     *
     * @return ln(high / low) / (2 times 1.645)
     */
    public double logarithmicDeviation() {
        return Math.log(high / low) / (2 * NINETY);
    }

    /**
     * Tells whether a value lies inside.
     *
     * @param value any number
     * @return true from low to high
     */
    public boolean holds(double value) {
        return value >= low && value <= high;
    }
}
