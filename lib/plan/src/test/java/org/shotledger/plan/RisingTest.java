package org.shotledger.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Meeting a value on a rising line: roots that are known, ends, arguments without an answer, and few calls. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class RisingTest {
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 1, 2.7, 8})
    void known_roots_are_met_from_above(double root) {
        double square = Rising.meet(x -> x * x, root * root, 0, 10, 1e-6);
        assertEquals(root, square, 1e-6);
        assertTrue(square >= root, "the value is met, not nearly");
        double exponential = Rising.meet(Math::exp, Math.exp(root), 0, 10, 1e-6);
        assertEquals(root, exponential, 1e-6);
        assertEquals(root, Rising.meet(x -> 2 * x, 2 * root, 0, 0, 10, 20, 1e-6), 1e-6);
    }

    @Test
    void at_the_ends_the_ends_are_the_answer() {
        assertEquals(2, Rising.meet(x -> x, 1, 2, 5, 1e-6), "met from the start");
        assertEquals(2, Rising.meet(x -> x, 2, 2, 5, 1e-6));
        assertEquals(5, Rising.meet(x -> x, 6, 2, 5, 1e-6), "met nowhere");
        assertEquals(5, Rising.meet(x -> x, 5, 2, 5, 1e-6), 1e-6);
    }

    /** Beyond 3 there is no answer: the value counts as met there, so that nothing beyond is asked for. */
    @Test
    void where_there_is_no_answer_counts_as_too_much() {
        assertEquals(3, Rising.meet(x -> x > 3 ? Double.NaN : x, 4, 0, 10, 1e-4), 2e-4);
        assertEquals(2, Rising.meet(x -> x > 3 ? Double.NaN : x, 2, 0, 10, 1e-6), 1e-6);
    }

    /** Calls on smooth functions, both ends among them, as a separate count of the same rule gave; a step takes what halving may take. */
    @Test
    void few_calls_suffice() {
        assertTrue(calls(x -> 2 * x, 5, 1e-6) <= 4);
        assertTrue(calls(x -> x * x, 2, 1e-6) <= 12);
        assertTrue(calls(Math::exp, Math.exp(2.7), 1e-6) <= 19);
        assertTrue(calls(Math::sqrt, 1.5, 1e-2) <= 8);
        assertEquals(42, calls(x -> x < Math.PI ? 0 : 1, 0.5, 1e-300), "both ends and forty between");
    }

    private static int calls(DoubleUnaryOperator f, double value, double tolerance) {
        int[] calls = new int[1];
        Rising.meet(
                x -> {
                    calls[0]++;
                    return f.applyAsDouble(x);
                },
                value,
                0,
                10,
                tolerance);
        return calls[0];
    }

    // a tenth of a pound per square inch is 689.4757 Pa (NIST SP 811)
    @Test
    void boost_is_set_in_tenths_of_a_psi() {
        assertEquals(17.1 * 6894.757, BoostCaps.roundedDown(17.19 * 6894.757), 1);
        assertEquals(17.1 * 6894.757, BoostCaps.roundedDown(17.1 * 6894.757293168361), 1);
        assertEquals(17.2 * 6894.757, BoostCaps.roundedUp(17.11 * 6894.757), 1);
        assertEquals(17.1 * 6894.757, BoostCaps.roundedUp(17.1 * 6894.757293168361), 1);
        assertEquals(0, BoostCaps.roundedDown(0));
    }
}
