package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

class FlowOverPressureTest {
    private static final FeedPath PATH = FeedPath.of(
            Tube.level("hose", 3.2, 0.0087),
            Orifice.solenoid("solenoid", 4e-3, 0.004),
            Manifold.equal("block", 6, Tube.level("line", 0.35, 0.004), NitrousJet.of(1.1e-3)));
    private static final double[] PRESSURE = {4.0e6, 4.5e6, 5.0e6, 5.5e6, 6.0e6, 6.5e6, 6.8e6};

    @Test
    void flowRisesLessThanTheSquareRootAndItsBandHoldsIt() {
        FlowOverPressure series = FlowOverPressure.of(PATH, PRESSURE, 5.0e6, 2.5e5);
        int last = PRESSURE.length - 1;
        assertEquals(series.best()[2], series.squareRoot()[2], 1e-12);
        assertTrue(series.best()[last] / series.best()[0] < series.squareRoot()[last] / series.squareRoot()[0]);
        for (int i = 0; i <= last; i++) {
            assertTrue(series.low()[i] < series.best()[i] && series.best()[i] < series.high()[i]);
        }
        assertTrue(series.liquidDensity()[last] < series.liquidDensity()[0]);
        assertFalse(series.measured().isEmpty());
        assertTrue(series.measured().stream().allMatch(p -> p.pressure() >= 4.0e6 && p.pressure() <= 6.8e6));
    }

    @Test
    void bandOfThePathIsThatOfItsHolesDampedByTheLines() {
        FluidState bottle = NitrousOxide.saturatedLiquid(293.15);
        FeedFlow flow = PATH.flow(bottle, 2.5e5);
        FlowBand band = PATH.band(bottle, 2.5e5);
        assertEquals(band, flow.band());
        JetFlow jet = flow.jets().get(0);
        assertTrue(band.low() >= 0.95 * jet.low() / jet.massFlow() && band.low() < 0.9, band::toString);
        assertTrue(band.high() <= 1.05 * jet.high() / jet.massFlow() && band.high() > 1.1, band::toString);
        assertEquals(flow.massFlow() * band.low(), PATH.at(-1).massFlow(bottle, 2.5e5), 1e-9);
        assertEquals(flow.massFlow() * band.high(), PATH.at(1).massFlow(bottle, 2.5e5), 1e-9);
    }
}
