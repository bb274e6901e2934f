package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.flow.FlowFactor;
import org.shotledger.flow.OrificeLaw;
import org.shotledger.ledger.Entry;
import org.shotledger.ledger.Ledger;
import org.shotledger.ledger.Ledgers;
import org.shotledger.limits.Provenance;
import org.shotledger.nitrous.FlowTested;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.JetSide;
import org.shotledger.nitrous.WetKit;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Setup;
import org.shotledger.sheet.SheetException;

/** Kinds of jet, laws and flow tests as they stand in a sheet. */
class FlowTestSheetTest {
    private static final Job DEMO = Job.load(DemoSheetTest.DEMO);
    private static final double THOU = 25.4e-6;
    private static final Setup SETUP =
            DEMO.setup().withBoost(BoostTarget.constant(1.17e5)).withJets(new JetPair(43 * THOU, 22 * THOU));

    private static String nitrous(String name, double before, double after, double seconds) {
        return String.format(Locale.ROOT, """
                  %s:
                    kind: nitrous
                    jets: 43 thou
                    seconds: %.2f s +/- 0.2 s
                    before: %.3f kg +/- 0.010 kg
                    after: %.3f kg +/- 0.010 kg
                    bottle-pressure: 900 psi gauge +/- 15 psi
                """, name, seconds, before, after);
    }

    private static String fuel(double litres) {
        return String.format(Locale.ROOT, """
                  fuel-one:
                    kind: fuel
                    jets: 22 thou
                    liquid: water
                    seconds: 30.0 s +/- 0.3 s
                    volume: %.3f L +/- 0.010 L
                    flowing-pressure: 3.5 bar gauge +/- 0.05 bar
                """, litres);
    }

    private static Job tested(String... tests) {
        return DEMO.adding("flow-tests:\n" + String.join("", tests));
    }

    private static double expected(String test) {
        return tested(test).flowTests().get(0).expected();
    }

    /**
     * By hand, with the flow that is expected as the only figure taken from the program: the bottle loses 0.85 of it. The law's band
     * gives the prior s; what lines and solenoid take damps the jets' effect, so the factor found is below 0.85.
     */
    @Test
    void aNitrousTestMovesTheFactorTowardsWhatWasMeasuredAndNarrowsIt() {
        double flow = expected(nitrous("one", 24, 23, 10));
        FlowTested told = tested(nitrous("one", 24, 24 - 0.85 * flow * 10, 10))
                .flowTests()
                .get(0);
        FlowFactor before = told.before();
        FlowFactor after = told.after();
        assertEquals(JetSide.NITROUS, told.side());
        assertEquals(0, before.logarithm(), 1e-15);
        // rectangular half-widths: 10 g twice is 8.16 g, 0.2 s is 0.115 s
        double mass = Math.sqrt(2) * 0.010 / Math.sqrt(3);
        assertEquals(
                Math.hypot(mass / (8.5 * flow), 0.2 / Math.sqrt(3) / 10),
                told.test().deviation(),
                1e-5);
        assertEquals(0.85, told.test().flow() / told.expected(), 1e-3);
        assertTrue(after.logarithm() < Math.log(0.86) && after.logarithm() > Math.log(0.70), after.toString());
        assertTrue(after.deviation() < before.deviation() / 6, after.toString());
        assertTrue(
                told.stateDeviation() < 0.01, "a gauge off by 15 psi hardly moves the flow: " + told.stateDeviation());
    }

    /** Bernoulli by hand: with a solenoid much wider than the jets the flow goes as their coefficient, so the factor is the ratio. */
    @Test
    void aFuelTestWithWaterFindsTheCoefficient() {
        double flow = expected(fuel(1.0));
        double litres = 1.1 * flow * 30 / 998.2 * 1e3; // water at 20 degC, handbook value
        FlowTested told = tested(fuel(litres)).flowTests().get(0);
        assertEquals(1.1, told.test().flow() / told.expected(), 1e-3);
        // six jets of 22 thou at 0.80 against a solenoid of 2.9 mm at 0.65 and passages of 1.2 mm at 0.80
        double jets = 6 * 0.80 * Math.pow(0.5588, 2);
        double rest = 1 / (1 / Math.pow(0.65 * 2.9 * 2.9, 2) + 1 / Math.pow(6 * 0.80 * 1.2 * 1.2, 2));
        double share = 1 / (1 + jets * jets / rest);
        assertTrue(share > 0.8 && share < 1, "effect of the jets on the flow " + share);
        assertEquals(Math.log(1.1) / share, told.after().logarithm(), 0.02);
    }

    @Test
    void twoTestsOneAfterTheOtherTellMoreThanOne() {
        double flow = expected(nitrous("one", 24, 23, 10));
        String one = nitrous("one", 24, 24 - 0.9 * flow * 10, 10);
        String two = nitrous("two", 22, 22 - 0.9 * flow * 10, 10);
        List<FlowTested> tests = tested(one, two).flowTests();
        assertEquals(2, tests.get(1).after().tests());
        assertEquals(tests.get(0).after(), tests.get(1).before());
        assertTrue(
                tests.get(1).after().deviation() < 0.75 * tests.get(0).after().deviation());
    }

    @Test
    void thePlanMovesTheBandNarrowsAndTheLedgerSaysMeasured() {
        double flow = expected(nitrous("one", 24, 23, 10));
        Job job = tested(nitrous("one", 24, 24 - 0.85 * flow * 10, 10), fuel(1.0));
        Outcome plain = Evaluate.of(DEMO.car(), SETUP, DEMO.stated());
        Outcome moved = Evaluate.of(job.car(), SETUP, job.stated());
        OperatingPoint before = plain.strongest().orElseThrow();
        OperatingPoint after = moved.strongest().orElseThrow();
        assertTrue(after.nitrous().massFlow() < 0.9 * before.nitrous().massFlow());
        assertTrue(after.nitrous().band().logarithmicDeviation()
                < before.nitrous().band().logarithmicDeviation() / 3);
        assertTrue(after.wheelPower() < before.wheelPower());
        Ledger ledger = Ledgers.of(moved);
        for (String key : List.of("nitrous-flow", "nitrous-jet-factor", "nitrous-fuel-flow", "fuel-jet-factor")) {
            Entry entry = ledger.find(key).orElseThrow();
            assertEquals(Provenance.MEASURED, entry.provenance(), key);
        }
        for (String key : List.of("nitrous-flow", "nitrous-fuel-flow", "fuel-rail", "jet-inlet-pressure")) {
            Entry entry = ledger.find(key).orElseThrow();
            assertEquals(entry.value(), ledger.recomputed(key).orElseThrow(), 1e-6 * entry.value(), key);
        }
        String why = ledger.find("nitrous-jet-factor").orElseThrow().basis();
        assertTrue(why.contains("flow test \"one\"") && why.contains("was expected"), why);
        assertEquals(
                Provenance.CALCULATED,
                Ledgers.of(plain).find("nitrous-flow").orElseThrow().provenance());
    }

    @Test
    void jetsOfAnotherSizeThanTheTestedAreOutsideWhatWasMeasured() {
        double flow = expected(nitrous("one", 24, 23, 10));
        Job job = tested(nitrous("one", 24, 24 - flow * 10, 10));
        Setup other = SETUP.withJets(new JetPair(55 * THOU, 22 * THOU));
        Outcome same = Evaluate.of(job.car(), SETUP, job.stated());
        Outcome outcome = Evaluate.of(job.car(), other, job.stated());
        assertEquals(List.of(), same.outside(JetSide.NITROUS));
        assertEquals(
                List.of(
                        "The flow test \"one\" was made with nitrous jets of 43.0 thou (1.092 mm), these are of 55.0 thou (1.397 mm);"
                                + " test again with these."),
                outcome.outside(JetSide.NITROUS));
        String basis = Ledgers.of(outcome).find("nitrous-flow").orElseThrow().basis();
        assertTrue(basis.contains("outside what was measured: The flow test"), basis);
        // by hand: what the test left, and on it the whole width of the class again
        FlowTested test = job.flowTests().get(0);
        assertEquals(
                Math.hypot(test.after().deviation(), test.before().deviation()),
                job.car()
                        .nitrous()
                        .known(JetSide.NITROUS, 55 * THOU)
                        .orElseThrow()
                        .deviation(),
                1e-12);
        Outcome untested = Evaluate.of(DEMO.car(), other, DEMO.stated());
        double left = outcome.strongest().orElseThrow().nitrous().band().logarithmicDeviation();
        double tested = same.strongest().orElseThrow().nitrous().band().logarithmicDeviation();
        assertTrue(left > 3 * tested, left + " against " + tested);
        assertEquals(
                untested.strongest().orElseThrow().nitrous().massFlow() * told(job),
                outcome.strongest().orElseThrow().nitrous().massFlow(),
                0.01 * outcome.strongest().orElseThrow().nitrous().massFlow());
    }

    private static double told(Job job) {
        return Math.exp(job.flowTests().get(0).after().logarithm());
    }

    /** A factor is relative to a law: by another one nobody has tested the jets. */
    @Test
    void anotherLawTakesTheTestsOfItsJetsAway() {
        double flow = expected(nitrous("one", 24, 23, 10));
        WetKit kit = tested(nitrous("one", 24, 24 - 0.9 * flow * 10, 10), fuel(1.0))
                .car()
                .nitrous();
        WetKit other = kit.withFlowLaw(OrificeLaw.EQUILIBRIUM);
        assertTrue(other.lastTest(JetSide.NITROUS).isEmpty()
                && other.nitrous().jet().measured().isEmpty());
        assertEquals(kit.lastTest(JetSide.FUEL), other.lastTest(JetSide.FUEL));
    }

    @Test
    void aTestFarFromWhatWasKnownIsNoticed() {
        double flow = expected(nitrous("one", 24, 23, 10));
        Job job = tested(nitrous("one", 24, 24 - 0.4 * flow * 10, 10));
        assertTrue(job.flowTests().get(0).isSurprising());
        assertTrue(
                job.toString().contains("nitrous jets passed 40 % of what was expected of their class"), job::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "after: 23|after: 25|weighs no less after the discharge",
                "bottle-pressure: 900 psi gauge|bottle-temperature: 35 degC\\n    bottle-pressure: 900 psi gauge|read wrong",
                "bottle-pressure: 900 psi gauge|bottle-pressure-after: 500 psi gauge\\n    bottle-pressure: 900 psi gauge|liquid was gone",
                "seconds: 10.00 s +/- 0.2 s|seconds: 0.1 s|not plausible",
                "kind: nitrous|kind: petrol|",
                "jets: 43 thou|jet: 43 thou|is not known",
                "after: 23.000|after: 1.000|outside what any jet coefficient gives",
                "jets: 43 thou|jets: 400 thou|not plausible",
                "seconds: 10.00 s|seconds: 10.00 kg|a time is wanted",
                "seconds: 10.00 s +/- 0.2 s|seconds: 10|has no unit",
                "seconds: 10.00 s +/- 0.2 s|seconds: 0 s|allowed is 0.5 to 600 s",
                "after: 23.000 kg|after: 23 bar|a mass is wanted",
                "after: 23.000|after: 24.000|weighs no less after the discharge",
                "kind: nitrous|kind: fuel|is not known",
                "seconds: 10.00 s|nozzles: 40\\n    seconds: 10.00 s|allowed is 1 to 16"
            })
    void badTestsAreRefusedInWords(String from, String to, String said) {
        String good = nitrous("one", 24, 23, 10);
        String bad = good.replace(from, to.replace("\\n", "\n"));
        assertTrue(!good.equals(bad), from);
        String message = assertThrows(SheetException.class, () -> tested(bad)).getMessage();
        assertTrue(message.contains("flow-tests.one"), message);
        assertTrue(said == null || message.contains(said), message);
    }

    /** A flow is told as a builder weighs it, and the sentence holds what would have been believed. */
    @Test
    void aFlowThatNoJetPassesIsToldInGramsASecond() {
        String bad = nitrous("one", 24, 1, 10);
        String message = assertThrows(SheetException.class, () -> tested(bad)).getMessage();
        assertTrue(
                message.matches(
                        "(?s).*The flow test of 2300\\.0 g/s lies outside .* \\d+\\.\\d g/s to \\d+\\.\\d g/s; check.*"),
                message);
    }

    @Test
    void testsThatContradictEachOtherAreSaidAndLeaveAWideBand() {
        double flow = expected(nitrous("one", 24, 23, 10));
        String one = nitrous("one", 24, 24 - flow * 10, 10);
        Job agreed = tested(one, nitrous("two", 22, 22 - flow * 10, 10));
        Job torn = tested(one, nitrous("two", 22, 22 - 0.6 * flow * 10, 10));
        FlowTested second = torn.flowTests().get(1);
        assertTrue(second.isSurprising() && !agreed.flowTests().get(1).isSurprising());
        assertTrue(torn.toString().contains("flow-tests.two"), torn::toString);
        // either test's own factor lies in what is left: 1, and 0.6 with the damping of the path about 0.55
        assertTrue(second.after().band().holds(1) && second.after().band().holds(0.6), second.after()::toString);
        assertTrue(second.after().deviation()
                > 3 * agreed.flowTests().get(1).after().deviation());
    }

    /** What is known of one size says less of another: a test of the other size counts nearly alone. */
    @Test
    void aTestOfJetsOfAnotherSizeDoesNotInheritThePrecisionOfTheFirst() {
        double flow = expected(nitrous("one", 24, 23, 10));
        String one = nitrous("one", 24, 24 - flow * 10, 10);
        FlowTested same =
                tested(one, nitrous("two", 22, 22 - flow * 10, 10)).flowTests().get(1);
        FlowTested other = tested(one, nitrous("two", 22, 21.5, 10).replace("43 thou", "30 thou"))
                .flowTests()
                .get(1);
        assertEquals(same.before().logarithm(), other.before().logarithm());
        FlowFactor untested = tested(one).flowTests().get(0).before();
        assertTrue(same.before().deviation() < untested.deviation() / 5);
        assertEquals(untested.deviation(), other.before().deviation(), 0.02 * untested.deviation());
    }

    /** The factor a log found stands in the sheet; a test then begins there and not at 1. */
    @Test
    void aFactorStatedInTheSheetIsWhereATestBegins() {
        String marked = DEMO.source()
                .text()
                .replace("    line-length: 0.35 m\n", "    line-length: 0.35 m\n    jet-flow-factor: 0.8 +/- 0.05\n");
        Job stated = Job.read(marked, DemoSheetTest.DEMO.getParent());
        FlowTested told = stated.adding("flow-tests:\n" + nitrous("one", 24, 23.2, 10))
                .flowTests()
                .get(0);
        assertEquals(Math.log(0.8), told.before().logarithm(), 1e-9);
        assertTrue(told.expected() < 0.9 * expected(nitrous("one", 24, 23.2, 10)));
    }

    private static Job with(String jet) {
        return Job.read(
                DEMO.source().text().replace("    line-length: 0.35 m\n", "    line-length: 0.35 m\n" + jet),
                DemoSheetTest.DEMO.getParent());
    }

    @ParameterizedTest
    @CsvSource({"class, class", "equilibrium, equilibrium", "long-orifice, long orifice", "ideal-gas, class"})
    void theSheetChoosesTheLawAndTheResultNamesTheOneThatActs(String word, String acts) {
        Job job = with("    jet-edge: long\n    jet-length-over-bore: 4\n    flow-law: " + word + "\n");
        Outcome outcome = Evaluate.of(job.car(), SETUP, job.stated());
        String basis = Ledgers.of(outcome).find("nitrous-flow").orElseThrow().basis();
        assertTrue(basis.contains("law \"" + acts + "\""), basis);
        assertEquals(
                acts, outcome.strongest().orElseThrow().nitrous().jets().get(0).model());
        assertEquals(word.equals("ideal-gas"), basis.contains("\"ideal gas\" does not cover"), basis);
    }

    @Test
    void knownGeometryHasTheNarrowerBand() {
        double unknown = band(DEMO);
        assertTrue(band(with("    jet-edge: square\n    jet-length-over-bore: 3\n")) < unknown);
        assertEquals(unknown, band(with("    jet-edge: unknown\n")), 1e-12);
    }

    private static double band(Job job) {
        return Evaluate.of(job.car(), SETUP, job.stated())
                .strongest()
                .orElseThrow()
                .nitrous()
                .band()
                .logarithmicDeviation();
    }

    @Test
    void aLongJetAndItsLawNeedALength() {
        String message = assertThrows(
                        SheetException.class, () -> with("    jet-edge: long\n    flow-law: long-orifice\n"))
                .getMessage();
        assertTrue(message.contains("from 2 bores of length on"), message);
        assertTrue(message.contains("covers jets 2 to 10 bores long"), message);
    }

    /**
     * Bernoulli in series by hand: 22 thou jets (0.5588 mm) with 0.75 mm drillings of the same coefficient behind them pass
     * 1/sqrt(1 + (0.5588/0.75)^4) of what free jets pass.
     */
    @Test
    void aNarrowDrillingInTheNozzleLeansTheMixture() {
        double narrow = lambda("0.75 mm", true);
        double wide = lambda("5.0 mm", true);
        double flows = lambda("0.75 mm", false) / lambda("5.0 mm", false);
        assertEquals(1 / Math.sqrt(1 + Math.pow(0.5588 / 0.75, 4)), flows, 0.01);
        assertTrue(narrow > wide + 0.02, narrow + " against " + wide);
    }

    private static double lambda(String passage, boolean lambda) {
        Job job = DEMO.with("nitrous-system.nozzle.fuel-passage", passage);
        OperatingPoint point =
                Evaluate.of(job.car(), SETUP, job.stated()).strongest().orElseThrow();
        return lambda ? point.lambda() : point.nitrousFuel().massFlow();
    }
}
