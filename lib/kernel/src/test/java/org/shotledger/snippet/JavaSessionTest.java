package org.shotledger.snippet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.ref.WeakReference;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
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
    void aResultWithoutANameIsNotSpokenOf() {
        try (JavaSession own = new JavaSession(SessionOptions.of(List.of()))) {
            own.evaluate("record Nozzle(int holes) {}\nnew Nozzle(4)", "In [1]");
            assertEquals(
                    List.of(),
                    own.evaluate("record Nozzle(double holes) {}", "In [2]").notes());
        }
    }

    @Test
    void aClosedSessionIsLetGoOfBeforeItsSearchIndexIsDue() throws InterruptedException {
        WeakReference<JavaSession> gone = closedSession();
        for (int i = 0; i < 100 && gone.get() != null; i++) {
            System.gc();
            Thread.sleep(20);
        }
        assertNull(gone.get(), "after two seconds, one less than the search index waits");
    }

    private static WeakReference<JavaSession> closedSession() {
        JavaSession own = new JavaSession(SessionOptions.of(List.of()));
        own.evaluate("int x = 1;", "In [1]");
        own.close();
        return new WeakReference<>(own);
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
        assertTrue(report("hose").get(0).contains("hose"));
        value("var kind = \"five\";");
        assertEquals(10, value("twice"));
    }

    @Test
    void aClosureSeesWhatItCapturedChange() {
        value("double target = 780; java.util.function.DoubleUnaryOperator need = b -> target * b;");
        assertEquals(1560.0, value("need.applyAsDouble(2)"));
        assertEquals(List.of(), run("double target = 700;").notes());
        assertEquals(1400.0, value("need.applyAsDouble(2)"));
        CellResult retyped = run("int target = 5;");
        assertTrue(retyped.notes().get(0).startsWith("need "), retyped.notes()::toString);
        value("int share() { return 7; } java.util.function.IntSupplier ask = () -> share();");
        value("int share() { return 8; }");
        assertEquals(8, value("ask.getAsInt()"));
    }

    @Test
    void valuesOfARecordSurviveWhenWhatItsMethodsUseChanges() {
        value(
                "double factor = 2; double twice(double x) { return 2 * x; }\n"
                        + "record Nozzle(int thou) { double flow() { return twice(thou * factor); } } var nozzle = new Nozzle(3);");
        value("double factor = 3;");
        value("double twice(double x) { return 20 * x; }");
        assertEquals(180.0, value("nozzle.flow()"));
    }

    @Test
    void typesOfACellMayNameEachOther() {
        value("""
                sealed interface Shape permits Disc, Bar {}
                record Disc(int r) implements Shape {}
                record Bar(int a, int b) implements Shape { Bar { if (a < 0) throw new IllegalArgumentException(); } }
                Shape shape = new Disc(3);
                """);
        value("class Front { Back back; int n = 1; } class Back { Front front = new Front(); }");
        assertEquals(1, value("new Back().front.n"));
        assertEquals("Disc[r=3]", value("shape.toString()"));
        assertTrue(report("record Lost(Nowhere n) {}").get(0).contains("Nowhere"));
    }

    @Test
    void whatNoLongerFitsIsNamedWithItsReason() {
        value("int kilos() { return 3; }\nint both() { return kilos() + 1; }");
        List<String> notes = run("String kilos() { return \"x\"; }").notes();
        assertTrue(notes.get(0).contains("both") && notes.get(0).contains("incompatible types"), notes::toString);
        assertTrue(report("both()").get(0).contains("incompatible types"));
        value("int kilos() { return 5; }");
        assertEquals(6, value("both()"));
    }

    @Test
    void aDeclarationThatFailsLeavesWhatWasThere() {
        value("int level = 5; record Rail(int bar) {} var rail = new Rail(4);");
        report("int level = 1 / 0;");
        report("String level = \"a\" + 1 / 0;");
        report("int level = \"a\";");
        assertEquals(5, value("level"));
        report("record Rail(int bar) { Strng name() { return null; } }");
        assertEquals(4, value("rail.bar()"));
    }

    @Test
    void whatIsTooLargeForAClassIsRefusedAndHarmsNothing() {
        List<String> text = report("String big = \"" + "x".repeat(65_536) + "\";");
        assertTrue(text.get(0).contains("65535"), text::toString);
        report("int[] many = {" + "100000, ".repeat(20_000) + "1};");
        report("String[] texts() { return new String[] {" + "\"" + "y".repeat(60_000) + "\" + " + "\""
                + "z".repeat(6_000) + "\"}; }");
        assertEquals(2, value("1 + 1"));
        assertEquals(3, value("int three() { return 3; }\nthree()"));
    }

    @Test
    void anImportKeepsAllValues() {
        value("var kept1 = 5; int keeps() { return kept1; } record Kept(int x) {} var kept2 = new Kept(keeps());");
        assertEquals(List.of(), run("import java.util.stream.*;").notes());
        assertEquals(10, value("kept1 + kept2.x()"));
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
    void aRunningCellStopsOnRequest(String source) throws Exception {
        assertEquals("Interrupted", stoppedWhileRunning(source).error().name());
        assertEquals(2, value("1 + 1"));
    }

    @Test
    void aCellThatNothingStopsIsLeftBehind() throws Exception {
        List<String> said = stoppedWhileRunning("new java.net.ServerSocket(0).accept();")
                .error()
                .report();
        assertTrue(said.get(0).contains("left behind"), said::toString);
        assertEquals(2, value("1 + 1"));
    }

    /** What comes of a cell that is asked to stop some time after it has begun, however long it took to be compiled. */
    private static CellResult stoppedWhileRunning(String source) throws Exception {
        String mark = "shotledger.test.runs";
        CompletableFuture<Void> stop = CompletableFuture.runAsync(() -> {
            try {
                while (System.getProperty(mark) == null) {
                    Thread.sleep(10);
                }
                Thread.sleep(400);
                session.interrupt();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        });
        try {
            CellResult result = assertTimeoutPreemptively(
                    Duration.ofSeconds(60),
                    () -> run("{ System.setProperty(\"" + mark + "\", \"\"); " + source + " }"));
            stop.get();
            return result;
        } finally {
            System.clearProperty(mark);
        }
    }

    @Test
    void aTimedCellSaysHowLongItTook() {
        CellResult whole = run("%%time\nint timed = 4;\ntimed");
        assertEquals(4, whole.value());
        assertTrue(whole.notes().get(0).matches("This cell took [0-9.]+ (µs|ms|s)\\."), whole.notes()::toString);
        CellResult line = run("int untimed = 1;\n%time untimed = 7 % 4;");
        assertNull(line.error());
        assertTrue(line.notes().get(0).startsWith("Line 2 took "), line.notes()::toString);
        assertEquals(1, line.notes().size());
    }

    @Test
    void theVariablesCanBeLookedAt() {
        value("int listed = 5; var jets = new int[] {62, 71};");
        String table = value("vars()").toString();
        assertTrue(table.matches("(?s).*listed +int +5\n?.*"), table);
        assertTrue(table.matches("(?s).*jets +int\\[\\] +\\[62, 71\\].*"), table);
    }

    @Test
    void anExitEndsTheCellAndNotTheSession() {
        value("int before = 3;");
        assertTrue(report("if (before == 3) System.exit(5);").get(0).contains("System.exit(5)"));
        assertEquals(3, value("before"));
    }

    @Test
    void whatAThreadThrowsIsToldWithItsPlace() {
        StringBuilder printed = new StringBuilder();
        try (OutputRouter router = new OutputRouter((stream, text) -> {})) {
            router.begin((stream, text) -> printed.append(text));
            value("var thrower = new Thread(() -> { int zero = 0; System.out.println(1 / zero); }); thrower.start();"
                    + " thrower.join();");
            router.flush();
        }
        assertTrue(printed.toString().contains("ArithmeticException: / by zero"), printed::toString);
        assertTrue(printed.toString().contains("In [" + number + "], line 1"), printed::toString);
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
                session.interrupt();
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
