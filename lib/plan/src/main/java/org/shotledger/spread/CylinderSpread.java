package org.shotledger.spread;

import org.shotledger.car.BuilderLimits;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
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
    /** Relative step of a derivative: our choice. */
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
     * @param outcome the outcome that the operating point is part of
     * @param point the operating point, nitrous on
     * @param supply how nitrous and fuel come to the cylinders
     * @param confidence probability for the likely bounds, above 0.5, below 1
     * @return the spread
     * @throws IllegalArgumentException when the nitrous is off at that point
     */
    public static CylinderSpread of(Outcome outcome, OperatingPoint point, Supply supply, double confidence) {
        if (!point.mode().nitrousFlows()) {
            throw new IllegalArgumentException("The operating point at " + point.rpm()
                    + " rpm has the nitrous off; the spread of its jets can only be asked with it on.");
        }
        if (!(confidence > 0.5 && confidence < 1)) {
            throw new IllegalArgumentException(
                    "The confidence of the spread is " + confidence + "; allowed is above 0.5, below 1.");
        }
        int n = outcome.car().engine().cylinders();
        PointModel model =
                Evaluate.model(outcome.car(), outcome.setup(), outcome.at()).withBottle(point.bottle());
        LambdaScatter lambda = scatter(outcome, point, supply);
        BuilderLimits limits = outcome.car().limits();
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
                worstPeak(model, point, lambda),
                peak(model, point, likely, 1),
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

    static LambdaScatter scatter(Outcome outcome, OperatingPoint point, Supply supply) {
        int cylinders = outcome.car().engine().cylinders();
        PointModel model =
                Evaluate.model(outcome.car(), outcome.setup(), outcome.at()).withBottle(point.bottle());
        JetPair jets = outcome.setup().jets().orElseThrow();
        double nitrous = supply.runner() ? nitrousExponent(model, point, jets.nitrousBore()) : 1;
        double fuel = supply.runner() ? fuelExponent(model, point, jets.fuelBore()) : 1;
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
    private static double nitrousExponent(PointModel model, OperatingPoint point, double bore) {
        double plenum = point.plenumPressure();
        double larger = model.feed(plenum, bore * (1 + STEP)).massFlow();
        return Math.log(larger / model.feed(plenum, bore).massFlow()) / (2 * Math.log1p(STEP));
    }

    private static double fuelExponent(PointModel model, OperatingPoint point, double bore) {
        double plenum = point.plenumPressure();
        double larger = model.nitrousFuel(plenum, bore * (1 + STEP)).massFlow();
        return Math.log(larger / model.nitrousFuel(plenum, bore).massFlow()) / (2 * Math.log1p(STEP));
    }

    /** Peak pressure rises with nitrous; with fuel it may rise or fall, so both ends are tried. */
    private static double worstPeak(PointModel model, OperatingPoint point, LambdaScatter lambda) {
        double n = lambda.nitrous().scatter().reach();
        double f = lambda.fuel().scatter().reach();
        double most = lambda.nitrous().flow(n, -n);
        return Math.max(
                peak(model, point, most, lambda.fuel().flow(-f, f)),
                peak(model, point, most, lambda.fuel().flow(f, -f)));
    }

    private static double peak(PointModel model, OperatingPoint point, double nitrous, double fuel) {
        return model.at(
                        point.rpm(),
                        point.plenumPressure(),
                        Mode.NITROUS,
                        point.nitrous().times(nitrous),
                        point.nitrousFuel().times(fuel))
                .cylinder()
                .peakPressure();
    }
}
