package org.shotledger.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.units.QuantityKind;

class LedgerTest {
    private static Entry entry(String key, String... inputs) {
        return new Entry(
                key,
                key,
                "",
                QuantityKind.RATIO,
                1,
                Double.NaN,
                "basis",
                "source",
                List.of(inputs),
                Standing.CALCULATED);
    }

    @Test
    void why_walks_down_to_the_inputs_and_names_each_once() {
        Ledger ledger = Ledger.of(List.of(entry("a"), entry("b"), entry("c", "a", "b"), entry("d", "c", "a")));
        assertEquals(
                List.of("d", "c", "a", "b"),
                ledger.why("d").stream().map(Entry::key).toList());
    }

    @Test
    void an_input_that_does_not_stand_before_is_refused() {
        var refused = assertThrows(IllegalArgumentException.class, () -> Ledger.of(List.of(entry("c", "a"))));
        assertEquals(
                "Ledger entry 'c' rests on 'a', which does not stand before it; enter the input first.",
                refused.getMessage());
    }

    @Test
    void a_key_that_stands_twice_is_refused() {
        var refused = assertThrows(IllegalArgumentException.class, () -> Ledger.of(List.of(entry("a"), entry("a"))));
        assertEquals("Ledger entry 'a' stands twice; give each figure its own key.", refused.getMessage());
    }
}
