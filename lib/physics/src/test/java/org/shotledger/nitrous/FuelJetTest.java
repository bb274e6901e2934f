package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.flow.Edge;
import org.shotledger.flow.FlowBand;

class FuelJetTest {
    // Lichtarowicz 1965 by formula: l/d 3 at Re 2e4 0.8000831; ultimate 0.827 - 0.0085 * 3 = 0.8015
    @Test
    void longSquareJetFollowsTheLongOrificeFormula() {
        FuelJet jet = FuelJet.shaped(Edge.SQUARE, 3);
        assertEquals(0.8000831, jet.coefficient(1.9999e4), 1e-4);
        assertEquals(0.8015, jet.coefficient(5e4), 1e-9);
        assertTrue(jet.coefficient(500) < 0.75, "laminar loss");
    }

    // twice the viscosity is half the Reynolds number: a per cent at the 1e4 of a fuel jet
    @Test
    void viscosityOfTheFuelHardlyMatters() {
        FuelJet jet = FuelJet.shaped(Edge.SQUARE, 3);
        assertEquals(1, jet.coefficient(6e3) / jet.coefficient(1.2e4), 0.015);
    }

    // AIAA 2013-3636 fig. 15, square edge, liquid: 0.79 mm 0.710 to 0.731 (L/d 23), 1.93 mm 0.643 to 0.648 (L/d 9.5)
    @Test
    void bandsHoldTheMeasuredCoefficients() {
        double[][] square = {{9.5, 0.643}, {9.5, 0.648}, {12.3, 0.661}, {12.3, 0.691}, {23.3, 0.710}, {23.3, 0.731}};
        for (double[] hole : square) {
            FuelJet jet = FuelJet.shaped(Edge.SQUARE, hole[0]);
            assertTrue(band(jet).holds(hole[1]), hole[0] + " " + band(jet));
        }
        // rounded: 0.77 to 0.78 (AIAA 2013-3636), 0.945 (NASA 1979); unknown: 0.62 to 0.88 (NACA Report 224)
        assertTrue(band(FuelJet.shaped(Edge.ROUNDED, 12.3)).holds(0.775));
        assertTrue(band(FuelJet.shaped(Edge.ROUNDED, 3.2)).holds(0.945));
        assertTrue(band(FuelJet.shaped(Edge.UNKNOWN, Double.NaN)).holds(0.62));
        assertTrue(band(FuelJet.shaped(Edge.UNKNOWN, Double.NaN)).holds(0.88));
    }

    private static FlowBand band(FuelJet jet) {
        return jet.factors().times(jet.coefficient(1e5));
    }

    @Test
    void aFlowTestReplacesTheBand() {
        FuelJet jet = FuelJet.stated(0.8).withMeasured(new FlowBand(0.9, 0.95, 1.0));
        assertEquals(0.8 * 0.95, jet.coefficient(1e5), 1e-12);
        assertEquals(0.8 * 0.9, jet.at(-1).coefficient(1e5), 1e-12);
        assertTrue(jet.source().contains("flow test"));
        assertThrows(IllegalArgumentException.class, () -> FuelJet.stated(1.3));
    }
}
