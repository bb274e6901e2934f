package org.shotledger.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.units.QuantityKind;

/** What a margin is and which verdict follows, by figures worked out in the head. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class LimitsTest {
    private static Limit limit(String key, double value, double bound, Side side, double scale) {
        return new Limit(
                key, key, QuantityKind.RATIO, value, bound, side, false, "", Provenance.ASSUMED, "", "", "case", scale);
    }

    /** The caution band is a twentieth of the bound, itself no longer inside it; at the bound a limit still holds. */
    @ParameterizedTest
    @CsvSource({
        "150, 160, AT_MOST, 160, 10, 0.0625, HOLDS",
        "152, 160, AT_MOST, 160, 8, 0.05, HOLDS",
        "156, 160, AT_MOST, 160, 4, 0.025, TIGHT",
        "160, 160, AT_MOST, 160, 0, 0, TIGHT",
        "164, 160, AT_MOST, 160, -4, -0.025, BROKEN",
        "50, 40, AT_LEAST, 40, 10, 0.25, HOLDS",
        "41, 40, AT_LEAST, 40, 1, 0.025, TIGHT",
        "40, 40, AT_LEAST, 40, 0, 0, TIGHT",
        "39, 40, AT_LEAST, 40, -1, -0.025, BROKEN",
        "300, 306, AT_MOST, 60, 6, 0.1, HOLDS",
        "0, 0, AT_MOST, 0, 0, 1, HOLDS",
        "1, 0, AT_MOST, 0, -1, -1, BROKEN",
    })
    void margin_and_verdict(
            double value, double bound, Side side, double scale, double margin, double share, Verdict verdict) {
        Limit limit = limit("a", value, bound, side, scale);
        assertEquals(margin, limit.margin(), 1e-12);
        assertEquals(share, limit.relativeMargin(), 1e-12);
        assertEquals(verdict, limit.verdict());
    }

    /** Where a model has no answer nothing may look safe. */
    @ParameterizedTest
    @CsvSource({"NaN, 1, AT_MOST, 1", "NaN, 1, AT_LEAST, 1", "1, NaN, AT_MOST, 1", "NaN, 0, AT_MOST, 0"})
    void no_value_breaks_the_limit(double value, double bound, Side side, double scale) {
        Limit limit = limit("a", value, bound, side, scale);
        assertEquals(Verdict.BROKEN, limit.verdict());
        assertEquals(Double.NEGATIVE_INFINITY, limit.relativeMargin());
    }

    @Test
    void the_closest_and_the_worst_are_found() {
        Limit roomy = limit("a", 0.5, 1, Side.AT_MOST, 1);
        Limit tight = limit("b", 0.98, 1, Side.AT_MOST, 1);
        Limit broken = limit("c", 1.1, 1, Side.AT_MOST, 1);
        Limit worse = limit("d", 1.2, 1, Side.AT_MOST, 1);
        assertEquals(Verdict.HOLDS, new Limits(List.of(roomy)).verdict());
        assertEquals(Verdict.TIGHT, new Limits(List.of(roomy, tight)).verdict());
        Limits all = new Limits(List.of(roomy, broken, tight, worse));
        assertEquals(Verdict.BROKEN, all.verdict());
        assertEquals(Optional.of(worse), all.first());
        assertEquals(-0.2, all.leastMargin(), 1e-12);
        assertEquals(List.of(worse, broken), all.broken());
        assertEquals(Optional.of(tight), all.find("b"));
        assertEquals(Optional.empty(), all.find("e"));
        Limits none = new Limits(List.of());
        assertEquals(Verdict.HOLDS, none.verdict());
        assertEquals(Double.POSITIVE_INFINITY, none.leastMargin());
    }

    /** One limit in several cases stands once, where it is closest; of two alike the first. */
    @Test
    void of_each_limit_the_closest_is_kept() {
        Limit far = limit("a", 0.5, 1, Side.AT_MOST, 1);
        Limit near = limit("a", 0.75, 1, Side.AT_MOST, 1);
        Limit same = limit("a", 3, 4, Side.AT_MOST, 4);
        Limit other = limit("b", 0.1, 1, Side.AT_MOST, 1);
        assertEquals(
                List.of(near, other), Limits.closest(List.of(far, near, other)).all());
        assertEquals(
                List.of(near, other), Limits.closest(List.of(near, other, far)).all());
        assertEquals(List.of(near), Limits.closest(List.of(near, same)).all());
        assertEquals(List.of(same), Limits.closest(List.of(same, near)).all());
    }

    @Test
    void the_graver_verdict_wins_from_either_side() {
        List<Verdict> rising = List.of(Verdict.HOLDS, Verdict.TIGHT, Verdict.BROKEN);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                assertEquals(rising.get(Math.max(i, j)), rising.get(i).worse(rising.get(j)));
            }
        }
    }

    @Test
    void only_a_hard_limit_says_that_it_is_not_to_be_moved() {
        Limit soft = limit("a", 1, 1, Side.AT_MOST, 1);
        Limit hard = new Limit(
                "a", "a", QuantityKind.RATIO, 1, 1, Side.AT_MOST, true, "", Provenance.ASSUMED, "", "", "", 1);
        assertTrue(hard.remedy().contains("not to be moved"));
        assertEquals("", soft.remedy());
    }

    @Test
    void words_are_read_back() {
        for (Provenance provenance : Provenance.values()) {
            assertEquals(provenance, Provenance.ofWords(provenance.words()));
        }
        assertEquals(Provenance.ASSUMED, Provenance.ofWords("hearsay"));
        for (Verdict verdict : Verdict.values()) {
            assertFalse(verdict.word().isBlank());
        }
    }
}
