package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.words;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.shotledger.confidence.FlowTestAdvice;
import org.shotledger.display.Displayable;
import org.shotledger.document.Cautions;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.nitrous.FeedStudy;
import org.shotledger.nitrous.FlowTested;
import org.shotledger.nitrous.NozzlePassages;
import org.shotledger.nitrous.WetKit;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** The nitrous side as a whole, and the flow tests of its jets, as tables. */
public final class FlowTables {
    /** Jets shown around the plan's, as shares of its bore. */
    private static final double SMALLEST = 0.75;

    private static final double LARGEST = 1.6;
    private static final int MOST = 12;
    private static final double NINETY = 1.645;

    private FlowTables() {}

    /**
     * Which part limits the flow with each jet of the ladder around the plan's.
     *
     * @param outcome an outcome with nitrous
     * @return one row a jet
     */
    public static Listing limiting(Outcome outcome) {
        double own = outcome.setup().jets().orElseThrow().nitrousBore();
        double[] bores = Arrays.stream(outcome.car().nitrous().ladder().bores())
                .filter(bore -> bore >= SMALLEST * own && bore <= LARGEST * own)
                .toArray();
        List<FeedStudy.Rung> rungs = study(outcome).rungs(thinned(bores, own));
        return Listing.of(
                "What limits the nitrous oxide with each jet, all nozzles open",
                rungs,
                column("Jet", QuantityKind.BORE, FeedStudy.Rung::bore),
                words("Chokes", rung -> choked(rung.limit())),
                column("Flow", QuantityKind.MASS_FLOW, rung -> rung.flow().best(), FlowTables::band),
                column(
                        "nine times out of ten from",
                        QuantityKind.MASS_FLOW,
                        rung -> rung.flow().low(),
                        FlowTables::band),
                column("to", QuantityKind.MASS_FLOW, rung -> rung.flow().high(), FlowTables::band),
                words("Chokes at the ends of the band", rung -> {
                    boolean same = rung.limitLow().equals(rung.limit())
                            && rung.limitHigh().equals(rung.limit());
                    return same ? "the same" : choked(rung.limitLow()) + " to " + choked(rung.limitHigh());
                }));
    }

    private static double band(FeedStudy.Rung rung) {
        return (rung.flow().high() - rung.flow().low()) / 2;
    }

    private static String choked(String limit) {
        return limit.isEmpty() ? "nothing" : limit;
    }

    /** At most so many that the table stays short, the plan's own among them where the ladder has it. */
    private static double[] thinned(double[] bores, double own) {
        int every = Math.max(1, (bores.length + MOST - 1) / MOST);
        int start = Math.max(0, Arrays.binarySearch(bores, own)) % every;
        return IntStream.range(0, bores.length)
                .filter(i -> i % every == start)
                .mapToDouble(i -> bores[i])
                .toArray();
    }

    /**
     * How far a half-blocked filter, a long hose and a hose that was not purged move the flow.
     *
     * @param outcome an outcome with nitrous
     * @return one row a change
     */
    public static Listing changes(Outcome outcome) {
        return Listing.of(
                "What else moves the flow",
                study(outcome).changes(outcome.setup().jets().orElseThrow().nitrousBore()),
                words("Change", FeedStudy.Change::name),
                column("Flow against before", QuantityKind.FRACTION, change -> change.ratio() - 1),
                words("Chokes then", change -> choked(change.feed().chokingElement())),
                words(
                        "Lasts",
                        change -> Double.isInfinite(change.seconds())
                                ? "until mended"
                                : "until liquid comes, about " + Both.of(QuantityKind.TIME, change.seconds())),
                words(
                        "Smaller than what is not known",
                        change -> change.withinBand() ? "yes, within the band" : "no, beyond the band"));
    }

    private static FeedStudy study(Outcome outcome) {
        OperatingPoint point = Peak.of(outcome);
        WetKit kit = outcome.car().nitrous().suited(outcome.setup().jets().orElseThrow());
        OptionalDouble passage = kit.passages()
                .map(NozzlePassages::nitrousBore)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
        return new FeedStudy(kit.nitrous(), kit.nozzles(), passage, point.bottle(), point.plenumPressure());
    }

    /**
     * Flow tests that were made, and what each told.
     *
     * @param tests the tests
     * @return one row a test
     */
    public static Listing tests(List<FlowTested> tests) {
        return Listing.of(
                "Flow tests of these jets",
                tests,
                words("Test", FlowTested::name),
                words("Of", test -> test.side().words()),
                column("Jet", QuantityKind.BORE, FlowTested::bore),
                column("Expected", QuantityKind.MASS_FLOW, FlowTested::expected),
                column("Measured", QuantityKind.MASS_FLOW, test -> test.test().flow()),
                column(
                        "Test's own error",
                        QuantityKind.FRACTION,
                        test -> Math.hypot(test.test().deviation(), test.stateDeviation())),
                column(
                        "Factor before, from",
                        QuantityKind.RATIO,
                        test -> test.before().band().low()),
                column("to", QuantityKind.RATIO, test -> test.before().band().high()),
                column(
                        "after, from",
                        QuantityKind.RATIO,
                        test -> test.after().band().low()),
                column("best", QuantityKind.RATIO, test -> test.after().band().best()),
                column("to ", QuantityKind.RATIO, test -> test.after().band().high()),
                words("Mind", test -> test.isSurprising() ? "far from what was known: check it" : ""));
    }

    /**
     * Which test to make first, its cost and its worth.
     *
     * @param advice the advice
     * @return one row a test, the first to make first
     */
    public static Listing of(FlowTestAdvice advice) {
        return Listing.of(
                "Flow tests worth making, the first to make first",
                advice.tests(),
                words("Test", test -> test.side().words()),
                column("with jets of", QuantityKind.BORE, FlowTestAdvice.Worth::bore),
                column("at", QuantityKind.ABSOLUTE_PRESSURE, FlowTestAdvice.Worth::pressure),
                column("Expected flow", QuantityKind.MASS_FLOW, FlowTestAdvice.Worth::flow),
                column("Discharge", QuantityKind.TIME, FlowTestAdvice.Worth::seconds),
                column("goes through", QuantityKind.MASS, FlowTestAdvice.Worth::mass),
                column("is caught", QuantityKind.VOLUME, FlowTestAdvice.Worth::volume),
                column("Lambda +- now", QuantityKind.RATIO, test -> NINETY * test.lambdaNow()),
                column("after", QuantityKind.RATIO, test -> NINETY * test.lambdaAfter()),
                column("Power +- now", QuantityKind.POWER, test -> NINETY * test.powerNow()),
                column("after ", QuantityKind.POWER, test -> NINETY * test.powerAfter()));
    }

    /**
     * How the chances of a plan move with each test, if the tests find what is expected.
     *
     * @param drawn what was drawn, in words
     * @param steps what {@link FlowTestAdvice#chances} gave for it
     * @return one row a state of knowledge
     */
    public static Listing chances(String drawn, List<FlowTestAdvice.Step> steps) {
        return Listing.of(
                "Chances before and after the flow tests, drawn: " + drawn,
                steps,
                words("What is known", FlowTestAdvice.Step::name),
                words("The power is reached", step -> step.chances().reach().text()),
                words("Every limit is kept", step -> step.chances().keep().text()),
                words("Both", step -> step.chances().both().text()),
                column(
                        "Power, nine times out of ten from",
                        QuantityKind.POWER,
                        step -> step.chances().power().quantile(0.05)),
                column("to", QuantityKind.POWER, step -> step.chances().power().quantile(0.95)));
    }

    /**
     * The advice in words.
     *
     * @param advice the advice
     * @return what to do first and what it is good for; that nothing is worth it, where nothing is
     */
    public static String said(FlowTestAdvice advice) {
        if (advice.tests().isEmpty()) {
            return "This plan sprays no nitrous oxide: there are no jets to test.";
        }
        List<FlowTestAdvice.Worth> worth =
                advice.tests().stream().filter(test -> test.seconds() > 0).toList();
        if (worth.isEmpty()) {
            return "No flow test is worth making: the jets are known as well as a test would tell, or do not limit their flow.";
        }
        FlowTestAdvice.Worth first = worth.get(0);
        return String.format(
                Locale.ROOT,
                "Test the %s first: %.1f s through the jets of the plan, %s%s, tell their flow within %.0f %% on the day and %.0f %% in other"
                        + " states, nine times out of ten, and narrow lambda from +- %.3f to +- %.3f. The errors of scale, stopwatch and"
                        + " gauge are in it; a shorter test tells less.",
                first.side().words(),
                first.seconds(),
                Both.of(QuantityKind.MASS, first.mass()),
                Double.isNaN(first.volume()) ? " by the scale" : " or " + Both.of(QuantityKind.VOLUME, first.volume()),
                100 * NINETY * first.after().deviation(),
                100
                        * Math.log(first.after().band().high()
                                / first.after().band().best()),
                NINETY * first.lambdaNow(),
                NINETY * first.lambdaAfter());
    }

    /**
     * The cautions that stand with every flow test.
     *
     * @return a frame
     */
    public static Displayable safety() {
        return new SafetyBox("Before a flow test", Cautions.flowTest());
    }
}
