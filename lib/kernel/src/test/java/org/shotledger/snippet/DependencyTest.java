package org.shotledger.snippet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;
import org.shotledger.fetch.RepositoryFolder;

/** A cell puts a library on the class path of those after it. */
@ResourceLock(Resources.SYSTEM_PROPERTIES)
class DependencyTest {

    private static final String HOME = "user.home"; // where Maven looks, too

    @TempDir
    Path folder;

    private final String home = System.getProperty(HOME);

    @BeforeEach
    void moveHome() throws IOException {
        System.setProperty(
                HOME,
                new RepositoryFolder(folder).withSettings().withTwo().user().toString());
    }

    @AfterEach
    void moveBack() {
        System.setProperty(HOME, home);
    }

    private static JavaSession session() {
        return new JavaSession(SessionOptions.of(List.of("import java.util.*;")));
    }

    @Test
    void whatACellAsksForCanBeUsedInItsNextLine() {
        try (JavaSession session = session()) {
            CellResult result = session.evaluate(
                    "dependency(\"invented:flange:1\");\nimport invented.*;\nFlange.bolts()", "In [1]");
            assertEquals(4, result.value(), () -> String.valueOf(result.error()));
            assertEquals(
                    List.of("invented:flange:1 can be used from here on, with 2 jars. Fetched from workshop:"
                            + " invented:flange:1, invented:bolt:1."),
                    result.notes());
            assertEquals(8, session.evaluate("Bolt.size()", "In [2]").value());
        }
    }

    @Test
    void whatWasAddedOutlivesACompilerThatBreaks() {
        try (JavaSession session = session()) {
            session.evaluate("dependency(\"invented:bolt:1\")", "In [1]");
            session.rebuild(List.of());
            assertEquals(8, session.evaluate("invented.Bolt.size()", "In [2]").value());
        }
    }

    @Test
    void valuesOutliveALibrary() {
        try (JavaSession session = session()) {
            session.evaluate("var kept = new ArrayList<>(List.of(1, 2)); int twice(int x) { return 2 * x; }", "In [1]");
            session.evaluate("dependency(\"invented:bolt:1\")", "In [2]");
            assertEquals(
                    16,
                    session.evaluate("twice(invented.Bolt.size())", "In [3]").value());
            assertEquals(
                    "[1, 2]", String.valueOf(session.evaluate("kept", "In [4]").value()));
        }
    }

    @Test
    void whatCannotBeHadIsSaidAndTheSessionGoesOn() {
        try (JavaSession session = session()) {
            CellResult result = session.evaluate("dependency(\"invented:gasket:1\"); int after = 1;", "In [1]");
            assertEquals("DependencyError", result.error().name());
            assertTrue(result.error().message().startsWith("invented:gasket:1 cannot be had"));
            assertFalse(session.evaluate("after", "In [2]").ok());
            assertEquals(3, session.evaluate("1 + 2", "In [3]").value());
        }
    }

    @Test
    void aMethodOfThatNameIsTheReadersOwn() {
        try (JavaSession session = session()) {
            session.evaluate("int dependency(String of) { return of.length(); }", "In [1]");
            assertEquals(3, session.evaluate("dependency(\"abc\")", "In [2]").value());
        }
    }
}
