package org.shotledger.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class JetFlowTest {

    private static JetFlow between(double low, double high) {
        return new JetFlow(0.100, low, high, 0.8, 0.05, "a model", "a source", null);
    }

    @Test
    void models_that_come_together_leave_the_expected_error() {
        assertEquals(0.095, between(0.099, 0.100).least(), 1e-12);
        assertEquals(0.105, between(0.099, 0.100).most(), 1e-12);
    }

    @Test
    void models_that_part_leave_their_bracket() {
        assertEquals(0.080, between(0.080, 0.130).least(), 1e-12);
        assertEquals(0.130, between(0.080, 0.130).most(), 1e-12);
    }
}
