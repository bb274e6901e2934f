package org.shotledger.snippet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JavaSessionTest {

    private static JavaSession session;
    private static int number;

    @BeforeAll
    static void open() {
        session = new JavaSession(SessionOptions.of(List.of("import java.util.*;")));
    }

    @AfterAll
    static void close() {
        session.close();
    }

    private static CellResult run(String source) {
        return session.evaluate(source, "In [" + ++number + "]");
    }

    private static Object value(String source) {
        CellResult result = run(source);
        assertNull(result.error(), () -> String.join("\n", result.error().report()));
        return result.value();
    }

    private static List<String> report(String source) {
        CellResult result = run(source);
        assertNotNull(result.error(), "the cell should fail: " + source);
        return result.error().report();
    }

    @Test
    void theLastExpressionIsTheValueOfACell() {
        assertEquals(42, value("int half = 21;\nhalf * 2"));
        assertFalse(run("int quarter = 3;").hasValue());
    }

    @Test
    void theStreamThatPrintfGivesBackIsNoResult() {
        assertFalse(run("System.out.printf(\"%d hp%n\", 780)").hasValue());
        assertFalse(run("System.err.append(\"lean\")").hasValue());
        assertTrue(run("new java.io.PrintStream(System.out)").hasValue());
    }

    @Test
    void aValueIsTheObjectItselfAndNotItsText() {
        value("var kept = new ArrayList<Integer>();");
        assertEquals(value("kept"), List.of());
        assertTrue(value("kept") == value("kept"));
    }

    @Test
    void valuesSurviveWhenADeclarationTheyWereBuiltFromIsRunAgain() {
        value("var bore = 10; var area = bore * 2.5; var text = \"jet \" + area;");
        value("var bore = 11;");
        assertEquals("25.0 jet 25.0", value("area + \" \" + text"));
        value("int size() { return 7; }\nvar fromMethod = size();");
        value("int size() { return 8; }");
        assertEquals(7, value("fromMethod"));
    }

    @Test
    void theSameRecordDeclaredAgainKeepsItsValues() {
        value("record Jet(int thou) {}\nvar jet = new Jet(62);");
        value("record Jet(int thou) {}");
        assertEquals(62, value("jet.thou()"));
    }

    @Test
    void aLostValueIsAnnouncedAndNeverZero() {
        value("record Hose(int size) {}\nvar hose = new Hose(6);");
        CellResult changed = run("record Hose(int size, int length) {}");
        assertTrue(changed.notes().stream().anyMatch(note -> note.contains("hose")), changed.notes()::toString);
        value("var kind = 5; var twice = kind * 2;");
        CellResult retyped = run("var kind = \"five\";");
        assertTrue(retyped.notes().stream().anyMatch(note -> note.contains("twice")), retyped.notes()::toString);
        value("var kind = 6;");
        assertEquals(10, value("twice"));
    }

    @Test
    void aVariableWhoseValueFailedDoesNotExist() {
        report("int broken = 1 / 0;");
        assertTrue(report("broken").get(0).contains("symbol"));
    }

    @Test
    void anErrorNamesCellAndLineAndPointsAtTheSource() {
        value("int inverse(int x) {\n  return 1 / x;\n}");
        int defined = number;
        List<String> lines = report("var ok = 1;\ninverse(0)");
        assertEquals(
                List.of(
                        "ArithmeticException: / by zero",
                        "  at In [" + defined + "], line 2, in inverse",
                        "      return 1 / x;",
                        "      ^",
                        "  called from In [" + number + "], line 2",
                        "    inverse(0)",
                        "    ^"),
                lines);
    }

    @Test
    void aCompileErrorPointsAtTheCharacter() {
        List<String> lines = report("var a = 1;\nint b = \"text\";");
        assertEquals("    int b = \"text\";", lines.get(1));
        assertEquals("            ^", lines.get(2));
        assertTrue(lines.get(0).startsWith("In [" + number + "], line 2: "), lines.get(0));
    }

    @Test
    void aCellThatCannotBeParsedRunsNothing() {
        report("int started = 5;\nint b = a +;");
        assertTrue(report("started").get(0).contains("symbol"));
    }

    @Test
    void causesAreShown() {
        List<String> lines = report("throw new RuntimeException(\"outer\", new java.io.IOException(\"inner\"));");
        assertEquals("RuntimeException: outer", lines.get(0));
        assertTrue(lines.contains("because of IOException: inner"), lines::toString);
        assertTrue(lines.stream().noneMatch(line -> line.contains("org.shotledger.snippet")), lines::toString);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "int so(int x) { return so(x + 1) + 1; }\nso(1)",
                "byte[][] much = new byte[10_000][]; for (int i = 0; i < 10_000; i++) much[i] = new byte[1 << 30];",
                "throw new Error(\"on purpose\");",
                "throw new RuntimeException() { public String getMessage() { throw new StackOverflowError(); } };",
            })
    void anErrorOfAnyKindLeavesTheSessionAlive(String source) {
        report(source);
        assertEquals(2, value("1 + 1"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "while (true) {}",
                "Thread.sleep(100_000);",
                "while (true) { try { Thread.sleep(1_000); } catch (InterruptedException e) { } }",
                "for (;;) { try { Math.sin(1); } catch (Throwable t) { } }",
            })
    void aRunningCellStopsOnRequest(String source) {
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            CompletableFuture<Void> stop = CompletableFuture.runAsync(
                    () -> {
                        try {
                            session.interrupt(sentence -> {});
                        } catch (InterruptedException e) {
                            throw new IllegalStateException(e);
                        }
                    },
                    CompletableFuture.delayedExecutor(400, TimeUnit.MILLISECONDS));
            CellResult result = run(source);
            stop.get();
            assertEquals("Interrupted", result.error().name());
        });
        assertEquals(2, value("1 + 1"));
    }

    @Test
    void oldUnnamedResultsAreDroppedUnlessUsed() {
        value("new int[] {1}");
        for (int i = 0; i < RecentResults.KEPT + 2; i++) {
            value("1 + " + i);
        }
        assertEquals(2, value("1 + 1"));
    }

    @Test
    void aThreadStartedByACellDoesNotHoldTheCellOpen() {
        assertTimeoutPreemptively(
                Duration.ofSeconds(10),
                () -> value("var sleeper = new Thread(() -> { try { Thread.sleep(60_000); }"
                        + " catch (InterruptedException e) { } }); sleeper.setDaemon(true); sleeper.start();"));
    }

    @Test
    void aCellThatRepeatsAnImportOfTheSessionKeepsTheOthers() {
        try (JavaSession two = new JavaSession(
                SessionOptions.of(List.of("import java.util.function.*;", "import static java.lang.Math.*;")))) {
            assertTrue(two.evaluate("import java.util.function.*;", "In [1]").ok());
            assertEquals(5.0, two.evaluate("hypot(3, 4)", "In [2]").value());
        }
    }

    @Test
    void anImportThatDoesNotExistIsNamed() {
        SessionOptions options = SessionOptions.of(List.of("import java.util.*;", "import no.such.place.*;"));
        try (JavaSession broken = new JavaSession(options)) {
            assertEquals(2, broken.evaluate("1 + 1", "In [1]").value());
            CellError error = broken.evaluate("List.of()", "In [2]").error();
            assertTrue(error.message().contains("no.such.place"), error.message());
        }
    }

    @Test
    void anExpressionThatFailsIsShownWithItsLine() {
        try (JavaSession plain = new JavaSession(SessionOptions.of(List.of()))) {
            CellError error = plain.evaluate("int jet = 5;\njet / 0", "In [4]").error();
            assertTrue(
                    error.report().stream().anyMatch(l -> l.contains("In [4], line 2")),
                    error.report().toString());
            assertTrue(
                    error.report().stream().anyMatch(l -> l.strip().equals("jet / 0")),
                    error.report().toString());
        }
    }

    /** Plain Java does not pay for the imports, and whatever else a cell names finds them. */
    @Test
    void importsAreMadeWhenACellNeedsThem() {
        try (JavaSession lazy =
                new JavaSession(SessionOptions.of(List.of("import java.util.*;", "import static java.lang.Math.*;")))) {
            assertEquals(3, lazy.evaluate("var x = 1; x + 2", "In [1]").value());
            assertEquals("a", lazy.evaluate("String.valueOf('a')", "In [2]").value());
            assertEquals(
                    List.of(1),
                    lazy.evaluate("var list = List.of(x); list", "In [3]").value());
            assertEquals(5.0, lazy.evaluate("hypot(3, 4)", "In [4]").value());
        }
        try (JavaSession late = new JavaSession(SessionOptions.of(List.of("import static java.lang.Math.*;")))) {
            assertTrue(late.evaluate("double f(double x) { return sqrt(x); }", "In [1]")
                    .ok());
            assertEquals(2.0, late.evaluate("f(4)", "In [2]").value());
        }
    }

    @Test
    void aRequestToStopThatComesWhileTheCellIsCompiledIsNotLost() throws InterruptedException {
        Thread evaluator = Thread.currentThread();
        Thread asker = new Thread(() -> {
            while (!hasBegun(evaluator.getStackTrace())) {
                Thread.onSpinWait();
            }
            try {
                session.interrupt(sentence -> {});
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        asker.start();
        // long enough to be caught while it is compiled
        String slow = "int slow() { int x = 0; " + "x += 1; ".repeat(5000) + "return x; }\n";
        CellResult result = session.evaluate(slow + "while (true) {}", "In [1]");
        asker.join();
        assertEquals("Interrupted", result.error().name());
        assertEquals(3, session.evaluate("1 + 2", "In [2]").value());
    }

    /** Compiled, or, should that have been missed, already running, so that the test ends. */
    private static boolean hasBegun(StackTraceElement[] stack) {
        return Stream.of(stack)
                .anyMatch(frame -> (frame.getClassName().equals("jdk.jshell.Eval")
                                && frame.getMethodName().equals("compileAndLoad"))
                        || frame.getClassName().equals(CellControl.class.getName()));
    }
}
