package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/** What a hole passes by its class worked out by hand from the ideal flow, and what is said beside it word for word. */
class HoleFiguresTest {
    private static final FluidState GAS = NitrousOxide.atTemperaturePressure(300, 1e6);
    private static final FluidState LIQUID = NitrousOxide.saturatedLiquid(288);

    private static double ideal(FluidState inlet, double behind) {
        return HomogeneousEquilibrium.massFlux(inlet, behind);
    }

    private static double flux(Edge edge, double coefficient, FluidState inlet, double behind) {
        NitrousJet jet = new NitrousJet("jet", 1e-3, 3, edge, coefficient);
        return jet.massFlow(inlet, behind) / jet.area();
    }

    // rounded, 3 bores long: C 0.859, k = exp(-3/16.5) = 0.83375; 288 K is 0.930 of critical, so no fade; the excess at
    // the
    // boiling point is 1.087 k = 0.90629; it comes as 1 - (1 - d/0.35)^2: 0.48980 at d = 0.1, all of it from 0.35 on
    @ParameterizedTest
    @CsvSource({"0, 0", "0.1, 0.489796", "0.175, 0.75", "0.35, 1", "0.6, 1", "0.95, 1"})
    void lateBoilingComesWithThePressureBehind(double depth, double comes) {
        double behind = (1 - depth) * LIQUID.pressure() - 1;
        double expected = 0.859 * (1 + 0.906285 * comes) * ideal(LIQUID, behind);
        assertEquals(expected, flux(Edge.ROUNDED, Double.NaN, LIQUID, behind), 2e-5 * expected + 10);
    }

    // 1.1 times the boiling pressure: exp(-(0.1/(0.336 k))^2) = 0.88034 of it is left; behind the hole the depth counts
    // from the
    // boiling pressure, and above it no excess comes
    @ParameterizedTest
    @CsvSource({"1.05, 0", "0.9, 0.489796", "0.5, 1"})
    void liquidAboveItsBoilingPressureHasLessOfIt(double ofBoiling, double comes) {
        double boiling = NitrousOxide.saturationPressure(288);
        FluidState above = NitrousOxide.atTemperaturePressure(288, 1.1 * boiling);
        double expected = 0.859 * (1 + 0.906285 * 0.880338 * comes) * ideal(above, ofBoiling * boiling);
        assertEquals(expected, flux(Edge.ROUNDED, Double.NaN, above, ofBoiling * boiling), 1e-4 * expected);
    }

    // bubbles: exp(-0.001/0.0005) = 0.135335 of the excess; a stated coefficient takes the place of both of the class
    @Test
    void bubblesAndAStatedCoefficient() {
        FluidState bubbles = NitrousOxide.mixture(288, 0.001);
        double expected = (0.999 * 0.859 * (1 + 0.906285 * 0.135335) + 0.001 * 0.95) * ideal(bubbles, 1e5);
        assertEquals(expected, flux(Edge.ROUNDED, Double.NaN, bubbles, 1e5), 2e-5 * expected);
        FluidState wet = NitrousOxide.mixture(288, 0.2);
        expected = (0.8 * 0.859 + 0.2 * 0.95) * ideal(wet, 1e5);
        assertEquals(expected, flux(Edge.ROUNDED, Double.NaN, wet, 1e5), 1e-9 * expected);
        assertEquals(0.7 * ideal(wet, 1e5), flux(Edge.ROUNDED, 0.7, wet, 1e5), 1e-6);
        assertEquals(0.84 * ideal(GAS, 1e5), flux(Edge.SQUARE, Double.NaN, GAS, 1e5), 1e-6);
        FluidState dense = NitrousOxide.atTemperaturePressure(315, 12e6);
        assertEquals(0.62 * ideal(dense, 1e5), flux(Edge.SQUARE, Double.NaN, dense, 1e5), 1e-6);
        assertEquals(0.777 * ideal(wet, 1e5), lawFlux(OrificeLaw.EQUILIBRIUM, Edge.SQUARE, wet), 1e-6);
        double gas = IsentropicGas.massFlux(1e6, GAS.density(), 1.275, 1e5);
        assertEquals(0.84 * gas, lawFlux(OrificeLaw.IDEAL_GAS, Edge.SQUARE, GAS), 1e-6);
    }

    private static double lawFlux(OrificeLaw law, Edge edge, FluidState inlet) {
        NitrousJet jet = new NitrousJet("jet", 1e-3, 3, edge, Double.NaN).withLaw(law);
        return jet.massFlow(inlet, 1e5) / jet.area();
    }

    // NACA 1135 eq. 44: p*/p0 = (2/2.275)^(1.275/0.275) = 0.5503
    @Test
    void theIdealGasLawChokesWhereTheGasDoes() {
        NitrousJet jet = new NitrousJet("jet", 1e-3, 3, Edge.SQUARE, 0.9).withLaw(OrificeLaw.IDEAL_GAS);
        assertEquals(0.55029, jet.curve(GAS).chokingPressure() / 1e6, 1e-5);
        // a small drop is Bernoulli's: sqrt(2 rho dp)
        assertEquals(
                0.9 * jet.area() * Math.sqrt(2 * GAS.density() * 1e3),
                jet.flow(GAS, 0.999e6).massFlow(),
                1e-7);
    }

    // Bernoulli for a drop so small that the density stays: the heads of enthalpy would cancel there
    @ParameterizedTest
    @CsvSource({"280, 6e6", "300, 1e6"})
    void aSmallDropIsBernoullis(double temperature, double pressure) {
        FluidState state = NitrousOxide.atTemperaturePressure(temperature, pressure);
        for (double share : new double[] {1e-6, 1e-4, 5e-4}) {
            double expected = Math.sqrt(2 * state.density() * share * pressure);
            assertEquals(expected, ideal(state, (1 - share) * pressure), 5e-4 * expected);
        }
    }

    @Test
    void aThroatIsOneState() {
        Throat throat = HomogeneousEquilibrium.criticalFlux(LIQUID);
        FluidState there = NitrousOxide.atPressureEntropy(throat.pressure(), LIQUID.entropy());
        assertEquals(there.density(), throat.density(), 1e-6 * there.density());
        assertEquals(throat.massFlux(), throat.density() * throat.velocity(), 1e-9 * throat.massFlux());
        assertEquals(2 * (LIQUID.enthalpy() - there.enthalpy()), throat.velocity() * throat.velocity(), 1);
        assertTrue(throat.choked());
        assertEquals("choked at the speed of sound", throat.choking().words());
        Throat open = HomogeneousEquilibrium.throatAt(LIQUID, 0.99 * LIQUID.pressure());
        assertFalse(open.choked());
        assertEquals("not choked", open.choking().words());
    }

    @Test
    void everyLawNamesItsSources() {
        NitrousJet plain = NitrousJet.of(1e-3);
        NitrousJet stated = new NitrousJet("jet", 1e-3, 4, Edge.SQUARE, 0.8);
        String wallis = "Wallis, One-dimensional Two-phase Flow (1969), chapter 2";
        String holes = wallis
                + "; share by class of hole from measured flows, AIAA 2013-3636 (2013), Aerospace 9-828 (2022),"
                + " HVAC&R Research 10-1 (2004), Energies 15-6765 (2022), NASA (1979)";
        assertEquals(holes, OrificeLaw.CLASS.source(plain, LIQUID));
        assertEquals(
                wallis + "; coefficient 0.777 of measured plain holes", OrificeLaw.EQUILIBRIUM.source(plain, LIQUID));
        assertEquals(wallis + "; coefficient stated", OrificeLaw.EQUILIBRIUM.source(stated, LIQUID));
        assertEquals(
                wallis + "; coefficient of Lichtarowicz, Duggins and Markland, J. Mech. Eng. Sci. 7, 210-219 (1965)",
                OrificeLaw.LONG_ORIFICE.source(stated, LIQUID));
        assertEquals("NACA Report 1135 (1953); coefficient stated", OrificeLaw.IDEAL_GAS.source(stated, GAS));
        assertEquals("NACA Report 1135 (1953); coefficient by class of hole", OrificeLaw.IDEAL_GAS.source(plain, GAS));
        assertEquals(holes, OrificeLaw.IDEAL_GAS.source(plain, LIQUID));
        NitrousJet tested = plain.withMeasured(FlowBand.around(0.9, 0.02));
        assertEquals(holes, plain.flow(LIQUID, 1e5).source());
        assertEquals(
                holes + "; factor from a flow test", tested.flow(LIQUID, 1e5).source());
        assertEquals("square edge, two-phase inlet", new HoleClass(Edge.SQUARE, Inlet.TWO_PHASE).title());
    }

    // what was measured ends at 0.79 and 3.56 mm, 23.3 bores, 0.75 of the critical temperature, 15 % of vapour; the
    // ends count as
    // measured
    @Test
    void whatLiesOutsideIsSaidWordForWord() {
        assertEquals("", outside(0.79e-3, 3, Edge.UNKNOWN, LIQUID));
        assertEquals("", outside(3.56e-3, 23.3, Edge.UNKNOWN, LIQUID));
        assertEquals("", outside(1e-3, 3, Edge.UNKNOWN, GAS));
        FluidState edge = NitrousOxide.saturatedLiquid(0.75 * NitrousOxide.CRITICAL_TEMPERATURE);
        assertEquals("", outside(1e-3, 3, Edge.ROUNDED, edge));
        FluidState wet = NitrousOxide.mixture(280, 0.15);
        assertEquals("", outside(1e-3, 3, Edge.SQUARE, wet));
        assertEquals(
                "The bore is above the largest measured, 3.56 mm (140 thou); larger holes tend to pass less for their area."
                        + " The hole is longer than any measured, 23 bores; friction makes it pass less."
                        + " It is colder before the hole than in any measurement; boiling comes later in the cold and more passes.",
                outside(4e-3, 24, Edge.SQUARE, NitrousOxide.saturatedLiquid(230)));
        assertEquals(
                "No rounded hole was measured with bubbles before it; more may pass rather than less.",
                outside(1e-3, 3, Edge.ROUNDED, wet));
        assertEquals(
                "The one hole measured with nitrous oxide vapour passed less than this class; less may pass.",
                outside(1e-3, 3, Edge.ROUNDED, GAS));
    }

    private static String outside(double bore, double length, Edge edge, FluidState inlet) {
        return new NitrousJet("jet", bore, length, edge, Double.NaN)
                .flow(inlet, 1e5)
                .outside();
    }

    @Test
    void whatWasMeasuredNearest() {
        FluidState cold = NitrousOxide.atTemperaturePressure(270, 9e6);
        List<MeasuredHole> square = MeasuredHole.nearest(Edge.SQUARE, cold);
        assertTrue(!square.isEmpty() && square.stream().allMatch(h -> h.edge() == Edge.SQUARE));
        assertTrue(square.stream().allMatch(h -> h.quality() == 0 && h.aboveBoiling() >= 1.3));
        List<MeasuredHole> any = MeasuredHole.nearest(Edge.UNKNOWN, cold);
        assertTrue(any.containsAll(square) && any.stream().anyMatch(h -> h.edge() == Edge.ROUNDED));
        // 48 short tubes with bubbles before them are all there is; rounded ones were never measured
        assertEquals(
                48,
                MeasuredHole.nearest(Edge.ROUNDED, NitrousOxide.mixture(280, 0.1))
                        .size());
        List<MeasuredHole> lines = MeasuredHole.all().stream()
                .filter(MeasuredHole::atTheEndOfALine)
                .toList();
        assertEquals(11, lines.size());
        assertTrue(lines.stream().allMatch(h -> h.source().equals("Aerospace 9-828 (2022)")));
        MeasuredHole first = MeasuredHole.all().get(0);
        assertEquals(3.555e-3, first.bore(), 1e-12);
    }

    /** Every measured point is the flow of an equilibrium hole of six jets' area with the measured share as coefficient. */
    @Test
    void measuredPointsAreBroughtToTheJetsAreaAndState() {
        FeedPath path = FeedPath.of(
                Tube.level("hose", 3.2, 0.0087),
                Manifold.equal("block", 6, new NitrousJet("jet", 1e-3, 3, Edge.SQUARE, Double.NaN)));
        double[] falling = {6.5e6, 5.0e6, 3.5e6};
        List<FlowOverPressure.Point> points =
                FlowOverPressure.of(path, falling, 5.0e6, 2.5e5).measured();
        List<FlowOverPressure.Point> expected = Stream.concat(
                        MeasuredHole.all().stream().filter(h -> h.edge() == Edge.SQUARE && h.quality() > 0),
                        MeasuredHole.all().stream().filter(h -> h.source().startsWith("Aerospace") && h.quality() == 0))
                .map(HoleFiguresTest::ofSixJets)
                .filter(p -> p.pressure() >= 3.5e6 && p.pressure() <= 6.5e6)
                .toList();
        assertTrue(expected.size() > 20 && expected.size() == points.size(), expected.size() + " " + points.size());
        Comparator<FlowOverPressure.Point> order = Comparator.comparing(FlowOverPressure.Point::flow);
        for (int i = 0; i < expected.size(); i++) {
            FlowOverPressure.Point want =
                    expected.stream().sorted(order).toList().get(i);
            FlowOverPressure.Point is = points.stream().sorted(order).toList().get(i);
            assertEquals(want.source(), is.source());
            assertEquals(want.pressure(), is.pressure(), 1e-6 * want.pressure());
            assertEquals(want.flow(), is.flow(), 1e-6 * want.flow());
        }
    }

    private static FlowOverPressure.Point ofSixJets(MeasuredHole hole) {
        double t = hole.reducedTemperature() * NitrousOxide.CRITICAL_TEMPERATURE;
        FluidState state =
                hole.quality() > 0 ? NitrousOxide.mixture(t, hole.quality()) : NitrousOxide.saturatedLiquid(t);
        NitrousJet jet = new NitrousJet("", 1e-3, 3, Edge.UNKNOWN, hole.share() / 2).withLaw(OrificeLaw.EQUILIBRIUM);
        return new FlowOverPressure.Point(hole.source(), state.pressure(), 12 * jet.massFlow(state, 1e5));
    }

    // by hand: 250 ml of 0.74 kg/l in 20 s are 9.25 g/s; errors 2 % and 1 %: hypot 2.236 %
    @Test
    void aMeasureOfLiquidIsAFlow() {
        FlowTest test = FlowTest.ofLiquid(250e-6, 5e-6, 740, 20, 0.2);
        assertEquals(9.25e-3, test.flow(), 1e-12);
        assertEquals(0.0223607, test.deviation(), 1e-7);
    }

    @Test
    void aTestThatCannotBeIsRefusedWithItsFigures() {
        FlowFactor untested = FlowFactor.untested(new FlowBand(0.65, 1, 1.8));
        // eight times more or less is the farthest: 0.004 / 8 to 0.004 * 8
        assertEquals(
                "The flow test of 40.0 g/s lies outside what any jet coefficient gives, 0.5 g/s to 32.0 g/s; check the masses, the"
                        + " time, the jets and the pressure.",
                refused(untested, new FlowTest(0.4, 0.004, 10, 0), 1));
        assertEquals(
                "The flow test of 30.0 g/s says nothing about the jets: something before them limits the flow; test with smaller"
                        + " jets.",
                refused(untested, new FlowTest(0.3, 0.003, 10, 0), 1e-3));
        // a flow that goes as the cube root of the factor answers with a third
        assertEquals(1 / 3.0, untested.effect(Math::cbrt), 1e-9);
        FlowFactor less = new FlowFactor(0.1, 0.03, 2, 0.5).lessSure(0.04);
        assertEquals(new FlowFactor(0.1, Math.hypot(0.03, 0.04), 2, 0.5), less);
    }

    private static String refused(FlowFactor factor, FlowTest test, double share) {
        return assertThrows(
                        IllegalArgumentException.class,
                        () -> factor.after(
                                test, f -> share == 1 ? 0.004 * f : test.flow() * (1 + share * Math.log(f)), 0))
                .getMessage();
    }

    // nine tenths of a normal logarithm are 2 * 1.6449 deviations wide
    @Test
    void aFlowTellsItsErrorAndWhatIsOutside() {
        JetFlow jet = NitrousJet.of(0.5e-3).flow(LIQUID, 1e5);
        assertEquals(Math.log(jet.high() / jet.low()) / 3.2898, jet.expectedError(), 1e-9);
        assertEquals(0, NitrousJet.of(0).flow(LIQUID, 1e5).expectedError());
        assertEquals(0, NitrousJet.of(0).flow(LIQUID, 1e5).shareOfEquilibrium());
        JetFlow high = NitrousJet.of(0.5e-3).at(1).flow(LIQUID, 1e5);
        assertEquals(jet.high(), high.massFlow(), 1e-12);
        assertEquals(jet.high() / jet.massFlow(), high.shareOfEquilibrium() / jet.shareOfEquilibrium(), 1e-9);
        JetFlow inside = NitrousJet.of(1e-3).flow(LIQUID, 1e5);
        FeedFlow flow = new FeedFlow(0.02, "jet", "", List.of(), List.of(inside, jet, jet), LIQUID, 0.05, 1e-4);
        assertEquals(
                List.of(
                        "The bore is below the smallest measured, 0.79 mm (31 thou); smaller holes tend to pass more for their area."),
                flow.outside());
        assertFalse(flow.measured());
        assertEquals(2.5, flow.fillTime(), 1e-12);
        assertEquals(Double.POSITIVE_INFINITY, flow.times(0).fillTime());
        assertEquals(0.005, flow.times(0.25).massFlow(), 1e-15);
        assertEquals(flow, flow.times(0.25).times(4));
        JetFlow tested =
                NitrousJet.of(1e-3).withMeasured(FlowBand.around(1, 0.02)).flow(LIQUID, 1e5);
        assertTrue(new FeedFlow(0.02, "", "", List.of(), List.of(inside, tested), LIQUID, 0, 0).measured());
        FlowBand band = new FlowBand(2, 3, 5).times(3);
        assertEquals(new FlowBand(6, 9, 15), band);
    }

    @Test
    void whatMeansNothingIsRefusedWithItsFigure() {
        assertRefused(
                "Incompressible flow: density is 0.0 kg/m3; it must be a finite number above zero.",
                () -> Incompressible.massFlux(0, 2e5, 1e5));
        assertRefused(
                "Isentropic gas flow: stagnation pressure is 0.0 Pa; it must be a finite number above zero.",
                () -> IsentropicGas.massFlux(0, 9, 1.3, 0));
        assertRefused(
                "Isentropic gas flow: stagnation density is -1.0 kg/m3; it must be a finite number above zero.",
                () -> IsentropicGas.massFlux(2e5, -1, 1.3, 1e5));
        assertRefused(
                "Isentropic gas flow: ratio of heat capacities is 1.0 ; allowed are 1.0001 to 3.0 .",
                () -> IsentropicGas.massFlux(2e5, 9, 1, 1e5));
        FlowFactor untested = FlowFactor.untested(new FlowBand(0.65, 1, 1.8));
        assertRefused(
                "Flow test: wanted deviation is 0.0 ; it must be a finite number above zero.",
                () -> FlowTestPlan.of(untested, 0, 0.03, 0.005, 0.2, 0));
        assertRefused(
                "Flow test: expected flow is 0.0 kg/s; it must be a finite number above zero.",
                () -> FlowTestPlan.of(untested, 0.03, 0, 0.005, 0.2, 0));
        FlowTest test = new FlowTest(0.3, 0.003, 10, 0);
        assertRefused(
                "Flow test: error from the state is -0.1 ; it must be a finite number, zero or above.",
                () -> untested.after(test, f -> 0.03 * f, -0.1));
    }

    private static void assertRefused(String sentence, Executable call) {
        assertEquals(
                sentence, assertThrows(IllegalArgumentException.class, call).getMessage());
    }
}
