package org.shotledger.study;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;

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
     * @param closed least margin with the nitrous closed, exact
     */
    record Sample(long index, double margin, double power, double lambda, double closed) {}

    static Difference of(Space space, List<Sample> samples) {
        return largest(Pieces.of(samples.size(), n -> one(space, samples.get(n))));
    }

    /** By the exact outcome with the nitrous open; with it closed the table is exact. */
    static Difference one(Space space, Sample table) {
        List<Outcome> open = Evaluate.open(
                space.plan().car(), space.setup(table.index), space.plan().job().cases());
        Optional<OperatingPoint> peak = open.get(0).strongest();
        double margin = open.stream()
                .mapToDouble(outcome -> outcome.limits().leastMargin())
                .min()
                .orElseThrow();
        return one(
                table,
                peak.isPresent() ? Math.min(table.closed, margin) : Double.NEGATIVE_INFINITY,
                open.get(0).power(),
                peak.map(OperatingPoint::lambda).orElse(Double.NaN));
    }

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
        return one(table, exact.margin(), exact.wheelPower(), exact.lambda());
    }

    private static Difference one(Sample table, double margin, double power, double lambda) {
        boolean near = table.margin > FAR && margin > FAR;
        boolean answered = table.power > 0 && power > 0;
        return new Difference(
                1,
                answered && near ? Math.abs(table.power / power - 1) : 0,
                near ? Math.abs(table.margin - margin) : 0,
                answered && near ? Math.abs(table.lambda - lambda) : 0,
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
