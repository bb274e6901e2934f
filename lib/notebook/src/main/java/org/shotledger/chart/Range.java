package org.shotledger.chart;

/** The least and the greatest of the values an axis must show. */
final class Range {
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    void include(double... values) {
        for (double value : values) {
            if (Double.isFinite(value)) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
    }

    Range copy() {
        Range copy = new Range();
        copy.low = low;
        copy.high = high;
        return copy;
    }

    /** Lower end of the axis; zero stays zero. */
    double from(double room) {
        return low == 0 ? 0 : low - room * span();
    }

    /** Upper end of the axis. */
    double to(double room) {
        return high + room * span();
    }

    private double span() {
        return high > low ? high - low : Math.max(Math.abs(low), 1);
    }
}
