package org.shotledger.causes;

/**
 * One way in which a cause can act.
 *
 * @param cause the cause
 * @param band standard deviation of its size when nothing is wrong: what parts, models and gauges may differ by
 * @param fault standard deviation of its size when this is what is wrong: our choice
 * @param low lowest size
 * @param high highest size
 * @param odds how often it is what is wrong, against the commonest: our choice
 * @param change the run with it
 */
record Hypothesis(Cause cause, double band, double fault, double low, double high, double odds, Change change) {
    /** The run with a cause of a size. */
    @FunctionalInterface
    interface Change {
        Run of(Run run, double size);
    }

    /**
     * Sizes over the fault's deviation at which the run is worked out before the fit asks for more: what goes one way only is far from
     * straight.
     */
    private static final double[] STEPS = {0.6, 2.6};

    private static final double[] ONE_WAY = {0.3, 0.7, 1.1, 1.5, 2.6};

    /** Whether it goes one way only. */
    boolean oneSided() {
        return low >= 0 || high <= 0;
    }

    /** The sizes at which the run is worked out, rising, zero among them. */
    double[] sizes() {
        java.util.TreeSet<Double> all = new java.util.TreeSet<>();
        all.add(0.0);
        for (double step : oneSided() ? ONE_WAY : STEPS) {
            all.add(Math.max(low, -step * fault));
            all.add(Math.min(high, step * fault));
        }
        all.removeIf(size -> size < low || size > high);
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
