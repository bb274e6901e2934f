package org.shotledger.snippet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class LibraryDocsTest {

    @Test
    void aCommentIsPlainTextWithoutMarks() {
        String comment = """
                 Returns sqrt(<i>x</i><sup>2</sup>&nbsp;+ <i>y</i><sup>2</sup>) of {@code {sides}}.
                 <p>Special cases:
                 <ul><li>NaN is NaN.</ul>
                 @param x a side
                 @return the third side, see {@link List#of}
                 @since 1.5
                """;
        String plain = """
                Returns sqrt(x^2 + y^2) of {sides}.

                Special cases:
                - NaN is NaN.
                  x: a side
                  returns the third side, see List.of""";
        assertEquals(plain, LibraryDocs.plain(comment));
    }

    /** Only where the JDK carries its sources, which Debian keeps in a package of its own. */
    @Test
    void theJdkExplainsItself() {
        assumeTrue(Files.isReadable(Path.of(System.getProperty("java.home"), "lib", "src.zip")));
        try (JavaSession session = new JavaSession(SessionOptions.of(List.of()))) {
            String code = "Math.hypot";
            String text = new Assistant(session, Words.NONE)
                    .explain(code, code.length())
                    .orElse("");
            assertTrue(text.contains("without intermediate overflow"), text);
            assertFalse(text.contains("<sup>"), text);
            assertFalse(text.contains("@param"), text);
        }
    }
}
