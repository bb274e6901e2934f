package org.shotledger.spread;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.shotledger.curve.Bracket;

/**
 * How lambda of one cylinder, and of the worst of several, is distributed.
 *
 * <p>Lambda is a quotient of two independent factors, so {@code P(lambda <= L)} is the integral over the fuel factor of the
 * probability that the nitrous factor stays below {@code (L (M + F f) - A) / N}. The integral is done by Gauss-Legendre
 * quadrature between the kinks of the integrand; nothing is made linear. The other cylinders are at nominal in the
 * distribution and at their opposite extreme in the bounds.
 *
 * @param shares oxygen balance at nominal
 * @param nitrous the nitrous stream
 * @param fuel the fuel stream
 */
record LambdaScatter(OxygenShares shares, Stream nitrous, Stream fuel) {
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(24, 0, 1);
    /** Lambda to which a quantile is found. */
    private static final double CLOSE = 1e-13;

    /** The leanest any cylinder can be. */
    double leanest() {
        double n = nitrous.scatter().reach();
        double f = fuel.scatter().reach();
        return shares.lambda(nitrous.flow(n, -n), fuel.flow(-f, f));
    }

    /** The richest any cylinder can be. */
    double richest() {
        double n = nitrous.scatter().reach();
        double f = fuel.scatter().reach();
        return shares.lambda(nitrous.flow(-n, n), fuel.flow(f, -f));
    }

    /** Probability that one cylinder is not leaner. */
    double probability(double lambda) {
        double[] edges = edges(lambda);
        double sum = 0;
        for (int i = 0; i + 1 < edges.length; i++) {
            double low = edges[i];
            double width = edges[i + 1] - low;
            sum += width
                    * RULE.integrate(
                            u -> nitrousProbability(lambda, fuel.scatter().quantile(low + width * u)));
        }
        return sum;
    }

    private double nitrousProbability(double lambda, double fuelDeviation) {
        double needed = shares.nitrousFlow(lambda, fuel.flow(fuelDeviation, 0));
        return nitrous.probability(needed);
    }

    /** Where the nitrous factor reaches an end of its tolerance the integrand has a kink. */
    private double[] edges(double lambda) {
        double reach = nitrous.scatter().reach();
        return DoubleStream.concat(
                        DoubleStream.of(0, 1),
                        DoubleStream.of(-reach, reach)
                                .map(d -> nitrous.flow(d, 0))
                                .map(n -> ((shares.air() + shares.nitrous() * n) / lambda - shares.main())
                                        / shares.fuel())
                                .map(f -> fuel.scatter().probability(fuel.deviation(f))))
                .sorted()
                .toArray();
    }

    /** The lambda that one cylinder does not exceed with a probability. */
    double quantile(double probability) {
        return Bracket.edge(lambda -> probability(lambda) < probability, richest(), leanest(), CLOSE)
                .inside();
    }

    /** The lambda that the leanest of n cylinders does not exceed with a probability. */
    double leanestOf(int n, double probability) {
        return quantile(Math.pow(probability, 1.0 / n));
    }

    /** The lambda below which the richest of n cylinders does not lie with a probability. */
    double richestOf(int n, double probability) {
        return quantile(1 - Math.pow(probability, 1.0 / n));
    }

    /** Lambda of each cylinder at given deviations. */
    double[] lambdas(double[] nitrousDeviations, double[] fuelDeviations) {
        double[] n = nitrous.flows(nitrousDeviations);
        double[] f = fuel.flows(fuelDeviations);
        double[] lambdas = new double[n.length];
        Arrays.setAll(lambdas, i -> shares.lambda(n[i], f[i]));
        return lambdas;
    }
}
