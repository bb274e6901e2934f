package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What a part may be, on both sides of each bound its documentation states. */
class NitrousRangesTest {
    private static final double LARGEST = Math.nextDown(0.02);

    private static void refused(String sentence, Executable e) {
        assertEquals(sentence, assertThrows(IllegalArgumentException.class, e).getMessage());
    }

    @Test
    void jets_and_passages() {
        assertNotNull(new JetPair(LARGEST, LARGEST));
        assertNotNull(new NozzlePassages(LARGEST, LARGEST));
        for (double bad : new double[] {0, 0.02}) {
            refused(
                    "The nitrous-oxide jet has a hole of " + bad + " m; give a diameter above 0 and below 0.02 m.",
                    () -> new JetPair(bad, 1e-3));
            refused(
                    "The fuel jet has a hole of " + bad + " m; give a diameter above 0 and below 0.02 m.",
                    () -> new JetPair(1e-3, bad));
            refused(
                    "The nitrous passage of the nozzle has a diameter of " + bad
                            + " m; give one above 0 and below 0.02 m.",
                    () -> new NozzlePassages(bad, 1e-3));
            refused(
                    "The fuel passage of the nozzle has a diameter of " + bad
                            + " m; give one above 0 and below 0.02 m.",
                    () -> new NozzlePassages(1e-3, bad));
        }
    }

    @Test
    void window_of_engine_speeds() {
        ActivationWindow window = new ActivationWindow(3500, 7000);
        assertTrue(window.contains(3500) && window.contains(7000), "both ends belong to it");
        assertFalse(window.contains(3499.9) || window.contains(7000.1));
        assertNotNull(new ActivationWindow(3500, 24_999));
        double[][] wrong = {{0, 7000}, {7000, 7000}, {3500, 25_000}};
        for (double[] w : wrong) {
            refused(
                    "The activation window goes from " + w[0] + " to " + w[1]
                            + " rpm; give a low end above 0 and a high end above it, below 25000 rpm.",
                    () -> new ActivationWindow(w[0], w[1]));
        }
    }

    @Test
    void instruments_of_a_flow_test() {
        assertNotNull(new TestInstruments(5, 10, 0.5, 0.01));
        refused(
                "The error of the scale is 0.0 kg; allowed is above 0, at most 5.0 kg.",
                () -> new TestInstruments(0, 0.3, 0.03, 1e-5));
        refused(
                "The error of the stopwatch is 10.1 s; allowed is above 0, at most 10.0 s.",
                () -> new TestInstruments(0.01, 10.1, 0.03, 1e-5));
        refused(
                "The error of the gauge is 0.51 of the pressure; allowed is above 0, at most 0.5 of the pressure.",
                () -> new TestInstruments(0.01, 0.3, 0.51, 1e-5));
        refused(
                "The error of the measuring cylinder is 0.011 m3; allowed is above 0, at most 0.01 m3.",
                () -> new TestInstruments(0.01, 0.3, 0.03, 0.011));
    }

    /**
     * JCGM 100:2008, 4.4.5: half-width a of an even band has the standard uncertainty a/sqrt(3). The same as the mean of the squares of
     * evenly spread readings, summed here.
     */
    @Test
    void an_even_band_has_a_standard_deviation_of_its_half_width_over_root_three() {
        int n = 2000;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double reading = 0.3 * (2 * (i + 0.5) / n - 1);
            squares += reading * reading / n;
        }
        assertEquals(Math.sqrt(squares), TestInstruments.deviation(0.3), 1e-6);
    }

    @Test
    void fuel_cell_and_kinds_of_goals() {
        for (double bad : new double[] {0, 0.2}) {
            refused(
                    "The fuel cell's volume is " + bad + " m3; allowed is above 0 and below 0.2 m3.",
                    () -> new FuelCell(InventedKit.PUMPS, bad));
        }
        assertEquals(MixtureGoal.Kind.TOTAL_LAMBDA, MixtureGoal.total(0.5).kind());
        assertEquals(1.2, MixtureGoal.total(1.2).value());
        refused(
                "The mixture wanted, lambda of all streams, is 0.49; allowed is 0.5 to 1.2.",
                () -> MixtureGoal.total(0.49));
        refused(
                "The mixture wanted, lambda of the nitrous circuit alone, is 1.21; allowed is 0.5 to 1.2.",
                () -> MixtureGoal.circuit(1.21));
    }
}
