package org.shotledger.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.limits.Verdict;

class CustomerDocumentTest {
    private static final CustomerDocument DOCUMENT = CustomerDocument.of(SampleDocument.content());
    private static String html;

    @BeforeAll
    static void set() {
        html = DOCUMENT.html();
    }

    @Test
    void thePageIsValidHtml() throws Exception {
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        String found = validator.validate(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
        List<String> errors = new ArrayList<>();
        found.lines().filter(line -> line.contains(": error")).forEach(errors::add);
        assertEquals(List.of(), errors, found);
    }

    @Test
    void thePageNeedsNeitherNetworkNorScript() {
        Matcher links = Pattern.compile("(src|href|url|@import)\\s*[=(]?\\s*[\"'(]([^\"')]*)")
                .matcher(html);
        while (links.find()) {
            assertTrue(links.group(2).startsWith("#"), links.group());
        }
        assertFalse(html.contains("<script"), "a script");
    }

    @Test
    void whatTheUserWroteIsEscaped() {
        assertTrue(html.contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp;"), "not escaped");
    }

    @Test
    void sectionsStandInTheOrderOfReading() {
        int last = -1;
        for (Section section : SampleDocument.content().sections().keySet()) {
            int at = html.indexOf("<section id=\"" + section.anchor() + "\"");
            assertTrue(at > last, section.heading());
            last = at;
        }
    }

    @Test
    void sectionsWithoutContentAreLeftOutButCautionsStay() {
        var content = DocumentContent.titled("t", Verdict.HOLDS, "s")
                .say(Section.TARGET, "w")
                .build();
        String page = CustomerDocument.of(content).html();
        assertEquals(
                List.of("cautions", "target"),
                Pattern.compile("<section id=\"([a-z-]+)\"")
                        .matcher(page)
                        .results()
                        .map(match -> match.group(1))
                        .toList());
    }

    @Test
    void everyChartHasWordsForThoseWhoCannotSeeIt() {
        assertEquals(4, html.split("<figure ", -1).length - 1);
        assertEquals(4, html.split("<figcaption><strong>Figure [1-4][.]</strong> [^<]", -1).length - 1);
        assertEquals(
                2 * 4, html.split("<svg [^>]*aria-label=\"[^\"]", -1).length - 1, "for a wide and for a narrow screen");
    }

    @Test
    void bothFilesAreWrittenAndNothingElseIsLeft(@TempDir Path folder) throws Exception {
        var small = DocumentContent.titled("t", Verdict.HOLDS, "s").build();
        CustomerDocument.of(small).write(folder.resolve("out"), "plan", Paper.A4);
        try (var files = Files.list(folder.resolve("out"))) {
            assertEquals(
                    List.of("plan.html", "plan.pdf"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void theVerdictFitsOneLine() {
        assertEquals(
                "tight: Jets 62 and 31 reach the wish with every limit kept; the injectors leave the least room.",
                DOCUMENT.verdictLine());
    }

    @Test
    void aDocumentWithoutARecommendationIsRefused() {
        assertEquals(
                "The document lacks a title or a recommendation; give both.",
                assertThrows(IllegalArgumentException.class, () -> DocumentContent.titled("t", Verdict.HOLDS, " "))
                        .getMessage());
    }
}
