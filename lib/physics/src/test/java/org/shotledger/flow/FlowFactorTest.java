package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class FlowFactorTest {
    private static final FlowFactor UNTESTED = FlowFactor.untested(new FlowBand(0.65, 1, 1.80));

    // every figure of the example in the class's documentation, worked by hand there
    @Test
    void handExampleComesOut() {
        FlowTest test = new FlowTest(10.2 - 9.9, Math.sqrt(2) * 0.005, 10, 0.2);
        assertEquals(0.310, UNTESTED.deviation(), 5e-4);
        assertEquals(0.0309, test.deviation(), 5e-5);
        FlowFactor after = UNTESTED.after(test, factor -> 0.036 * factor, 0);
        assertEquals(-0.1805, after.logarithm(), 1e-4);
        assertEquals(0.0308, after.deviation(), 1e-4);
        assertEquals(0.747, after.band().low(), 1e-3);
        assertEquals(0.835, after.band().best(), 1e-3);
        assertEquals(0.933, after.band().high(), 1e-3);
        assertEquals(-0.585, after.surprise(), 1e-3);
    }

    // conjugate normal: two tests of deviation e are worth one of e / sqrt(2)
    @Test
    void twoTestsAreWorthOneOfTwiceTheInformation() {
        FlowTest one = new FlowTest(0.3, 0.012, 10, 0);
        FlowTest better = new FlowTest(0.3, 0.012 / Math.sqrt(2), 10, 0);
        FlowFactor twice = UNTESTED.after(one, f -> 0.036 * f, 0).after(one, f -> 0.036 * f, 0);
        FlowFactor once = UNTESTED.after(better, f -> 0.036 * f, 0);
        assertEquals(once.deviation(), twice.deviation(), 1e-12);
        assertEquals(once.logarithm(), twice.logarithm(), 1e-6);
        assertEquals(2, twice.tests());
    }

    // by hand: 0 +- 0.310, then a test of ln(0.5) = -0.693 +- 0.05: z = -0.693/0.314 = -2.21, so the 0.0494 of the
    // closed form
    // becomes 0.109; then one of ln(1) = 0 +- 0.05: mean -0.676, both 0.1199, z = 5.64, and 0.0454 becomes 0.256
    @Test
    void testsThatContradictEachOtherLeaveLessKnownThanEitherClaims() {
        FlowFactor half = UNTESTED.after(new FlowTest(0.5, 0.025, 1, 0), f -> f, 0);
        assertEquals(-2.21, half.surprise(), 5e-3);
        assertEquals(0.109, half.deviation(), 5e-4);
        FlowFactor torn = half.after(new FlowTest(1, 0.05, 1, 0), f -> f, 0);
        assertEquals(5.64, torn.surprise(), 0.02);
        assertEquals(0.256, torn.deviation(), 2e-3);
        assertTrue(torn.band().holds(0.7) && torn.band().high() > 0.95, torn.band()::toString);
    }

    // what lines and solenoid take damps the jets' effect: a flow that goes as the root of the factor tells half as
    // much
    @Test
    void aDampedPathTellsLess() {
        FlowTest test = new FlowTest(0.3, 0.009, 10, 0);
        // near enough to what is known that the two do not contradict each other
        FlowFactor damped = UNTESTED.after(test, f -> 0.032 * Math.sqrt(f), 0);
        assertEquals(
                1 / (1 / (0.06 * 0.06) + 1 / Math.pow(UNTESTED.deviation(), 2)), Math.pow(damped.deviation(), 2), 1e-5);
        String message = assertThrows(
                        IllegalArgumentException.class, () -> UNTESTED.after(test, f -> 0.029995 + 1e-5 * f, 0))
                .getMessage();
        assertTrue(message.contains("something before them limits"), message);
        assertThrows(IllegalArgumentException.class, () -> UNTESTED.after(test, f -> 3 * f, 0));
    }

    @Test
    void planGivesTheDischargeAfterWhichTheWantedDeviationIsReached() {
        double mass = Math.sqrt(2) * 0.005;
        FlowTestPlan plan = FlowTestPlan.of(UNTESTED, 0.03, 0.036, mass, 0.2, 0.015);
        FlowTest test = new FlowTest(plan.mass(), mass, plan.seconds(), 0.2);
        FlowFactor after = UNTESTED.after(test, f -> test.flow() * f, 0.015);
        assertEquals(0.03, after.deviation(), 1e-6);
        assertEquals(0, FlowTestPlan.of(UNTESTED, 0.4, 0.036, mass, 0.2, 0.015).seconds());
        assertThrows(IllegalArgumentException.class, () -> FlowTestPlan.of(UNTESTED, 0.01, 0.036, mass, 0.2, 0.015));
    }

    // the scatter that is added for other states is what the class law leaves within one source and one kind of inlet
    @Test
    void scatterWithinASourceIsWhatIsAddedForOtherStates() {
        double mean =
                MeasuredHole.all().stream()
                        .collect(Collectors.groupingBy(h -> Map.entry(h.source(), h.inlet())))
                        .values()
                        .stream()
                        .filter(points -> points.size() > 10)
                        .mapToDouble(FlowFactorTest::scatter)
                        .average()
                        .orElseThrow();
        assertEquals(FlowFactor.OTHER_STATES, mean, 0.02);
    }

    private static double scatter(List<MeasuredHole> points) {
        double[] errors = points.stream()
                .mapToDouble(h -> Math.log(h.share() / SourceFit.share(ClassFit.MEASURED, h, false)))
                .toArray();
        double mean = java.util.Arrays.stream(errors).average().orElseThrow();
        return Math.sqrt(java.util.Arrays.stream(errors)
                        .map(e -> (e - mean) * (e - mean))
                        .sum()
                / (errors.length - 1));
    }

    // seeded: true factors drawn from the prior, tests drawn from their errors; nine in ten true factors lie in the
    // posterior
    @Test
    void posteriorHoldsNineInTenTrueFactors() {
        SplittableRandom random = new SplittableRandom(41);
        int held = 0;
        for (int i = 0; i < 2000; i++) {
            double truth = random.nextGaussian(UNTESTED.logarithm(), UNTESTED.deviation());
            double measured = Math.exp(truth + random.nextGaussian(0, 0.05));
            FlowFactor after = UNTESTED.after(new FlowTest(measured, 0.05 * measured, 1, 0), f -> f, 0);
            FlowBand sharp = FlowBand.around(Math.exp(after.logarithm()), after.deviation());
            held += sharp.holds(Math.exp(truth)) ? 1 : 0;
        }
        // binomial: 0.90 with a deviation of 0.0067
        assertEquals(0.90, held / 2000.0, 0.02);
    }
}
