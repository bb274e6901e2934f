package org.shotledger.reconcile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;

/**
 * What a pull can tell about the parts, by weighted least squares over lambda and wheel power: the flow of nitrous fuel (bore squared
 * times discharge coefficient), the engine's own power, and what the nitrous adds, each as a factor on the plan.
 *
 * <p>Lambda tells only the ratio of fuel to nitrous: the nitrous flow is held as planned, and its error stands in the fuel's factor.
 * The factor of what the nitrous adds holds its flow and its effectiveness together.
 *
 * @param fuelFlow flow of nitrous fuel over the planned
 * @param ownPower wheel power without nitrous over the planned
 * @param nitrousPower wheel power that the nitrous adds over the planned
 * @param fit the fit with its covariance; its parameters are the three factors in this order
 */
public record FlowFit(double fuelFlow, double ownPower, double nitrousPower, WeightedFit fit) {
    private static final int MOST_POINTS = 8;

    private record Point(OperatingPoint expected, double alone, double lambda, double power) {}

    /**
     * Fits the pull of a log that has the nitrous off and on.
     *
     * @param outcome what the setup that was run is expected to do
     * @param findings the log with its findings
     * @return the factors
     * @throws IllegalArgumentException when the log lacks lambda, wheel power, a pull, or settled points with the nitrous off or on
     */
    public static FlowFit of(Outcome outcome, LogFindings findings) {
        Reconciliation laid = Reconciliation.of(outcome, findings);
        RunGrid grid = new RunGrid(findings, laid.pull(), Reconciliation.edges(outcome));
        Expectation expectation = new Expectation(outcome);
        double[] lambda = laid.overlay(ComparedChannel.LAMBDA).measured();
        double[] power = laid.overlay(ComparedChannel.WHEEL_POWER).measured();
        List<Point> on = new ArrayList<>();
        List<Point> off = new ArrayList<>();
        for (int i = 0; i < lambda.length; i++) {
            Optional<OperatingPoint> point = laid.expected().get(i);
            if (point.isPresent() && grid.settled(i) && !Double.isNaN(lambda[i] + power[i])) {
                OperatingPoint e = point.get();
                boolean with = e.mode().nitrousFlows();
                double alone = with
                        ? expectation.without(e).map(OperatingPoint::wheelPower).orElse(Double.NaN)
                        : e.wheelPower();
                (with ? on : off).add(new Point(e, alone, lambda[i], power[i]));
            }
        }
        if (on.size() < 2 || off.size() < 2) {
            throw new IllegalArgumentException("The pull of " + findings.log().file() + " has " + off.size()
                    + " settled engine speeds without nitrous and " + on.size()
                    + " with it; a fit needs two of each.");
        }
        return fit(
                expectation,
                thinned(off),
                thinned(on),
                grid.noise(LogChannel.LAMBDA),
                grid.noise(LogChannel.WHEEL_POWER));
    }

    private static List<Point> thinned(List<Point> all) {
        int every = (all.size() + MOST_POINTS - 1) / MOST_POINTS;
        List<Point> some = new ArrayList<>();
        for (int i = 0; i < all.size(); i += every) {
            some.add(all.get(i));
        }
        return some;
    }

    private static FlowFit fit(
            Expectation expectation, List<Point> off, List<Point> on, double lambdaNoise, double powerNoise) {
        int n = off.size() + on.size();
        double[] measured = new double[n + on.size()];
        double[] deviation = new double[n + on.size()];
        for (int i = 0; i < n; i++) {
            measured[i] = (i < off.size() ? off.get(i) : on.get(i - off.size())).power();
            deviation[i] = powerNoise;
        }
        for (int i = 0; i < on.size(); i++) {
            measured[n + i] = on.get(i).lambda();
            deviation[n + i] = lambdaNoise;
        }
        WeightedFit fit =
                WeightedFit.of(p -> predicted(expectation, off, on, p), measured, deviation, new double[] {1, 1, 1});
        double[] p = fit.parameters();
        return new FlowFit(p[0], p[1], p[2], fit);
    }

    private static double[] predicted(Expectation expectation, List<Point> off, List<Point> on, double[] p) {
        int n = off.size() + on.size();
        double[] values = new double[n + on.size()];
        Arrays.setAll(values, i -> i < off.size() ? p[1] * off.get(i).alone() : 0);
        for (int i = 0; i < on.size(); i++) {
            OperatingPoint e = on.get(i).expected();
            Optional<OperatingPoint> changed = expectation.sharing(e, 1, p[0]);
            double alone = on.get(i).alone();
            values[off.size() + i] = changed.map(c -> p[1] * alone + p[2] * (c.wheelPower() - alone))
                    .orElse(Double.NaN);
            values[n + i] = changed.map(OperatingPoint::lambda).orElse(Double.NaN);
        }
        return values;
    }

    /**
     * The plan's lambda with the fitted flow of nitrous fuel.
     *
     * @param outcome what the setup that was run is expected to do
     * @param laid the log laid over it
     * @return lambda at the engine speeds of the overlays; NaN where the plan has no answer
     */
    public double[] lambdaAfter(Outcome outcome, Reconciliation laid) {
        Expectation expectation = new Expectation(outcome);
        return laid.expected().stream()
                .mapToDouble(point -> point.flatMap(
                                e -> e.mode().nitrousFlows() ? expectation.sharing(e, 1, fuelFlow) : Optional.of(e))
                        .map(OperatingPoint::lambda)
                        .orElse(Double.NaN))
                .toArray();
    }

    /**
     * The factors in words.
     *
     * @return each factor with two standard uncertainties, those of the log's scatter alone
     */
    public String summary() {
        return String.format(
                Locale.ROOT,
                "Against the plan the nitrous fuel flows %.3f +/- %.3f times, if the nitrous flows as planned; the engine's own power"
                        + " is %.3f +/- %.3f times, what the nitrous adds %.3f +/- %.3f times (two standard uncertainties from the"
                        + " scatter of the log; gauges and dynamometer have errors of their own).",
                fuelFlow,
                2 * fit.scaledUncertainty(0),
                ownPower,
                2 * fit.scaledUncertainty(1),
                nitrousPower,
                2 * fit.scaledUncertainty(2));
    }
}
