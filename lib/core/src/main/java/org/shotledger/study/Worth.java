package org.shotledger.study;

/** A quick look whether a combination could be among the best or on the front. */
final class Worth {
    private final Tally tally;
    private final double wanted;
    private final Objective rankBy;
    private final Objective[] objectives;
    private final double[] values;

    Worth(Tally tally, SweepTask task) {
        this.tally = tally;
        this.wanted = task.wanted();
        this.rankBy = task.rankBy();
        this.objectives = task.objectives().toArray(Objective[]::new);
        this.values = new double[objectives.length];
    }

    boolean keeping(double power, double margin, double nitrous, double forgiveness, double peak) {
        if (power >= wanted
                && margin >= Tally.IN_HAND
                && tally.best.wants(value(rankBy, power, margin, nitrous, forgiveness, peak), forgiveness)) {
            return true;
        }
        for (int i = 0; i < values.length; i++) {
            values[i] = objectives[i].sign() * value(objectives[i], power, margin, nitrous, forgiveness, peak);
        }
        return !tally.front.betters(values);
    }

    private static double value(
            Objective by, double power, double margin, double nitrous, double forgiveness, double peak) {
        return switch (by) {
            case POWER -> power;
            case MARGIN -> margin;
            case NITROUS -> nitrous;
            case FORGIVENESS -> forgiveness;
            case PEAK_PRESSURE -> peak;
        };
    }
}
