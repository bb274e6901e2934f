package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class JetLadderTest {
    private static final double THOU = 0.0254e-3;

    @Test
    void steps_of_thousandths_stand_where_they_should() {
        JetLadder ladder = JetLadder.thousandths(14, 136, 2);
        assertEquals(62, ladder.bores().length);
        assertEquals(14 * THOU, ladder.bores()[0], 1e-12);
        assertEquals(136 * THOU, ladder.bores()[61], 1e-12);
    }

    @Test
    void a_size_between_two_rungs_finds_both() {
        JetLadder ladder = JetLadder.thousandths(14, 136, 2);
        assertEquals(62 * THOU, ladder.below(63.4 * THOU), 1e-12);
        assertEquals(64 * THOU, ladder.above(63.4 * THOU), 1e-12);
    }

    @Test
    void a_size_off_the_ladder_finds_the_end_rung() {
        JetLadder ladder = JetLadder.of(1e-3, 2e-3);
        assertEquals(1e-3, ladder.below(0.5e-3));
        assertEquals(2e-3, ladder.above(3e-3));
    }

    @Test
    void an_empty_ladder_is_refused_in_one_sentence() {
        var refused = assertThrows(IllegalArgumentException.class, JetLadder::of);
        assertEquals("The jet ladder is empty; list at least one hole diameter.", refused.getMessage());
    }
}
