package org.shotledger.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tries a number of a record on both sides of both bounds that its documentation states. */
public final class AllowedRange {
    private static final Pattern SENTENCE = Pattern.compile(
            "The (.+) is (\\S+?)(?: (\\S.*))?; allowed is (\\S+) to (\\S+?)(?: (\\S.*))?\\. Check .+\\.");

    private AllowedRange() {}

    /**
     * Checks that both bounds are accepted and that one thousandth beyond each is refused by a sentence that names the number, its value
     * and the range.
     *
     * @param field how the sentence calls the number
     * @param low least allowed
     * @param high greatest allowed
     * @param unit its unit, empty for a pure number
     * @param make what takes the number
     */
    public static void check(String field, double low, double high, String unit, DoubleFunction<?> make) {
        assertNotNull(make.apply(low), field);
        assertNotNull(make.apply(high), field);
        double step = 1e-3 * (high - low);
        for (double beyond : new double[] {low - step, high + step}) {
            String text = assertThrows(IllegalArgumentException.class, () -> make.apply(beyond), field + " " + beyond)
                    .getMessage();
            Matcher said = SENTENCE.matcher(text);
            assertTrue(said.matches(), text);
            assertEquals(field, said.group(1));
            assertFigure(beyond, unit, said.group(2), text);
            assertFigure(low, unit, said.group(4), text);
            assertFigure(high, unit, said.group(5), text);
            assertEquals(shown(unit), said.group(6) == null ? "" : said.group(6), text);
        }
        assertThrows(IllegalArgumentException.class, () -> make.apply(Double.NaN), field);
    }

    /** Pressures are said in kilopascals. */
    private static String shown(String unit) {
        return unit.equals("Pa") ? "kPa" : unit;
    }

    private static void assertFigure(double value, String unit, String said, String text) {
        double figure = unit.equals("Pa") ? value / 1000 : value;
        assertEquals(figure, Double.parseDouble(said), 1e-4 * Math.abs(figure), text);
    }
}
