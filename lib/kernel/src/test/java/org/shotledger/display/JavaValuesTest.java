package org.shotledger.display;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class JavaValuesTest {

    private record Flow(String gas, double massFlow) {}

    private static String text(Object value) {
        return (String) Display.bundle(value).get(Display.TEXT);
    }

    @Test
    void aClosureIsToldByWhatItIs() {
        java.util.function.DoubleUnaryOperator twice = x -> 2 * x;
        assertEquals("a DoubleUnaryOperator", Display.bundle(twice).get(Display.TEXT));
        assertEquals("[a DoubleUnaryOperator]", Display.bundle(List.of(twice)).get(Display.TEXT));
    }

    @Test
    void anArrayShowsItsItems() {
        assertEquals("[1, 2, 3]", text(new int[] {1, 2, 3}));
        assertEquals("[a, null]", text(new String[] {"a", null}));
        assertEquals("[\n [1.5, 2], \n [3]]", text(new double[][] {{1.5, 2}, {3}}));
        assertTrue(text(new long[1000]).endsWith("1000 in all]"));
    }

    /** The first eight bytes of every PNG file: W3C Recommendation, Portable Network Graphics, section 5.2. */
    @Test
    void aPictureIsShownAsOne() {
        byte[] png = (byte[]) Display.bundle(new BufferedImage(4, 3, BufferedImage.TYPE_INT_RGB))
                .get(Display.PNG);
        assertArrayEquals(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}, Arrays.copyOf(png, 8));
    }

    @Test
    void anOptionalShowsWhatIsInIt() {
        assertEquals("[1]", text(Optional.of(new int[] {1})));
        assertEquals("(empty)", text(Optional.empty()));
    }

    @Test
    void mapsAndRecordsBecomeTables() {
        assertEquals("key  value\na    <1>\nb    2", text(new TreeMap<>(Map.of("b", 2, "a", "<1>"))));
        Map<String, Object> flows = Display.bundle(List.of(new Flow("air", 1.0 / 3), new Flow("fuel", 12)));
        assertEquals("gas   mass flow\nair   0.333333\nfuel  12", flows.get(Display.TEXT));
        String html = (String) flows.get(Display.HTML);
        assertTrue(html.contains("<th scope=\"col\">mass flow</th>") && html.contains("<td>12</td>"), html);
        assertTrue(
                ((String) Display.bundle(new TreeMap<>(Map.of("a", "<1>"))).get(Display.HTML)).contains("&lt;1&gt;"));
    }

    /** {@code Set.of} and {@code Map.of} give another order in each run of Java, as their documentation says. */
    @Test
    void whatHasNoOrderIsShownInOne() {
        record Held(Set<String> names, Map<String, Integer> counts) {}
        assertEquals("[a, b, c, d]", text(Set.of("c", "a", "d", "b")));
        assertEquals("[d, a]", text(new LinkedHashSet<>(List.of("d", "a"))));
        assertEquals(
                "Held[names=[a, b, c], counts={a=1, b=2, c=3}]",
                text(Optional.of(new Held(Set.of("c", "b", "a"), Map.of("c", 3, "a", 1, "b", 2)))));
        assertEquals("key  value\na    1\nb    2\nc    3", text(Map.of("c", 3, "b", 2, "a", 1)));
    }

    @Test
    void resultsThatKnowHowTheyLookAreShownOneBelowTheOther() {
        Map<String, Object> forms = Display.bundle(List.of(new Looks("x"), new Looks("y")));
        assertEquals("looks x\n\nlooks y", forms.get(Display.TEXT));
        assertEquals("<i>x</i>\n<i>y</i>", forms.get(Display.HTML));
        assertEquals("key  value\n1    looks z", text(new TreeMap<>(Map.of(1, new Looks("z")))));
        assertTrue(text(Collections.nCopies(30, new Looks("x"))).endsWith("first 20 of 30"));
    }

    private record Looks(String name) implements Displayable {
        @Override
        public String toText() {
            return "looks " + name;
        }

        @Override
        public String toHtml() {
            return "<i>" + name + "</i>";
        }
    }
}
