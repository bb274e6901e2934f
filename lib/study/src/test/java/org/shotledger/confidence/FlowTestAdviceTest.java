package org.shotledger.confidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.flow.FlowFactor;
import org.shotledger.job.Job;
import org.shotledger.job.Starter;
import org.shotledger.nitrous.FlowTested;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.JetSide;
import org.shotledger.nitrous.TestInstruments;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;

/** What the advice promises of a test is what the test then does, read from a sheet. */
class FlowTestAdviceTest {
    private static final double THOU = 25.4e-6;
    private static Job job;
    private static Setup setup;
    private static FlowTestAdvice advice;

    @BeforeAll
    static void advise() {
        Job demo = Job.load(Path.of("../../data/whimbrel/job.yaml"));
        job = demo.withCases(demo.cases().subList(0, 1));
        setup = job.setup().withBoost(BoostTarget.constant(1.05e5)).withJets(new JetPair(43 * THOU, 22 * THOU));
        advice = FlowTestAdvice.of(plan(job));
    }

    private static Plan plan(Job of) {
        return Plan.of(of.withCases(of.cases().subList(0, 1)), setup);
    }

    private static FlowTestAdvice.Worth of(FlowTestAdvice advice, JetSide side) {
        return advice.tests().stream()
                .filter(test -> test.side() == side)
                .findFirst()
                .orElseThrow();
    }

    /** The reading that the advice expects, as a builder writes it down with the usual instruments. */
    private static String asWritten(FlowTestAdvice.Worth test, double ambient) {
        String what = test.side() == JetSide.NITROUS
                ? String.format(
                        Locale.ROOT,
                        "before: 20 kg, after: %.9f kg, bottle-pressure: %.3f Pa absolute",
                        20 - test.mass(),
                        test.pressure())
                : String.format(
                        Locale.ROOT,
                        "liquid: fuel, volume: %.9f L, flowing-pressure: %.3f Pa gauge",
                        1e3 * test.volume(),
                        test.pressure() - ambient);
        return String.format(
                Locale.ROOT,
                "flow-tests:\n  made: {kind: %s, jets: %.6f mm, seconds: %.9f s, %s}\n",
                test.side() == JetSide.NITROUS ? "nitrous" : "fuel",
                1e3 * test.bore(),
                test.seconds(),
                what);
    }

    @ParameterizedTest
    @EnumSource(JetSide.class)
    void theAdvisedTestMadeAndWrittenDownDoesWhatWasPromised(JetSide side) {
        FlowTestAdvice.Worth promised = of(advice, side);
        double ambient = advice.plan().stated().at().air().pressure();
        Job made = job.adding(asWritten(promised, ambient));
        FlowTested told = made.flowTests().get(0);
        assertEquals(promised.flow(), told.expected(), 1e-6 * told.expected());
        assertEquals(promised.known().deviation(), told.before().deviation(), 1e-6);
        assertEquals(promised.known().logarithm(), told.before().logarithm(), 1e-6);
        assertEquals(promised.after().deviation(), told.after().deviation(), 1e-6);
        assertEquals(promised.after().band().low(), told.after().band().low(), 1e-5);
        assertEquals(promised.after().band().high(), told.after().band().high(), 1e-5);
        assertEquals(FlowTestAdvice.USUAL_PRECISION, told.after().deviation(), 1e-4);

        FlowTestAdvice then = FlowTestAdvice.of(plan(made));
        assertEquals(promised.lambdaAfter(), then.tests().get(0).lambdaNow(), 1e-5);
        assertEquals(promised.powerAfter(), of(then, side).powerNow(), 1e-3 * promised.powerAfter());
        assertEquals(0, of(then, side).seconds(), "the wanted precision is reached, no second test is asked for");
        assertEquals(
                advice.plan().stated().power(),
                then.plan().stated().power(),
                1e-6 * advice.plan().stated().power(),
                "a test that finds what was expected moves nothing but the band");
    }

    @ParameterizedTest
    @ValueSource(strings = {"five-cylinder", "v8"})
    void theSameHoldsForACarBegunFromADozenFigures(String like, @TempDir Path folder) {
        Starter.write(folder.resolve(like), like, Map.of(), folder);
        Job begun = Job.load(folder.resolve(like));
        Setup jetted = begun.setup().withJets(new JetPair(40 * THOU, 22 * THOU));
        FlowTestAdvice told =
                FlowTestAdvice.of(Plan.of(begun.withCases(begun.cases().subList(0, 1)), jetted));
        assertEquals(2, told.tests().size(), like);
        for (FlowTestAdvice.Worth promised : told.tests()) {
            Job made = begun.adding(
                    asWritten(promised, told.plan().stated().at().air().pressure()));
            FlowTested test = made.flowTests().get(0);
            assertEquals(promised.flow(), test.expected(), 1e-6 * test.expected());
            assertEquals(promised.after().deviation(), test.after().deviation(), 1e-6);
            FlowTestAdvice then =
                    FlowTestAdvice.of(Plan.of(made.withCases(made.cases().subList(0, 1)), jetted));
            assertEquals(promised.lambdaAfter(), then.tests().get(0).lambdaNow(), 1e-5);
        }
    }

    /** A test of jets of another size leaves the fitted ones to be tested: the sheet says so, and the advice too. */
    @Test
    void aTestOfOtherJetsThanTheFittedIsNoReasonNotToTestThese() {
        FlowTestAdvice.Worth nitrous = of(advice, JetSide.NITROUS);
        double ambient = advice.plan().stated().at().air().pressure();
        String other = asWritten(nitrous, ambient)
                .replace(String.format(Locale.ROOT, "%.6f mm", 1e3 * nitrous.bore()), "0.8 mm")
                .replace(String.format(Locale.ROOT, "%.9f kg", 20 - nitrous.mass()), "19.45 kg");
        Plan then = plan(job.adding(other));
        assertTrue(then.outside().toString().contains("test again with these"), then.outside()::toString);
        FlowTestAdvice.Worth these = of(FlowTestAdvice.of(then), JetSide.NITROUS);
        assertTrue(these.seconds() > 1 && these.lambdaAfter() < 0.7 * these.lambdaNow(), these::toString);
    }

    /**
     * By hand from the class's band and the expected flow: a band from l to h has s = ln(h/l)/3.29. A precision of 0.03 needs a test with
     * e = 1/sqrt(1/0.03^2 - 1/s^2) on the factor; the fuel's path answers a factor on its holes with 1/(1 + (holes/solenoid)^2) of it, where
     * areas times coefficients count and the holes are jets and passages in series. With 10 mL over the root of 3 of a measure, 0.3 s over the root of 3 of a stopwatch and half of
     * 3 % over the root of 3 of a gauge, t = sqrt((M/m)^2 + T^2)/sqrt((e effect)^2 - z^2).
     */
    @Test
    void theDischargeIsTheOneThatComesOutByHand() {
        FlowTestAdvice.Worth fuel = of(advice, JetSide.FUEL);
        FlowFactor known = fuel.known();
        assertEquals(
                Math.log(job.car().nitrous().fuel().jet().factors().high()
                                / job.car().nitrous().fuel().jet().factors().low())
                        / 3.29,
                known.deviation(),
                1e-3);
        double own = 1 / Math.sqrt(1 / (0.03 * 0.03) - 1 / (known.deviation() * known.deviation()));
        // six jets of 22 thou (0.5588 mm) and passages of 1.2 mm at 0.80 against a solenoid of 2.9 mm at 0.65
        double holes = 6 * 0.80 / Math.sqrt(1 / Math.pow(0.5588, 4) + 1 / Math.pow(1.2, 4));
        double effect = 1 / (1 + Math.pow(holes / (0.65 * 2.9 * 2.9), 2));
        double root = Math.sqrt(3);
        double density = fuel.mass() / fuel.volume();
        double reading = Math.hypot(density * 10e-6 / root / fuel.flow(), 0.3 / root);
        double state = 0.03 / root / 2;
        double seconds = reading / Math.sqrt(Math.pow(own * effect, 2) - state * state);
        assertEquals(seconds, fuel.seconds(), 1e-3 * seconds);
        assertEquals(fuel.flow() * fuel.seconds(), fuel.mass(), 1e-9);
    }

    /** The span of lambda by hand: both flows moved by 2 % either way in the plan's own model, times the deviations of their bands. */
    @Test
    void bothFlowsAreInTheSpanOfLambdaAndOneTestLeavesTheOther() {
        FlowTestAdvice.Worth nitrous = of(advice, JetSide.NITROUS);
        FlowTestAdvice.Worth fuel = of(advice, JetSide.FUEL);
        assertEquals(nitrous.lambdaNow(), fuel.lambdaNow(), 1e-12);
        // now^2 = N^2 + F^2; after the nitrous n^2 + F^2, after the fuel N^2 + f^2; each of them positive
        double now = Math.pow(nitrous.lambdaNow(), 2);
        double wonByNitrous = now - Math.pow(nitrous.lambdaAfter(), 2);
        double wonByFuel = now - Math.pow(fuel.lambdaAfter(), 2);
        assertTrue(wonByNitrous > wonByFuel && wonByFuel > 0 && wonByNitrous + wonByFuel < now, advice::toString);
        assertEquals(JetSide.NITROUS, advice.tests().get(0).side());
        double both = Math.pow(of(after(JetSide.NITROUS), JetSide.FUEL).lambdaAfter(), 2);
        assertEquals(now - wonByNitrous - wonByFuel, both, 0.02 * both);
        // the fuel jets' flow goes from the s of its band to hypot(0.03, 0.06); lambda moves by a for 1 of its
        // logarithm
        double s = fuel.known().deviation();
        double left = Math.pow(0.03, 2) + Math.pow(0.06, 2);
        double a = (lambda(1.02) - lambda(1 / 1.02)) / (2 * Math.log(1.02));
        assertEquals(a * a * (s * s - left), wonByFuel, 2e-3 * wonByFuel);
    }

    private static double lambda(double fuel) {
        Case at = job.stated().with(Factor.FUEL_JET_FLOW, fuel);
        OperatingPoint strongest = advice.plan().stated().strongest().orElseThrow();
        return Evaluate.model(job.car(), setup, at)
                .at(strongest.rpm(), strongest.plenumPressure(), strongest.mode())
                .lambda();
    }

    private static FlowTestAdvice after(JetSide side) {
        double ambient = advice.plan().stated().at().air().pressure();
        return FlowTestAdvice.of(plan(job.adding(asWritten(of(advice, side), ambient))));
    }

    @Test
    void chancesNarrowWithEachTestAndTheSetupStays() {
        List<FlowTestAdvice.Step> steps = advice.chances(unknown -> false, 1 << 12, 7);
        assertEquals(3, steps.size());
        for (int i = 1; i < steps.size(); i++) {
            assertTrue(
                    steps.get(i).chances().power().deviation()
                            < steps.get(i - 1).chances().power().deviation(),
                    steps.get(i).name());
            assertEquals(setup, steps.get(i).plan().setup());
        }
        // the last step is the plan of a sheet with both tests in it
        FlowTested last = steps.get(2).plan().job().flowTests().get(1);
        assertEquals(advice.tests().get(1).side(), last.side());
    }

    @Test
    void aCoarseGaugeOrASmallBottleLowersThePromiseInsteadOfBreakingIt() {
        FlowTestAdvice coarse = FlowTestAdvice.of(advice.plan(), 0.005, new TestInstruments(0.05, 0.5, 0.2, 50e-6));
        for (FlowTestAdvice.Worth test : coarse.tests()) {
            assertTrue(
                    test.after().deviation() > 0.005
                            && test.after().deviation() < test.known().deviation(),
                    coarse::toString);
        }
        double most = 0.5 * setup.bottle().charge();
        assertTrue(of(coarse, JetSide.NITROUS).mass() <= most * (1 + 1e-12), coarse::toString);
    }

    @Test
    void aPrecisionOutsideItsRangeIsRefusedInWords() {
        String message = assertThrows(
                        IllegalArgumentException.class,
                        () -> FlowTestAdvice.of(advice.plan(), 0.001, TestInstruments.USUAL))
                .getMessage();
        assertTrue(message.contains("wanted precision of a flow test") && message.contains("0.005"), message);
    }
}
