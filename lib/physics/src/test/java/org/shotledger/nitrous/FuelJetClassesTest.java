package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.flow.Edge;
import org.shotledger.flow.FlowBand;

/** Which coefficient and which band each class of hole takes, at and around the lengths that part them. */
class FuelJetClassesTest {
    private static final double FAST = 1e5;

    private static FuelJet square(double length) {
        return FuelJet.shaped(Edge.SQUARE, length);
    }

    /**
     * Free sharp orifice 0.61 (any text of hydraulics; the theory of a slot is pi/(pi + 2) = 0.611); full-running hole 2 bores long
     * 0.827 - 0.017 = 0.81 (Lichtarowicz 1965); between them the geometric mean sqrt(0.61 x 0.81) = 0.703.
     */
    @Test
    void square_holes_by_their_length() {
        assertEquals(Math.PI / (Math.PI + 2), square(0).coefficient(FAST), 0.002);
        assertEquals(0.61, square(0.4999).coefficient(FAST), 1e-12);
        assertEquals(0.703, square(0.5).coefficient(FAST), 5e-4);
        assertEquals(0.703, square(1.9999).coefficient(FAST), 5e-4);
        assertEquals(0.81, square(2).coefficient(FAST), 1e-9);
        assertEquals(0.827 - 0.085, square(10).coefficient(FAST), 1e-9);
        assertEquals(0.827 - 0.085, square(60).coefficient(FAST), 1e-9, "beyond 10 bores that of 10");
    }

    /** Small round holes measured 0.62 to 0.88 (NACA Report 224): the middle, whatever is not known. */
    @Test
    void what_is_not_known_takes_the_middle_and_the_widest_band() {
        for (FuelJet jet : new FuelJet[] {square(Double.NaN), FuelJet.shaped(Edge.UNKNOWN, 5)}) {
            assertEquals((0.62 + 0.88) / 2, jet.coefficient(FAST), 0.011);
            FlowBand band = jet.factors().times(jet.coefficient(FAST));
            assertTrue(band.holds(0.62) && band.holds(0.88), band.toString());
            for (double length : new double[] {0.2, 1, 5}) {
                FlowBand known = square(length).factors();
                assertTrue(known.high() / known.low() < band.high() / band.low(), "less is known at " + length);
            }
        }
    }

    /** Where the jet may lie on to the wall or not, its band reaches both: 0.61 below and 0.81 above. */
    @Test
    void a_band_reaches_both_neighbours_where_the_flow_may_be_either() {
        for (double length : new double[] {0.5, 1, 1.9999}) {
            FlowBand band = square(length).factors().times(square(length).coefficient(FAST));
            assertTrue(band.holds(0.61) && band.holds(0.81), band.toString());
        }
        FlowBand sharp = square(0.3).factors().times(square(0.3).coefficient(FAST));
        assertTrue(sharp.holds(0.59) && sharp.holds(0.64) && !sharp.holds(0.70), sharp.toString());
        FlowBand full = square(2).factors().times(square(2).coefficient(FAST));
        assertTrue(!full.holds(0.61) && full.holds(0.81), full.toString());
    }

    /** The published formula ends at Re 20 000 with 0.8001; from there on its limit 0.8015 stands. */
    @Test
    void the_reynolds_number_counts_up_to_twenty_thousand() {
        assertEquals(0.8015, square(3).coefficient(2e4), 1e-9);
        assertEquals(0.8001, square(3).coefficient(1.99999e4), 1e-4);
        assertEquals(square(3).coefficient(10), square(3).coefficient(1), "below 10 that of 10");
        assertEquals(square(1).coefficient(100), square(1).coefficient(FAST));
    }

    @Test
    void where_the_coefficient_comes_from_is_told() {
        assertEquals("free sharp orifice", square(0.3).source());
        assertTrue(square(3).source().startsWith("Lichtarowicz"), square(3).source());
        assertTrue(FuelJet.shaped(Edge.ROUNDED, 3).source().startsWith("rounded holes"));
        assertTrue(FuelJet.shaped(Edge.UNKNOWN, 3).source().contains("NACA Report 224"));
        assertEquals("stated in the sheet", FuelJet.stated(0.8).source());
        assertEquals(
                "stated in the sheet; factor from a flow test",
                FuelJet.stated(0.8).withMeasured(FlowBand.EXACT).source());
    }

    @Test
    void a_jet_longer_than_measured_is_told_unless_it_was_tested_or_stated() {
        assertTrue(square(10.1).outside().startsWith("The fuel jet is longer than the 10 bores"));
        assertEquals("", square(10).outside());
        assertEquals("", FuelJet.shaped(Edge.ROUNDED, 12).outside());
        assertEquals("", square(12).withMeasured(FlowBand.EXACT).outside());
        FuelJet stated = new FuelJet(Edge.SQUARE, 12, 0.7, square(12).measured(), 0);
        assertEquals("", stated.outside());
    }

    @Test
    void length_and_coefficient_have_their_ranges() {
        assertEquals(1, FuelJet.stated(1).coefficient(FAST));
        for (double bad : new double[] {0, 1.001}) {
            var e = assertThrows(IllegalArgumentException.class, () -> FuelJet.stated(bad));
            assertEquals(
                    "The fuel jet's discharge coefficient is " + bad + "; allowed is above 0, at most 1.",
                    e.getMessage());
        }
        assertEquals("", FuelJet.shaped(Edge.ROUNDED, 100).outside());
        for (double bad : new double[] {-0.1, 100.1}) {
            var e = assertThrows(IllegalArgumentException.class, () -> square(bad));
            assertEquals("The fuel jet's length over bore is " + bad + "; allowed is 0 to 100.", e.getMessage());
        }
    }
}
