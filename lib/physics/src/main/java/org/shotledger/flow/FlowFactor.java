package org.shotledger.flow;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.shotledger.curve.Bracket;

/**
 * What is known of a factor on the flow of a kind of jet: before any test the band of its class, after each test less.
 *
 * <p>The logarithm of the factor is taken as normal, so that a test updates it in closed form (conjugate normal; any Bayesian
 * text, such as Gelman et al., Bayesian Data Analysis, chapter 2): with a prior {@code (m, s)} and a measured logarithm {@code y} of
 * deviation {@code e}, {@code m' = m + (y - m) s^2 / (s^2 + e^2)} and {@code 1/s'^2 = 1/s^2 + 1/e^2}.
 *
 * <p>By hand: the class says 1, from 0.65 to 1.80, so s = ln(1.80/0.65)/3.29 = 0.310. The bottle loses 300 g in 10 s where
 * 360 g were expected: y = ln(300/360) = -0.182. The scale's 5 g count twice, sqrt(2) 5/300 = 0.0236, the stopwatch's 0.2 s
 * is 0.0200: e = 0.0309. Then m' = -0.182 (0.0958/(0.0958 + 0.00096)) = -0.1805, a factor of 0.835, and s' = 0.0308. With 0.06 for
 * other states, hypot(0.0308, 0.06) = 0.0674, the band goes from 0.747 to 0.933.
 *
 * <p>What was known and the test may contradict each other: with {@code z = (y - m) / hypot(s, e)} beyond 1 the two disagree by more than
 * they say of themselves, and {@code s'} is multiplied by {@code |z|} (Birge ratio of two values, R. T. Birge, Phys. Rev. 40 (1932)
 * 207, from memory). Two tests that do not go together so leave less known than either claimed.
 *
 * @param logarithm mean of the natural logarithm of the factor
 * @param deviation one standard deviation of it, above 0
 * @param tests how many tests stand behind it
 * @param surprise z of the last test: how far it lay from what was known before, in standard deviations of both; 0 without a test
 */
public record FlowFactor(double logarithm, double deviation, int tests, double surprise) {
    /**
     * What a factor found in one state may be off in another: pooled scatter of the class law within one source and hole, 0.04 to
     * 0.10 (from the measured holes).
     */
    public static final double OTHER_STATES = 0.06;

    /** Change of the logarithm of the factor by which its effect on the flow is tried. */
    private static final double STEP = 0.02;

    /** A path that answers a factor with less than this share lets the jets' flow not be told: our choice. */
    public static final double LEAST_EFFECT = 0.05;

    private static final double FURTHEST = Math.log(8);
    private static final double TOLERANCE = 1e-7;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when the deviation is not above zero
     */
    public FlowFactor {
        Checks.positive("Flow factor", "deviation of its logarithm", deviation, "");
    }

    /**
     * Before any test.
     *
     * @param band band of the class, relative to the best estimate
     * @return mean at the best estimate, deviation from the whole width of the band
     */
    public static FlowFactor untested(FlowBand band) {
        return new FlowFactor(Math.log(band.best()), band.logarithmicDeviation(), 0, 0);
    }

    /**
     * After one more test.
     *
     * @param test the measured flow
     * @param flowOfFactor flow of the whole arrangement as tested, kg/s, over the factor on its jets; rising
     * @param stateDeviation one standard deviation of the logarithm of the predicted flow from what is not known of the state,
     *     such as bottle temperature or fuel pressure; zero or above
     * @return the updated factor
     * @throws IllegalArgumentException when no factor explains the flow, or the jets hardly matter to it
     */
    public FlowFactor after(FlowTest test, DoubleUnaryOperator flowOfFactor, double stateDeviation) {
        Checks.notNegative("Flow test", "error from the state", stateDeviation, "");
        double found = explain(test.flow(), flowOfFactor);
        double effect = effect(flowOfFactor, found);
        if (!(effect >= LEAST_EFFECT)) {
            throw new IllegalArgumentException("The flow test of " + grams(test.flow())
                    + " says nothing about the jets: something before them limits the flow; test with smaller jets.");
        }
        double error = Math.hypot(test.deviation(), stateDeviation) / effect;
        double both = Math.hypot(deviation, error);
        double share = square(deviation / both);
        double apart = (found - logarithm) / both;
        return new FlowFactor(
                logarithm + share * (found - logarithm),
                deviation * error / both * Math.max(1, Math.abs(apart)),
                tests + 1,
                apart);
    }

    private static double square(double x) {
        return x * x;
    }

    private static String grams(double flow) {
        return String.format(Locale.ROOT, "%.1f g/s", 1e3 * flow);
    }

    private static double explain(double flow, DoubleUnaryOperator flowOfFactor) {
        DoubleUnaryOperator miss = log -> flowOfFactor.applyAsDouble(Math.exp(log)) - flow;
        double low = miss.applyAsDouble(-FURTHEST);
        double high = miss.applyAsDouble(FURTHEST);
        if (low > 0 || high < 0) {
            throw new IllegalArgumentException(
                    "The flow test of " + grams(flow) + " lies outside what any jet coefficient gives, "
                            + grams(low + flow) + " to " + grams(high + flow)
                            + "; check the masses, the time, the jets and the pressure.");
        }
        return Bracket.root(miss, -FURTHEST, low, FURTHEST, high, TOLERANCE);
    }

    /**
     * How much of a change of the factor arrives at the flow of a whole arrangement.
     *
     * @param flowOfFactor flow, kg/s, over the factor; rising
     * @return change of the flow's logarithm for a change of 1 of the factor's, around this mean: 1 where nothing but the jets limits,
     *     0 where they do not matter
     */
    public double effect(DoubleUnaryOperator flowOfFactor) {
        return effect(flowOfFactor, logarithm);
    }

    private static double effect(DoubleUnaryOperator flowOfFactor, double log) {
        double above = flowOfFactor.applyAsDouble(Math.exp(log + STEP));
        double below = flowOfFactor.applyAsDouble(Math.exp(log - STEP));
        return Math.log(above / below) / (2 * STEP);
    }

    /**
     * The same where it is less sure.
     *
     * @param more one standard deviation of the logarithm to add, zero or above
     * @return mean and tests as they are, the deviations added as the root of squares
     */
    public FlowFactor lessSure(double more) {
        return new FlowFactor(logarithm, Math.hypot(deviation, more), tests, surprise);
    }

    /**
     * The band to plan with.
     *
     * @return 90 % band of the factor, after a test widened for other states than the tested
     */
    public FlowBand band() {
        double whole = tests == 0 ? deviation : Math.hypot(deviation, OTHER_STATES);
        return FlowBand.around(Math.exp(logarithm), whole);
    }
}
