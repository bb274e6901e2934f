package org.shotledger.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.function.LongFunction;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.units.QuantityKind;

/** What a sheet or table may not be: too long, too deep, no text, no file. Each message once. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SheetLimitsTest {
    private static final List<CsvColumn> BORE = List.of(CsvColumn.required("bore", QuantityKind.BORE, 1e-4, 0.01));

    /** A text made while it is read. */
    private static final class Endless extends Reader {
        private final LongFunction<String> line;
        private final long lines;
        private long next;
        private String text = "";
        private int at;

        Endless(long lines, LongFunction<String> line) {
            this.line = line;
            this.lines = lines;
        }

        @Override
        public int read(char[] buffer, int offset, int length) {
            if (at == text.length()) {
                if (next == lines) {
                    return -1;
                }
                text = line.apply(next++);
                at = 0;
            }
            int n = Math.min(length, text.length() - at);
            text.getChars(at, at + n, buffer, offset);
            at += n;
            return n;
        }

        @Override
        public void close() {}
    }

    /** What a million rows leave in memory while they stream is what a hundred thousand leave. */
    @Test
    void memory_does_not_grow_with_the_rows_that_stream() {
        try (CsvRows rows = CsvRows.open(new Endless(1_000_001, n -> n == 0 ? "a,b\n" : n + "," + 2 * n + "\n"), "t")) {
            long early = 0;
            for (int n = 1; n <= 1_000_000; n++) {
                assertEquals(n + 1, rows.next().line());
                if (n == 100_000) {
                    early = used();
                }
            }
            long growth = used() - early;
            assertTrue(growth < 4_000_000, "bytes grown by nine hundred thousand rows: " + growth);
            assertEquals(null, rows.next());
        }
    }

    private static long used() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    @Test
    void a_table_of_more_than_two_million_rows_is_to_be_split() {
        assertEquals(
                "t, line 2000001: The table has more than 2000000 rows; split it.",
                message(() ->
                        CsvTable.read(new Endless(2_000_010, n -> n == 0 ? "bore [thou]\n" : "20\n"), "t", BORE)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "\"bore [thou]|t, line 1: The heading line has an open or misplaced quotation mark; mend it.",
                "bore [thou]#2\u00010|t, line 2: The character U+0001 does not belong into a table; remove it.",
                "bore [thou]#20#30,1|t, line 3: The row has 2 cells where the heading has 1; a decimal comma counts as two, write a point or part the cells by semicolons.",
            })
    void a_broken_table_is_refused(String text, String message) {
        assertEquals(
                message, message(() -> CsvTable.read(new StringReader(text.replace('#', '\n') + "\n"), "t", BORE)));
    }

    @Test
    void a_table_has_a_bounded_number_of_columns() {
        String heading = "a,".repeat(600) + "b\n";
        assertEquals(
                "t, line 1: The table has 601 columns; at most 500 are read.",
                message(() -> CsvTable.read(new StringReader(heading), "t", BORE)));
    }

    @Test
    void a_heading_in_another_script_is_quoted_and_long_ones_are_cut() {
        String text =
                message(() -> CsvTable.read(new StringReader("bore [thou]," + "x".repeat(300) + "\n1,2\n"), "t", BORE));
        assertTrue(text.contains("\"" + "x".repeat(57) + "...\" is not known here; known are bore."), text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "a: 1#---#b: 2|f, line 2, column 1: A second document begins here; a sheet is one document, remove the line of dashes.",
                "? [a]#: 1|f, line 1, column 3: A name of a value must be plain text.",
                "a: \"\\x|f: This is not YAML (a backslash in double quotes is not followed by what it announces); check the indentation and the colons here, and put text that holds \": \" or \" #\" in quotes.",
                "a:#\t- 1|f, line 2, column 1: This is not YAML (found character '\\t(TAB)' that cannot start any token. (Do not use \\t(TAB) for indentation)); check the indentation and the colons here, and put text that holds \": \" or \" #\" in quotes.",
            })
    void what_is_no_plain_yaml_is_refused(String text, String message) {
        assertEquals(message, yaml(text.replace('#', '\n').replace("\" \n\"", "\" #\"")));
    }

    @Test
    void a_sheet_has_a_bounded_number_of_values() {
        String text = yaml("a: [" + "1,".repeat(60_000) + "1]");
        assertTrue(text.endsWith("The sheet has more than 50000 values; move tables to CSV files."), text);
    }

    @Test
    void a_text_has_a_bounded_length() {
        assertEquals(
                "f: The text has 1048577 characters; a sheet may have 1048576.",
                message(() -> SheetText.check("x".repeat(SheetText.LARGEST + 1), "f")));
    }

    @Test
    void what_is_no_file_or_may_not_be_read_is_said(@TempDir Path folder) throws IOException {
        assertEquals(
                "f: This is not a file; name a file.",
                message(() -> SheetText.read(Files.createDirectory(folder.resolve("d")), "f")));
        assertEquals(
                "t: There is no such file; check the name and the folder.",
                message(() -> CsvRows.open(folder.resolve("none.csv"), "t")));
        Path shut = Files.writeString(folder.resolve("shut.csv"), "bore [thou]\n20\n");
        Files.setPosixFilePermissions(shut, PosixFilePermissions.fromString("-w-------"));
        Assumptions.assumeFalse(Files.isReadable(shut), "this user may read everything");
        assertEquals("t: The file cannot be read (" + shut + ").", message(() -> CsvRows.open(shut, "t")));
        assertEquals(
                "f: The file cannot be read (" + shut + "); check its rights.",
                message(() -> SheetText.read(shut, "f")));
    }

    private static String yaml(String text) {
        Problems problems = new Problems();
        YamlSheet.read(text, "f", problems);
        return problems.list().get(0).toString();
    }

    private interface Attempt {
        Object run() throws IOException;
    }

    private static String message(Attempt attempt) {
        return assertThrows(SheetException.class, attempt::run).getMessage();
    }
}
