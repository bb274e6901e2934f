package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Rungs at the ends of a ladder and sizes that lie on one; an inch is 25.4 mm. */
class JetLadderEndsTest {
    private static final JetLadder LADDER = JetLadder.of(1e-3, 1.5e-3, 2e-3);

    @Test
    void a_size_on_a_rung_is_its_own_neighbour() {
        for (double rung : LADDER.bores()) {
            assertEquals(rung, LADDER.below(rung));
            assertEquals(rung, LADDER.above(rung));
        }
        assertEquals(1.5e-3, LADDER.below(1.9e-3));
        assertEquals(1.5e-3, LADDER.above(1.1e-3));
    }

    @Test
    void sizes_come_in_any_order_and_more_than_once() {
        assertArrayEquals(LADDER.bores(), JetLadder.of(2e-3, 1e-3, 1.5e-3, 1e-3).bores());
    }

    @Test
    void a_ladder_may_have_one_rung_and_stops_before_its_end() {
        assertArrayEquals(
                new double[] {0.0254e-3}, JetLadder.thousandths(1, 1, 1).bores(), 1e-12);
        assertArrayEquals(
                new double[] {20 * 0.0254e-3, 23 * 0.0254e-3},
                JetLadder.thousandths(20, 25, 3).bores(),
                1e-12);
    }

    @Test
    void a_ladder_that_has_no_rungs_is_refused() {
        int[][] wrong = {{0, 5, 1}, {5, 4, 1}, {1, 5, 0}};
        for (int[] w : wrong) {
            var e = assertThrows(IllegalArgumentException.class, () -> JetLadder.thousandths(w[0], w[1], w[2]));
            assertEquals(
                    "A ladder from " + w[0] + " to " + w[1] + " thou in steps of " + w[2]
                            + " has no rungs; give 1 <= first <= last and a step of at least 1.",
                    e.getMessage());
        }
        for (double bore : new double[] {0, -1e-3, Double.POSITIVE_INFINITY, Double.NaN}) {
            var e = assertThrows(IllegalArgumentException.class, () -> JetLadder.of(1e-3, bore));
            assertEquals(
                    "The jet ladder holds a hole of " + bore + " m; hole diameters must be positive.", e.getMessage());
        }
    }

    /** Setups are compared by what they are made of. */
    @Test
    void ladders_are_equal_when_their_rungs_are() {
        assertEquals(LADDER, JetLadder.of(2e-3, 1.5e-3, 1e-3));
        assertEquals(LADDER.hashCode(), JetLadder.of(2e-3, 1.5e-3, 1e-3).hashCode());
        assertNotEquals(0, LADDER.hashCode());
        assertNotEquals(LADDER, JetLadder.of(1e-3, 2e-3));
        assertNotEquals(LADDER, (Object) "ladder");
    }
}
