package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/** The formulas of holes and bands worked out by hand with the constants that stand beside them. */
class HoleFormulasTest {
    private static final ClassFit FIT = ClassFit.MEASURED;

    @ParameterizedTest
    @CsvSource({
        "ROUNDED, 3, 0.859, 0.95",
        "UNKNOWN, 3, 0.777, 0.777",
        "SQUARE, 4, 0.625, 0.84",
        "SQUARE, 40, 0.73, 0.84",
        "SQUARE, NaN, 0.777, 0.84",
    })
    void coefficientsOfLiquidAndVapour(Edge edge, double length, double liquid, double vapour) {
        assertEquals(liquid, FIT.liquid(edge, length), 1e-12);
        assertEquals(vapour, FIT.vapour(edge), 1e-12);
    }

    // keep = exp(-3/16.5) = 0.8337, or 0.441 where the length is not known; 1.087 keep at the boiling point; over it
    // exp(-((1.2 - 1)/(0.336 keep))^2); half of it 0.025 below the critical temperature; exp(-x/0.0005) with bubbles,
    // but for a
    // square edge
    @ParameterizedTest
    @CsvSource({
        "ROUNDED, 3, 0.94, 1.0, 0, 0.9063",
        "ROUNDED, 3, 0.94, 1.2, 0, 0.5444",
        "ROUNDED, 3, 0.975, 1.0, 0, 0.4531",
        "ROUNDED, NaN, 0.94, 1.0, 0, 0.4794",
        "ROUNDED, 3, 0.94, 1.0, 0.001, 0.1227",
        "SQUARE, 3, 0.94, 1.0, 0.001, 0.9063",
        "ROUNDED, 3, 1.0, 1.0, 0, 0",
        "ROUNDED, 3, 0.94, 3.0, 0, 0",
    })
    void lateBoilingPassesMore(Edge edge, double length, double reduced, double above, double quality, double excess) {
        assertEquals(excess, FIT.excess(edge, length, reduced, above, quality), 1e-4);
    }

    // (1 - x) liquid (1 + excess) + x vapour
    @Test
    void shareOfTheIdealFlow() {
        assertEquals(0.859 * 1.9063, FIT.share(Edge.ROUNDED, 3, 0.94, 1, 0), 2e-4);
        assertEquals(0.9 * 0.859 + 0.1 * 0.95, FIT.share(Edge.ROUNDED, 3, 0.94, 1, 0.1), 1e-9);
        assertEquals(0.95, FIT.share(Edge.ROUNDED, 3, 0.94, 1, 1), 1e-12);
    }

    // exp(1.6449 * 0.1) = 1.1788: nine in ten of a normal logarithm
    @Test
    void bandOfALogarithm() {
        FlowBand band = FlowBand.around(0.8, 0.1);
        assertEquals(0.8 / 1.17879, band.low(), 1e-5);
        assertEquals(0.8 * 1.17879, band.high(), 1e-5);
        assertEquals(0.1, band.logarithmicDeviation(), 1e-9);
        assertEquals(band.low(), band.at(-1), 1e-12);
        assertEquals(0.8, band.at(0), 1e-12);
        assertEquals(band.high(), band.at(1), 1e-12);
        FlowBand skew = new FlowBand(0.5, 1, 4);
        assertEquals(2, skew.at(0.5), 1e-12);
        assertEquals(Math.sqrt(0.5), skew.at(-0.5), 1e-12);
        assertEquals(new FlowBand(1, 2, 8), skew.times(2));
        assertTrue(skew.holds(0.5) && skew.holds(4) && skew.holds(1));
        assertFalse(skew.holds(0.49) || skew.holds(4.01));
        for (double[] bad : new double[][] {{0, 1, 2}, {2, 1, 3}, {1, 3, 2}, {1, 2, Double.POSITIVE_INFINITY}}) {
            assertThrows(IllegalArgumentException.class, () -> new FlowBand(bad[0], bad[1], bad[2]));
        }
    }

    @Test
    void whatStandsBeforeAHole() {
        double boiling = NitrousOxide.saturationPressure(280);
        assertEquals(Inlet.SATURATED, Inlet.of(NitrousOxide.saturatedLiquid(280)));
        assertEquals(Inlet.VAPOUR, Inlet.of(NitrousOxide.saturatedVapour(280)));
        assertEquals(Inlet.TWO_PHASE, Inlet.of(NitrousOxide.mixture(280, 0.2)));
        assertEquals(Inlet.SATURATED, Inlet.of(NitrousOxide.atTemperaturePressure(280, 1.29 * boiling)));
        assertEquals(Inlet.SUBCOOLED, Inlet.of(NitrousOxide.atTemperaturePressure(280, 1.31 * boiling)));
        assertEquals(Inlet.VAPOUR, Inlet.of(NitrousOxide.atTemperaturePressure(280, 0.5 * boiling)));
        assertEquals(Inlet.VAPOUR, Inlet.of(NitrousOxide.atTemperaturePressure(320, 2e6)));
        assertEquals(Inlet.DENSE, Inlet.of(NitrousOxide.atTemperaturePressure(315, 12e6)));
        assertEquals(1, Inlet.aboveBoiling(NitrousOxide.mixture(280, 0.2)));
        assertEquals(1.5, Inlet.aboveBoiling(NitrousOxide.atTemperaturePressure(280, 1.5 * boiling)), 1e-9);
        for (Inlet inlet : Inlet.values()) {
            assertFalse(inlet.words().isBlank());
        }
    }

    // Borda and Carnot: behind a sudden widening G_line v (G_jet - G_line) comes back, at most half of what was lost:
    // with G_line = G_jet / 2 it is v G_jet^2 / 4, and v G_jet^2 / 2 was lost
    @Test
    void aLineBehindAHoleGetsPressureBack() {
        FluidState liquid = NitrousOxide.atTemperaturePressure(250, 8e6);
        Orifice wide = Orifice.solenoid("hole", 2e-3, 5e-3);
        double flow = 0.12;
        double throat = wide.hole().outletPressure(liquid, flow);
        double volume =
                1 / NitrousOxide.atPressureEnthalpy(throat, liquid.enthalpy()).density();
        double jet = Math.sqrt(2 * (8e6 - throat) / volume);
        double line = flow / (Math.PI / 4 * 25e-6);
        double back = wide.outletPressure(liquid, flow) - throat;
        assertEquals(line * volume * (jet - line), back, 1e-6 * back);
        assertTrue(back > 0.05 * (8e6 - throat) && back < 0.5 * (8e6 - throat));
        double most = Orifice.solenoid("hole", 2e-3, 2.2e-3).outletPressure(liquid, flow) - throat;
        assertTrue(most > back && most < 0.5 * (8e6 - throat));
        assertEquals(throat, Orifice.solenoid("hole", 2e-3, 2e-3).outletPressure(liquid, flow));
        assertEquals(8e6, wide.outletPressure(liquid, 0), 1);
        assertEquals(wide.hole().area() * 2e-3 * 3, wide.volume(), 1e-15);
        assertEquals("hole has no hole.", Orifice.solenoid("hole", 0, 5e-3).blocked());
        assertEquals("", wide.blocked());
        assertTrue(Double.isNaN(wide.outletPressure(liquid, 1)));
        assertTrue(wide.shortfall(liquid, 1) < -0.5);
        assertEquals(0, wide.shortfall(liquid, 0.01));
    }

    // the stream of given pressure and enthalpy is the state of the fluid there
    @Test
    void aStreamIsAState() {
        for (FluidState state : new FluidState[] {
            NitrousOxide.mixture(280, 0.2),
            NitrousOxide.mixture(270, 0.01),
            NitrousOxide.atTemperaturePressure(260, 6e6),
            NitrousOxide.atTemperaturePressure(300, 2e6),
            NitrousOxide.atTemperaturePressure(320, 9e6)
        }) {
            FluidState stream =
                    new Stream().to(state.pressure(), state.enthalpy()).state();
            assertEquals(state.density(), stream.density(), 1e-6 * state.density());
            assertEquals(state.temperature(), stream.temperature(), 1e-5);
            assertEquals(state.entropy(), stream.entropy(), 1e-4 * Math.abs(state.entropy()));
            assertEquals(state.internalEnergy(), stream.internalEnergy(), 1e-4 * Math.abs(state.internalEnergy()) + 1);
            assertEquals(state.isSaturated(), stream.isSaturated());
        }
        Stream stream = new Stream();
        double wet = stream.to(
                        NitrousOxide.saturationPressure(280),
                        NitrousOxide.mixture(280, 0.2).enthalpy())
                .viscosity();
        assertEquals(Friction.mcAdams(0.2, Viscosity.liquid(280), Viscosity.vapour(280)), wet, 1e-6 * wet);
        FluidState liquid = NitrousOxide.atTemperaturePressure(260, 6e6);
        assertEquals(Viscosity.liquid(260), stream.to(6e6, liquid.enthalpy()).viscosity(), 1e-9);
        FluidState gas = NitrousOxide.atTemperaturePressure(300, 2e6);
        assertEquals(Viscosity.vapour(300), stream.to(2e6, gas.enthalpy()).viscosity(), 1e-9);
    }

    // Bernoulli for liquid far from boiling: a valve of Kv 1 passes 1 m3/h of water, 1000 kg/m3, at 1 bar (IEC 60534)
    @Test
    void aValveAndALossTakeTheirHead() {
        FluidState liquid = NitrousOxide.atTemperaturePressure(250, 8e6);
        FlowValve valve = FlowValve.open("valve", 0.8);
        double flow = 0.1;
        double water = flow / Math.sqrt(1000 * liquid.density());
        double lost = 1e5 * Math.pow(water * 3600 / 0.8, 2);
        assertEquals(lost, 8e6 - valve.outletPressure(liquid, flow), 0.01 * lost);
        assertEquals(8e6, valve.outletPressure(liquid, 0));
        FlowValve half = new FlowValve("valve", 0.8, 0.5, 1e-5);
        assertEquals(4 * lost, 8e6 - half.outletPressure(liquid, flow), 0.04 * lost);
        assertEquals(1e-5, half.volume());
        LocalLoss loss = new LocalLoss("bend", 4e-3, 1.5);
        double flux = flow / (Math.PI / 4 * 16e-6);
        double head = 1.5 * flux * flux / 2 / liquid.density();
        assertEquals(head, 8e6 - loss.outletPressure(liquid, flow), 0.01 * head);
        assertEquals(0, loss.volume());
        assertTrue(Double.isNaN(loss.outletPressure(liquid, 5)) && loss.shortfall(liquid, 5) < 0);
        assertThrows(IllegalArgumentException.class, () -> new LocalLoss("bend", 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new FlowValve("valve", 0.8, 1.1, 0));
    }

    @Test
    void aJetIsChangedInOneThing() {
        NitrousJet jet = new NitrousJet("jet", 1e-3, 5, Edge.SQUARE, 0.7);
        assertEquals(Math.PI / 4 * 1e-6, jet.area(), 1e-15);
        assertEquals(jet.area() * 5e-3, jet.volume(), 1e-15);
        assertEquals(2e-3, jet.withBore(2e-3).bore());
        assertEquals(jet, jet.withBore(2e-3).withBore(1e-3));
        assertEquals("other", jet.named("other").name());
        assertEquals(jet, jet.named("other").named("jet"));
        assertEquals(1, jet.at(1).place());
        FluidState liquid = NitrousOxide.saturatedLiquid(290);
        FlowBand tested = FlowBand.around(0.9, 0.02);
        double best = jet.massFlow(liquid, 2e5);
        assertEquals(0.9 * best, jet.withMeasured(tested).massFlow(liquid, 2e5), 1e-9);
        assertEquals(tested.high() * best, jet.withMeasured(tested).at(1).massFlow(liquid, 2e5), 1e-9);
        assertEquals(0, jet.massFlow(liquid, liquid.pressure()));
        assertEquals(0, jet.withBore(0).massFlow(liquid, 2e5));
        assertEquals("jet has no hole.", jet.withBore(0).blocked());
        double half = jet.outletPressure(liquid, 0.5 * best);
        assertEquals(0.5 * best, jet.massFlow(liquid, half), 1e-5 * best);
        assertTrue(Double.isNaN(jet.outletPressure(liquid, 1.01 * best)));
        assertEquals(best - 1, jet.shortfall(liquid, 1), 1e-6);
        assertEquals(liquid.pressure(), jet.outletPressure(liquid, 0));
        assertThrows(IllegalArgumentException.class, () -> new NitrousJet("jet", -1, 5, Edge.SQUARE, 0.7));
        assertThrows(IllegalArgumentException.class, () -> new NitrousJet("jet", 1e-3, 101, Edge.SQUARE, 0.7));
        assertThrows(IllegalArgumentException.class, () -> new NitrousJet("jet", 1e-3, 5, Edge.SQUARE, 1.3));
        assertThrows(IllegalArgumentException.class, () -> jet.at(3.1));
    }
}
