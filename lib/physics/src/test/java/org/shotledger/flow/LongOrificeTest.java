package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class LongOrificeTest {
    // Lichtarowicz, Duggins and Markland 1965, formula from memory, worked out independently
    @Test
    void givesTheWorkedValue() {
        assertEquals(0.8000831236, LongOrifice.coefficient(2e4, 3), 8e-7);
    }

    @Test
    void risesWithTheReynoldsNumberWhileFrictionCountsAndMeetsTheUltimateValue() {
        double before = 0;
        for (double reynolds = 10; reynolds < 3000; reynolds *= 1.5) {
            double now = LongOrifice.coefficient(reynolds, 4);
            assertTrue(now > before);
            before = now;
        }
        assertEquals(LongOrifice.ultimateCoefficient(4), LongOrifice.coefficient(2e4, 4), 0.01);
    }

    @Test
    void refusesWhatWasNotMeasured() {
        assertThrows(IllegalArgumentException.class, () -> LongOrifice.coefficient(5, 4));
        assertThrows(IllegalArgumentException.class, () -> LongOrifice.coefficient(3e4, 4));
        assertThrows(IllegalArgumentException.class, () -> LongOrifice.coefficient(1e3, 12));
    }
}
