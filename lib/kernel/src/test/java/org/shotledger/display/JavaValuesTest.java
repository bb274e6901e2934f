package org.shotledger.display;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class JavaValuesTest {

    private record Flow(String gas, double massFlow) {}

    private static String text(Object value) {
        return (String) Display.bundle(value).get(Display.TEXT);
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
}
