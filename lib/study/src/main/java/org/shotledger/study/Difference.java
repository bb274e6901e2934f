package org.shotledger.study;

import java.util.List;
import java.util.Locale;

/**
 * How far the tables of a study were from exact outcomes at combinations drawn at random: an estimate, not a bound.
 *
 * @param checks how many were worked out exactly
 * @param power largest difference of the power, as a share
 * @param margin largest difference of the least margin, a share of the bound
 * @param lambda largest difference of lambda
 * @param verdicts in how many of them the table said kept and the exact outcome broken, or the other way
 */
public record Difference(int checks, double power, double margin, double lambda, int verdicts) {
    private static final double CONFIDENCE = 0.95;
    /** Power, margin and lambda. */
    private static final int FIGURES = 3;

    /** Beyond this a margin is only "far broken", and how far is not compared. */
    private static final double FAR = -0.1;

    /**
     * A combination as the table has it.
     *
     * @param index its number
     * @param margin least margin
     * @param power W
     * @param lambda all streams
     */
    record Sample(long index, double margin, double power, double lambda) {}

    /** What is seen of all by the differences of some. */
    static Difference largest(List<Difference> each) {
        return new Difference(
                each.size(),
                each.stream().mapToDouble(Difference::power).max().orElse(0),
                each.stream().mapToDouble(Difference::margin).max().orElse(0),
                each.stream().mapToDouble(Difference::lambda).max().orElse(0),
                each.stream().mapToInt(Difference::verdicts).sum());
    }

    static Difference one(Sample table, Candidate exact) {
        double margin = exact.margin();
        double power = exact.wheelPower();
        boolean near = table.margin > FAR && margin > FAR;
        boolean answered = table.power > 0 && power > 0;
        return new Difference(
                1,
                answered && near ? Math.abs(table.power / power - 1) : 0,
                near ? Math.abs(table.margin - margin) : 0,
                answered && near ? Math.abs(table.lambda - exact.lambda()) : 0,
                table.margin >= 0 == margin >= 0 ? 0 : 1);
    }

    /**
     * The share of all combinations that differ by less than the largest difference seen: with {@code n} checks drawn
     * independently, {@code (1 - confidence)^(1/n)} (the largest of a sample as a one-sided tolerance limit, Wilks, Annals of
     * Mathematical Statistics 12 (1941) 91). What may go wrong is shared among the three figures, so that it holds of all three.
     *
     * @return the share, in each of the figures, at 95 % confidence in all; 0 without checks
     */
    public double covered() {
        return checks == 0 ? 0 : Math.pow((1 - CONFIDENCE) / FIGURES, 1.0 / checks);
    }

    @Override
    public String toString() {
        return checks == 0
                ? "the tables were not checked"
                : String.format(
                        Locale.ROOT,
                        "the tables differed from %d exact outcomes drawn at random by at most %.2f %% of the power, %.2f points of"
                                + " the least margin and %.4f of lambda, and in %d verdicts; with 95 %% confidence at least %.0f %%"
                                + " of all combinations differ by no more in each (an estimate; margins worse than %.0f %% are not compared)",
                        checks,
                        100 * power,
                        100 * margin,
                        lambda,
                        verdicts,
                        Math.floor(100 * covered()),
                        100 * FAR);
    }
}
