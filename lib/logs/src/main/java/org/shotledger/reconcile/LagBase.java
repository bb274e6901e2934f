package org.shotledger.reconcile;

/** The expected lambda between the engine speeds at which it was worked out. */
final class LagBase {
    private LagBase() {}

    /** Straight between points of one state of the nitrous; across a change the nearer state in time, as a step. */
    static double at(double[] times, double[] values, double t, RunGrid grid) {
        int i = 0;
        while (i + 2 < times.length && times[i + 1] <= t) {
            i++;
        }
        boolean onBefore = grid.on(i).isPresent();
        boolean onAfter = grid.on(i + 1).isPresent();
        if (onBefore == onAfter) {
            double share = (t - times[i]) / (times[i + 1] - times[i]);
            return (1 - share) * values[i] + share * values[i + 1];
        }
        return grid.onAt(t) == onBefore ? values[i] : values[i + 1];
    }
}
