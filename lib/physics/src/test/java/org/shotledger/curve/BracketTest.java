package org.shotledger.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BracketTest {
    @Test
    void seeded_roots_are_found_in_few_calls() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 500; i++) {
            double root = random.nextDouble(1.0001, 11.9);
            double bend = random.nextDouble(0.2, 4);
            int[] calls = {0};
            double found = Bracket.root(
                    x -> {
                        calls[0]++;
                        return Math.pow(x, bend) - Math.pow(root, bend);
                    },
                    1,
                    12,
                    1e-10);
            assertEquals(root, found, 1e-10);
            assertTrue(calls[0] <= 40, calls[0] + " calls");
        }
    }

    @Test
    void a_jump_is_found_as_well() {
        assertEquals(0.3, Bracket.root(x -> x < 0.3 ? -1e-9 : 1e9, 0, 1, 1e-9), 1e-9);
        assertEquals(0.3, Bracket.root(x -> x < 0.3 ? 1e9 : -1e-9, 0, 1, 1e-9), 1e-9);
    }

    @Test
    void equal_signs_are_refused() {
        var thrown = assertThrows(IllegalArgumentException.class, () -> Bracket.root(x -> x + 2, 0, 1, 1e-9));
        assertTrue(thrown.getMessage().startsWith("The function has no sign change between 0.0"), thrown.getMessage());
    }

    @Test
    void an_edge_is_found_from_either_side() {
        Bracket.Edge up = Bracket.edge(x -> x < 0.3, 0, 1, 1e-9);
        assertTrue(up.inside() < 0.3 && up.outside() >= 0.3 && up.outside() - up.inside() <= 1e-9);
        Bracket.Edge down = Bracket.edge(x -> x > 0.3, 1, 0, 1e-9);
        assertTrue(down.inside() > 0.3 && down.outside() <= 0.3 && down.inside() - down.outside() <= 1e-9);
    }
}
