package org.shotledger.fluid;

/**
 * Steps of Newton's method in temperature for a property that rises with it, kept inside a shrinking bracket.
 *
 * <p>The ends of the equation's range are tried only when a step points beyond them. A step that is not clearly shorter
 * than the one before is replaced by halving, which also gets a search through the kink at the edge of the dome.
 */
final class TemperatureSearch {

    private static final double CLOSE = 1e-14;
    private static final double NOISE = 1e-12;

    private double lo;
    private double hi;
    private boolean loSeen;
    private boolean hiSeen;
    private double lastStep;
    private boolean beyond;

    void between(double low, boolean lowIsBound, double high, boolean highIsBound) {
        lo = low;
        hi = high;
        loSeen = lowIsBound;
        hiSeen = highIsBound;
        lastStep = Double.POSITIVE_INFINITY;
        beyond = false;
    }

    double clamp(double t) {
        return Math.min(Math.max(t, lo), hi);
    }

    /**
     * The next temperature to try.
     *
     * @param t temperature tried, K
     * @param miss property found there less the one wanted
     * @param slope rise of the property with temperature
     * @param rounding size of a miss that is rounding
     * @return next temperature, K; t itself when done
     */
    double next(double t, double miss, double slope, double rounding) {
        boolean end = miss > 0 ? !loSeen && t <= lo : !hiSeen && t >= hi;
        if (end) {
            beyond = Math.abs(miss) > rounding;
            return t;
        }
        if (miss > 0) {
            hi = t;
            hiSeen = true;
        } else {
            lo = t;
            loSeen = true;
        }
        double step = -miss / slope;
        double next = t + step;
        boolean slow = Math.abs(step) > 0.5 * lastStep && Math.abs(step) > NOISE * t;
        boolean newton = !slow && (next > lo || !loSeen) && (next < hi || !hiSeen);
        if (newton) {
            lastStep = Math.abs(step);
            next = clamp(next);
        } else if (Math.abs(step) <= CLOSE * t) {
            return t;
        } else {
            // the first miss beyond an end that was never tried goes to that end
            boolean tryEnd = !slow || !loSeen || !hiSeen;
            next = tryEnd && !hiSeen && next >= hi ? hi : tryEnd && !loSeen && next <= lo ? lo : 0.5 * (lo + hi);
            lastStep = hi - lo;
        }
        return Math.abs(next - t) <= CLOSE * t ? t : next;
    }

    /** Whether the property wanted lies beyond the end just tried. */
    boolean beyond() {
        return beyond;
    }

    boolean inside(double t, double slack) {
        return t >= lo * (1 - slack) && t <= hi * (1 + slack);
    }
}
