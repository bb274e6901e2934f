package org.shotledger.study;

/** A quick look whether a combination could be among the best or on the front. */
final class Worth {
    private final Tally tally;
    private final double wanted;
    private final Objective rankBy;
    private final Objective[] objectives;
    private final double[] values;
    private boolean ranked;
    private boolean fronted;

    Worth(Tally tally, SweepTask task) {
        this.tally = tally;
        this.wanted = task.wanted();
        this.rankBy = task.rankBy();
        this.objectives = task.objectives().toArray(Objective[]::new);
        this.values = new double[objectives.length];
    }

    /**
     * Looks whether any combination could be kept whose values are at best these; until the next call only such are asked about.
     *
     * @return false when none of them need be asked about
     */
    boolean any(double power, double margin, double nitrous, double forgiveness, double peak) {
        ranked = power >= wanted
                && margin >= Tally.IN_HAND
                && tally.best.wants(value(rankBy, power, margin, nitrous, forgiveness, peak), forgiveness);
        fronted = !tally.front.betters(signed(power, margin, nitrous, forgiveness, peak));
        return ranked || fronted;
    }

    boolean keeping(double power, double margin, double nitrous, double forgiveness, double peak) {
        if (ranked
                && power >= wanted
                && margin >= Tally.IN_HAND
                && tally.best.wants(value(rankBy, power, margin, nitrous, forgiveness, peak), forgiveness)) {
            return true;
        }
        return fronted && !tally.front.betters(signed(power, margin, nitrous, forgiveness, peak));
    }

    private double[] signed(double power, double margin, double nitrous, double forgiveness, double peak) {
        for (int i = 0; i < values.length; i++) {
            values[i] = objectives[i].sign() * value(objectives[i], power, margin, nitrous, forgiveness, peak);
        }
        return values;
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
