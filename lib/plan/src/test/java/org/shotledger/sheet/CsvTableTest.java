package org.shotledger.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.units.QuantityKind;

@DisplayNameGeneration(ReplaceUnderscores.class)
class CsvTableTest {
    private static final List<CsvColumn> COLUMNS = List.of(
            CsvColumn.required("pressure", QuantityKind.PRESSURE_DIFFERENCE, 0, 20e5),
            CsvColumn.required("flow", QuantityKind.VOLUME_FLOW, 0, 0.01),
            CsvColumn.optional("current", QuantityKind.CURRENT, 0, 100));

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pressure [bar],flow [L/h]~3,285.5~",
                "﻿pressure [bar],flow [L/h]~3,285.5~",
                "# from a bench~~pressure [bar],flow [L/h]~# between~3,285.5",
                "flow [L/h];pressure [bar]~285,5;3~",
                "pressure [kPa]\tflow [L/h]~300\t285,5~",
                "PRESSURE [psi],Flow [cc/min]~43.511321319,4758.3333333~",
                "\"pressure [bar]\",\"flow [L/h]\"~\"3\",\"285.5\"~",
            })
    void the_same_table_in_many_dresses(String text) {
        for (String end : List.of("\n", "\r\n")) {
            CsvTable table = read(text.replace("~", end));
            assertEquals(3e5, table.column("pressure")[0], 1e-3);
            assertEquals(285.5e-3 / 3600, table.column("flow")[0], 1e-12);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "pressure [bar],flow [L/h]~3,285,5~|t.csv, line 2: The row has 3 cells where the heading has 2; a decimal comma counts as two, write a point or part the cells by semicolons.",
                "pressure [bar];flow [L/h]~3~|t.csv, line 2: The row has 1 cells where the heading has 2.",
                "pressure [bar],flow~3,285~|t.csv, line 1, column 2, flow: The heading \"flow\" has no unit; write it in brackets, such as \"flow [cc/min]\".",
                "pressure [bar],flow [kg]~3,285~|t.csv, line 1, column 2, flow: In the heading, \"kg\" is a mass; a volume flow is wanted, in cc/s, cc/min, cc/h, L/s, L/min, L/h, mL/s, mL/min, mL/h, cm3/s, cm3/min, cm3/h, m3/s, m3/min, m3/h, in3/s, in3/min, in3/h, ft3/s, ft3/min, ft3/h, US gal/s, US gal/min, US gal/h, imp gal/s, imp gal/min, imp gal/h.",
                "pressure [bar]~3~|t.csv, line 1, flow: The table lacks the column \"flow\"; add it with its unit in brackets, such as \"flow [cc/min]\".",
                "pressure [bar],flow [L/h],flow [L/h]~3,1,1~|t.csv, line 1, column 3, flow: The column \"flow\" stands twice; keep one of them.",
                "pressure [bar],flow [L/h],curent [A]~3,1,1~|t.csv, line 1, column 3, curent: The column \"curent\" is not known here; the nearest name is \"current\".",
                "pressure [bar],flow [L/h]~3,NaN~|t.csv, line 2, column 2, flow: \"NaN\" is not a number; write one without its unit.",
                "pressure [bar],flow [L/h]~3,Infinity~|t.csv, line 2, column 2, flow: \"Infinity\" is not a number; write one without its unit.",
                "pressure [bar],flow [L/h]~3,1e999~|t.csv, line 2, column 2, flow: \"1e999\" is not plausible; allowed is 0 to 36000 L/h.",
                "pressure [bar],flow [L/h]~3,~|t.csv, line 2, column 2, flow: The cell is empty; write a number.",
                "pressure [bar],flow [L/h]~3,285 L/h~|t.csv, line 2, column 2, flow: \"285 L/h\" is not a number; write one without its unit.",
                "pressure [bar],flow [L/h]~-3,285~|t.csv, line 2, column 1, pressure: \"-3\" is not plausible; allowed is 0 to 20 bar.",
                "pressure [bar],flow [L/h]~|t.csv, line 1: The table has no rows; write at least one below the heading.",
                "pressure [bar],flow [L/h]~3,\"28~|t.csv, line 2: The row has an open or misplaced quotation mark; mend it.",
                "# only words~|t.csv: The table has no heading line; write one such as \"flow [kg/s],...\".",
            })
    void what_is_wrong_is_said_with_line_and_column(String text, String message) {
        assertEquals(
                message,
                assertThrows(SheetException.class, () -> read(text.replace("~", "\n")))
                        .problems()
                        .get(0)
                        .toString());
    }

    @Test
    void control_characters_and_endless_lines_are_refused() {
        assertEquals(
                "t.csv, line 2: The character U+0000 does not belong into a table; remove it.",
                assertThrows(SheetException.class, () -> read("pressure [bar],flow [L/h]\n3,\0\n"))
                        .getMessage());
        assertEquals(
                "t.csv, line 2: The line is longer than 20000 characters; check the line ends.",
                assertThrows(SheetException.class, () -> read("pressure [bar],flow [L/h]\n" + "3".repeat(30_000)))
                        .getMessage());
    }

    @Test
    void a_hundred_problems_are_listed_and_the_rest_counted() {
        StringBuilder text = new StringBuilder("pressure [bar],flow [L/h]\n");
        text.append("1\n".repeat(150));
        List<Problem> problems =
                assertThrows(SheetException.class, () -> read(text.toString())).problems();
        assertEquals(101, problems.size());
        assertEquals(
                "50 further problems are not listed; mend these first.",
                problems.get(100).sentence());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "420,500,610,800,900|t.csv, line 2, column 1, pressure: \"420\" is not plausible; allowed is 0 to 20 bar."
                        + " Of this column 4 more cells cannot be used; in kPa or inH2O or mmHg the whole column would be allowed:"
                        + " check the unit in the heading.",
                "3,x,y,z,-|t.csv, line 3, column 1, pressure: \"x\" is not a number; write one without its unit."
                        + " Of this column 3 more cells cannot be used.",
                "-420,-500,-610,-800,9|t.csv, line 2, column 1, pressure: \"-420\" is not plausible; allowed is 0 to 20"
                        + " bar. Of this column 3 more cells cannot be used.",
            })
    void a_column_that_is_wrong_is_one_line(String cells, String message) {
        String text = "pressure [bar],flow [L/h]\n" + cells.replace(",", ",285\n") + ",285\n";
        List<Problem> problems =
                assertThrows(SheetException.class, () -> read(text)).problems();
        assertEquals(List.of(message), problems.stream().map(Problem::toString).toList());
    }

    @Test
    void three_cells_are_told_one_by_one() {
        List<Problem> problems = assertThrows(
                        SheetException.class, () -> read("pressure [bar],flow [L/h]\n420,1\n3,x\n500,1\n3,1\n510,1\n"))
                .problems();
        assertEquals(List.of(2, 3, 4, 6), problems.stream().map(Problem::line).toList());
    }

    /** A million rows pass with the rows' own memory and little more: the test machine's heap is 1 GB in the build. */
    @Test
    void a_million_rows_stream(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("long.csv");
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            out.write("pressure [bar],flow [L/h]\n");
            for (int i = 0; i < 1_000_000; i++) {
                out.write(i % 10 + "," + i % 300 + "\n");
            }
        }
        CsvTable table = CsvTable.read(file, "long.csv", COLUMNS);
        assertEquals(1_000_000, table.rows());
        assertEquals(1_000_001, table.line(999_999));
    }

    private static CsvTable read(String text) {
        return CsvTable.read(new StringReader(text), "t.csv", COLUMNS);
    }
}
