package org.shotledger.snippet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the library's own sources say must reach the person who asks. */
class AssistantTest {

    private static JavaSession session;
    private static Assistant assistant;

    @BeforeAll
    static void open() {
        session = new JavaSession(SessionOptions.of(
                List.of(
                        "import org.shotledger.job.*;",
                        "import org.shotledger.fluid.*;",
                        "import static org.shotledger.units.Quantities.*;"),
                null,
                "org.shotledger"));
        assistant = new Assistant(session, new Words(Set.of("hp"), () -> List.of("bottle.charge", "bottle.count")));
        assertTrue(session.evaluate("FluidState state = null; String word = \"x\";", "In [1]")
                .ok());
    }

    @AfterAll
    static void close() {
        session.close();
    }

    private static String explained(String code) {
        return assistant.explain(code, code.length()).orElse("");
    }

    @Test
    void aMethodIsExplainedWithUnitsAndResult() {
        String text = explained("hp");
        assertTrue(text.contains("Amount"), text);
        assertTrue(text.contains("550 ft lbf/s"), text);
        assertTrue(text.contains("number: the number in hp"), text);
        assertFalse(text.contains("{@"), text);
    }

    @Test
    void eachOverloadHasItsOwnWords() {
        String text = explained("Job.load(");
        assertTrue(text.contains("Path file"), text);
        assertTrue(text.contains("String file"), text);
        assertTrue(text.contains("throws SheetException"), text);
    }

    @Test
    void aTextIsCompletedWithTheWordsOfTheProduct() {
        String code = "explain(\"bottle.c";
        Completion found = assistant.complete(code, code.length());
        assertEquals(List.of("bottle.charge", "bottle.count"), found.matches());
        assertEquals(code.indexOf("bottle"), found.start());
        assertEquals(List.of(), assistant.complete("\"valve.", 7).matches());
    }

    @Test
    void aMatchIsListedWithItsKind() {
        Completion found = assistant.complete("word.subs", 9);
        assertTrue(found.matches().contains("substring("), found::toString);
        assertEquals("function", found.kinds().get(found.matches().indexOf("substring(")));
    }

    @Test
    void insideATextOnlyFilesAreOffered() {
        String code = "Path.of(\"src/main/ja\");\nint x = 'a'; // word.";
        Completion files = assistant.complete(code, code.indexOf("ja\"") + 2);
        assertEquals(List.of("java/"), files.matches());
        assertEquals(code.indexOf("ja\""), files.start());
        assertEquals(List.of(), assistant.complete("\"word.", 6).matches());
        assertEquals(List.of(), assistant.complete(code, code.length()).matches());
    }

    @Test
    void aClassIsExplained() {
        String text = explained("NitrousOxide");
        assertTrue(text.contains("Helmholtz"), text);
    }

    @Test
    void aVariableIsExplainedByItsType() {
        String text = explained("state");
        assertTrue(text.startsWith("state:FluidState"), text);
        assertTrue(text.contains("pressure"), text);
    }

    @Test
    void aRecordsPartIsExplainedByTheRecord() {
        String text = explained("state.pressure");
        assertTrue(text.contains("Pa"), text);
    }

    @Test
    void whatIsNotOursKeepsItsSignature() {
        assertTrue(explained("word").startsWith("word:"));
        assertTrue(explained("Math.hypot(").contains("hypot"));
    }

    @Test
    void preferredNamesComeFirst() {
        assertEquals("hp(", assistant.complete("h", 1).matches().get(0));
    }
}
