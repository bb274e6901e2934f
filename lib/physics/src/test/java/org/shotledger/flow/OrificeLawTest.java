package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

class OrificeLawTest {
    private static final List<FluidState> INLETS = List.of(
            NitrousOxide.atTemperaturePressure(283, 6.5e6),
            NitrousOxide.atTemperaturePressure(283, 4.6e6),
            NitrousOxide.saturatedLiquid(295),
            NitrousOxide.mixture(290, 0.03),
            NitrousOxide.mixture(255, 0.5),
            NitrousOxide.atTemperaturePressure(312, 9e6),
            NitrousOxide.saturatedVapour(290));

    @Test
    void flowNeverFallsWithThePressureBehindAndLiesInItsBand() {
        for (OrificeLaw law : OrificeLaw.all()) {
            for (Edge edge : Edge.values()) {
                NitrousJet jet = new NitrousJet("jet", 1e-3, 3, edge, Double.NaN).withLaw(law);
                INLETS.forEach(inlet -> assertRises(jet, inlet));
            }
        }
    }

    private static void assertRises(NitrousJet jet, FluidState inlet) {
        double before = 0;
        for (double share = 1; share > 0.04; share -= 0.02) {
            JetFlow flow = jet.flow(inlet, share * inlet.pressure());
            assertTrue(flow.massFlow() >= before * (1 - 1e-7), () -> jet.law().name() + " from " + inlet);
            assertTrue(flow.low() <= flow.massFlow() && flow.massFlow() <= flow.high(), flow::toString);
            assertTrue(share > 0.98 || flow.low() < 0.85 * flow.high(), "a band below choking as well");
            before = flow.massFlow();
        }
        assertTrue(before > 0);
    }

    @Test
    void lawsAreFoundByNameAndUnknownOnesAreRefusedWithTheChoice() {
        OrificeLaw.all().forEach(law -> assertSame(law, OrificeLaw.named(law.name())));
        String message = assertThrows(IllegalArgumentException.class, () -> OrificeLaw.named("magic"))
                .getMessage();
        assertTrue(message.contains("class, equilibrium, long orifice, ideal gas"), message);
    }

    // F1.40 to F1.42 of any two-phase text: 1.00 mm, saturated at 20 degC, coefficient 0.8 passes 18.3 g/s of 22.9
    @Test
    void equilibriumLawIsEquilibriumFluxTimesTheCoefficient() {
        NitrousJet jet = new NitrousJet("jet", 1e-3, 3, Edge.UNKNOWN, 0.8).withLaw(OrificeLaw.EQUILIBRIUM);
        assertEquals(18.3e-3, jet.massFlow(NitrousOxide.saturatedLiquid(293.15), 2e5), 0.05e-3);
    }

    // Lichtarowicz 1965: Cdu = 0.827 - 0.0085 * 4 = 0.793
    @Test
    void longOrificeUsesTheCoefficientOfItsLength() {
        FluidState inlet = NitrousOxide.saturatedLiquid(293.15);
        NitrousJet jet = new NitrousJet("jet", 1e-3, 4, Edge.SQUARE, Double.NaN).withLaw(OrificeLaw.LONG_ORIFICE);
        assertEquals(0.793, jet.flow(inlet, 2e5).shareOfEquilibrium(), 1e-9);
        NitrousJet unknown = NitrousJet.of(1e-3).withLaw(OrificeLaw.LONG_ORIFICE);
        assertThrows(IllegalArgumentException.class, () -> unknown.massFlow(inlet, 2e5));
    }

    // NACA 1135 with gamma 1.275: G = p sqrt(gamma/(R T)) (2/(gamma+1))^((gamma+1)/(2(gamma-1))); at 1 bar, 300 K:
    // 277.3
    @Test
    void idealGasLawAnswersThinVapourAndLeavesLiquidToTheDefault() {
        FluidState gas = NitrousOxide.atTemperaturePressure(300, 1e5);
        NitrousJet jet = new NitrousJet("jet", 1e-3, 3, Edge.UNKNOWN, 1).withLaw(OrificeLaw.IDEAL_GAS);
        double expected = 1e5 * Math.sqrt(1.275 / (8.314463 / 0.0440128 * 300)) * Math.pow(2 / 2.275, 2.275 / 0.55);
        assertEquals(expected, jet.massFlow(gas, 1e4) / jet.area(), 0.005 * expected);
        FluidState liquid = NitrousOxide.saturatedLiquid(290);
        assertEquals("ideal gas", jet.flow(gas, 1e4).model());
        assertEquals("class", jet.flow(liquid, 1e5).model());
        assertEquals(jet.withLaw(OrificeLaw.CLASS).flow(liquid, 1e5), jet.flow(liquid, 1e5));
    }

    // NASA, subcooled nitrogen through a sharp-edged orifice: it does not choke; the jet is 0.61 to 0.62 of Bernoulli's
    @Test
    void thinSharpPlateMayPassTheUnchokedJet() {
        FluidState inlet = NitrousOxide.atTemperaturePressure(283, 5e6);
        NitrousJet plate = new NitrousJet("plate", 1e-3, 0.3, Edge.SQUARE, Double.NaN);
        double unchoked = 0.61 * plate.area() * Incompressible.massFlux(inlet.density(), 5e6, 1e5);
        assertTrue(plate.flow(inlet, 1e5).high() >= unchoked);
    }

    @Test
    void resultSaysWhatLiesOutsideTheMeasuredHolesAndWhichWay() {
        FluidState inlet = NitrousOxide.mixture(285, 0.05);
        assertEquals("", NitrousJet.of(1e-3).flow(inlet, 2e5).outside());
        assertTrue(NitrousJet.of(0.5e-3).flow(inlet, 2e5).outside().contains("smaller holes tend to pass more"));
        FluidState wet = NitrousOxide.mixture(285, 0.4);
        assertTrue(NitrousJet.of(1e-3).flow(wet, 2e5).outside().contains("off either way"));
        NitrousJet tested = NitrousJet.of(0.5e-3).withMeasured(FlowBand.around(0.8, 0.05));
        assertEquals("", tested.flow(inlet, 2e5).outside());
        assertTrue(tested.flow(inlet, 2e5).measured());
    }

    @Test
    void placeInTheBandMovesTheFlowFromOneEndToTheOther() {
        FluidState inlet = NitrousOxide.mixture(285, 0.05);
        NitrousJet jet = NitrousJet.of(1e-3);
        JetFlow flow = jet.flow(inlet, 2e5);
        assertEquals(flow.low(), jet.at(-1).massFlow(inlet, 2e5), 1e-12);
        assertEquals(flow.massFlow(), jet.at(0).massFlow(inlet, 2e5), 1e-12);
        assertEquals(flow.high(), jet.at(1).massFlow(inlet, 2e5), 1e-12);
        assertEquals(flow.high(), jet.at(1).flow(inlet, 2e5).high(), 1e-12);
    }
}
