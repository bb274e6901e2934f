package org.shotledger.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shotledger.limits.Provenance;
import org.shotledger.units.QuantityKind;

class LedgerTest {
    private static Entry entry(String key, double value, Optional<Formula> formula, String... inputs) {
        return new Entry(
                key,
                key,
                "",
                QuantityKind.RATIO,
                value,
                Double.NaN,
                "basis",
                "source",
                List.of(inputs),
                Provenance.CALCULATED,
                Optional.empty(),
                formula,
                Entry.ROUNDING);
    }

    private static Entry entry(String key, String... inputs) {
        return entry(key, 1, Optional.empty(), inputs);
    }

    @Test
    void why_walks_down_to_the_inputs_and_names_each_once() {
        Ledger ledger = Ledger.of(List.of(entry("a"), entry("b"), entry("c", "a", "b"), entry("d", "c", "a")));
        assertEquals(
                List.of("d", "c", "a", "b"),
                ledger.why("d").stream().map(Entry::key).toList());
    }

    @Test
    void a_figure_is_made_again_from_the_inputs_it_names_in_their_order() {
        Ledger ledger = Ledger.of(List.of(
                entry("a", 7, Optional.empty()),
                entry("b", 2, Optional.empty()),
                entry("c", 5, Optional.of(x -> x[0] - x[1]), "a", "b")));
        assertEquals(5, ledger.recomputed("c").orElseThrow());
        assertTrue(ledger.recomputed("a").isEmpty());
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
