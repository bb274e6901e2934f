package org.shotledger.spread;

import org.shotledger.budget.Demand;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Evaluator;
import org.shotledger.build.BuilderLimits;
import org.shotledger.flow.FeedFlow;
import org.shotledger.nitrous.JetPair;

/**
 * Lambda and peak pressure from cylinder to cylinder at one operating point.
 *
 * <p>Air and main fuel are taken as equal in all cylinders; what the air itself and the main injectors scatter comes on top.
 *
 * @param supply how nitrous and fuel come to the cylinders
 * @param cylinders number of cylinders
 * @param lambda lambda of a cylinder at nominal
 * @param leanest the leanest a cylinder can be, every tolerance at its worst
 * @param richest the richest a cylinder can be
 * @param leanestLikely no cylinder is leaner, with the stated probability
 * @param richestLikely no cylinder is richer, with the stated probability
 * @param confidence that probability
 * @param allTogetherLean lambda of all when every nitrous hole is at the upper and every fuel hole at the lower end; equal to
 *     lambda for a scatter of division, which conserves the sum
 * @param insideLimits probability that every cylinder lies within the builder's lambda limits
 * @param peakPressure peak pressure at nominal, Pa absolute
 * @param worstPeakPressure the highest peak pressure a cylinder can have, Pa absolute
 * @param likelyPeakPressure no cylinder has more from its nitrous, with the stated probability, Pa absolute
 * @param scatter the distribution, for {@link #probability}
 */
public record CylinderSpread(
        Supply supply,
        int cylinders,
        double lambda,
        double leanest,
        double richest,
        double leanestLikely,
        double richestLikely,
        double confidence,
        double allTogetherLean,
        double insideLimits,
        double peakPressure,
        double worstPeakPressure,
        double likelyPeakPressure,
        Distribution scatter) {
    private static final double STEP = 0.005;

    /** The probability of a lambda. */
    public interface Distribution {
        /**
         * Probability that one cylinder is not leaner.
         *
         * @param lambda oxygen supplied over oxygen demanded
         * @return probability, 0 to 1
         */
        double probability(double lambda);
    }

    /**
     * The spread at an operating point.
     *
     * @param evaluator the calibrated models
     * @param point the operating point, nitrous on
     * @param supply how nitrous and fuel come to the cylinders
     * @param confidence probability for the likely bounds, above 0.5, below 1
     * @return the spread
     * @throws IllegalArgumentException when the nitrous is off at that point
     */
    public static CylinderSpread of(Evaluator evaluator, Evaluation point, Supply supply, double confidence) {
        if (!point.nitrousOn()) {
            throw new IllegalArgumentException("The operating point at " + point.rpm()
                    + " rpm has the nitrous off; the spread of its jets can only be asked with it on.");
        }
        if (!(confidence > 0.5 && confidence < 1)) {
            throw new IllegalArgumentException(
                    "The confidence of the spread is " + confidence + "; allowed is above 0.5, below 1.");
        }
        int n = evaluator.build().engine().cylinders();
        LambdaScatter lambda = scatter(evaluator, point, supply, n);
        BuilderLimits limits = evaluator.build().limits();
        double inside = lambda.probability(limits.lambdaHigh()) - lambda.probability(limits.lambdaLow());
        Stream nitrous = lambda.nitrous();
        double likely = nitrous.flow(supply.nitrous().quantile(Math.pow(confidence, 1.0 / n)), 0);
        return new CylinderSpread(
                supply,
                n,
                point.lambda(),
                lambda.leanest(),
                lambda.richest(),
                lambda.leanestOf(n, confidence),
                lambda.richestOf(n, confidence),
                confidence,
                supply.runner() ? together(lambda, n) : point.lambda(),
                Math.pow(inside, n),
                point.cylinder().peakPressure(),
                worstPeak(evaluator, point, lambda),
                peak(evaluator, point, likely, 1),
                lambda::probability);
    }

    /**
     * Probability that one cylinder is not leaner.
     *
     * @param of oxygen supplied over oxygen demanded
     * @return probability, 0 to 1
     */
    public double probability(double of) {
        return scatter.probability(of);
    }

    static LambdaScatter scatter(Evaluator evaluator, Evaluation point, Supply supply, int cylinders) {
        double nitrous = supply.runner() ? nitrousExponent(evaluator, point) : 1;
        double fuel = supply.runner() ? fuelExponent(evaluator, point) : 1;
        return new LambdaScatter(
                OxygenShares.of(point),
                new Stream(cylinders, nitrous, supply.nitrous(), supply.runner()),
                new Stream(cylinders, fuel, supply.fuel(), supply.runner()));
    }

    private static double together(LambdaScatter lambda, int cylinders) {
        double n = lambda.nitrous().scatter().reach();
        double f = lambda.fuel().scatter().reach();
        double[] up = new double[cylinders];
        double[] down = new double[cylinders];
        java.util.Arrays.fill(up, n);
        java.util.Arrays.fill(down, -f);
        return lambda.lambdas(up, down)[0];
    }

    /** How the whole flow answers to the whole jet area, by a small step of all jets. */
    private static double nitrousExponent(Evaluator evaluator, Evaluation point) {
        FeedFlow larger = evaluator.feed(point.conditions(), stepped(point));
        return Math.log(larger.massFlow() / point.nitrous().massFlow()) / (2 * Math.log1p(STEP));
    }

    private static double fuelExponent(Evaluator evaluator, Evaluation point) {
        double larger =
                evaluator.nitrousFuel(point.conditions(), stepped(point)).massFlow();
        return Math.log(larger / point.nitrousFuel().massFlow()) / (2 * Math.log1p(STEP));
    }

    private static Demand stepped(Evaluation point) {
        JetPair jets = point.demand().jets().orElseThrow();
        return Demand.boost(point.demand().plenumPressure())
                .with(new JetPair(jets.nitrousBore() * (1 + STEP), jets.fuelBore() * (1 + STEP)));
    }

    /** Peak pressure rises with nitrous; with fuel it may rise or fall, so both ends are tried. */
    private static double worstPeak(Evaluator evaluator, Evaluation point, LambdaScatter lambda) {
        double n = lambda.nitrous().scatter().reach();
        double f = lambda.fuel().scatter().reach();
        double most = lambda.nitrous().flow(n, -n);
        return Math.max(
                peak(evaluator, point, most, lambda.fuel().flow(-f, f)),
                peak(evaluator, point, most, lambda.fuel().flow(f, -f)));
    }

    private static double peak(Evaluator evaluator, Evaluation point, double nitrous, double fuel) {
        return evaluator
                .sharing(point.conditions(), point.rpm(), point.demand(), point.nitrous(), nitrous, fuel)
                .cylinder()
                .peakPressure();
    }
}
