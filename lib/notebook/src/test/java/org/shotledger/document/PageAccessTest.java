package org.shotledger.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Whether the page can be read by everybody, after the Web Content Accessibility Guidelines 2.2 (W3C, 2023). */
class PageAccessTest {
    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)}");
    private static final Pattern COLOUR = Pattern.compile("#([0-9a-fA-F]{6})");

    @Test
    void theSampleKeepsWhatAProgramCanJudge() {
        assertEquals(
                List.of(),
                PageCheck.faults(CustomerDocument.of(SampleDocument.content()).html()));
    }

    @Test
    void thePageCheckSeesFaults() {
        String bad = "<html><head><title> </title></head><body><h1>a</h1><h3>b</h3>"
                + "<table><tr><th>c</th></tr><tr><td>d</td><td>e</td></tr></table><svg/><a href=\"#none\">f</a></body></html>";
        String faults = String.join("\n", PageCheck.faults(bad));
        for (String criterion : List.of("1.1.1", "1.3.1", "2.4.1", "2.4.2", "2.4.4", "3.1.1", "4.1.2")) {
            assertTrue(faults.contains(criterion), criterion + " is not seen in\n" + faults);
        }
    }

    // "Understanding SC 1.4.3" names #767676 on white as the lightest grey that passes; black on white is 21 by
    // definition
    @Test
    void contrastIsThatOfTheGuidelines() {
        assertEquals(21, Contrast.of(0, 0xFFFFFF), 1e-12);
        assertTrue(Contrast.of(0x767676, 0xFFFFFF) >= 4.5);
        assertTrue(Contrast.of(0x777777, 0xFFFFFF) < 4.5);
    }

    // 1.4.3 Contrast (Minimum): 4.5 to 1, here for every ink on every ground of the sheet, whatever meets whatever
    @Test
    void everyInkStandsOutFromEveryGround() {
        List<Integer> grounds = colours("background");
        List<Integer> inks = colours("color");
        assertTrue(grounds.size() >= 2 && inks.size() >= 6, inks + " on " + grounds);
        for (int ink : inks) {
            for (int ground : grounds) {
                double ratio = Contrast.of(ink, ground);
                assertTrue(ratio >= 4.5, String.format("#%06x on #%06x: %.2f", ink, ground, ratio));
            }
        }
    }

    // 1.4.11 Non-text Contrast: 3 to 1; the hair lines between table rows are left out, for the rows stand apart
    // without them
    @Test
    void everyLineThatTellsSomethingStandsOut() {
        List<Integer> lines = colours("border[a-z-]*");
        lines.removeIf(line -> line == 0xC4C4C4);
        assertTrue(lines.size() >= 6, lines.toString());
        for (int line : lines) {
            double ratio = Contrast.of(line, 0xF4F4F4);
            assertTrue(ratio >= 3, String.format("#%06x: %.2f", line, ratio));
        }
    }

    // 1.4.1 Use of Color: a verdict is told by word and shape too
    @Test
    void aVerdictIsAWord() {
        String html = CustomerDocument.of(SampleDocument.content()).html();
        Matcher verdicts = Pattern.compile("class=\"verdict ([a-z]+)\">(.*?)</").matcher(html);
        int seen = 0;
        while (verdicts.find()) {
            assertTrue(verdicts.group(2).endsWith(" " + verdicts.group(1)), verdicts.group());
            seen++;
        }
        assertFalse(seen < 3, "verdicts: " + seen);
    }

    private static List<Integer> colours(String property) {
        List<Integer> found = new ArrayList<>();
        Matcher rules = RULE.matcher(sheet());
        while (rules.find()) {
            for (String declaration : rules.group(2).split(";", -1)) {
                String[] parts = declaration.strip().split(":", 2);
                if (parts[0].matches(property) && parts.length == 2) {
                    COLOUR.matcher(parts[1]).results().forEach(hit -> found.add(Integer.parseInt(hit.group(1), 16)));
                }
            }
        }
        return found;
    }

    private static String sheet() {
        try (var in = CustomerDocument.class.getResourceAsStream("document.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
