package org.shotledger.logs;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.shotledger.sheet.CsvRows;
import org.shotledger.sheet.CsvRows.Row;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.Problems;
import org.shotledger.sheet.SheetException;
import org.shotledger.units.Excerpt;

/** Reads the rows of a log. */
final class LogReading {
    private static final int MOST_ROWS = 5_000_000;
    private static final int MOST_PROBLEMS = 200;

    private final CsvRows rows;
    private final String file;
    private final LogMapping mapping;
    private final Problems problems = new Problems();
    private final List<Finding> findings = new ArrayList<>();
    private ColumnUse[] uses;

    private LogReading(CsvRows rows, String file, LogMapping mapping) {
        this.rows = rows;
        this.file = file;
        this.mapping = mapping;
    }

    static EngineLog read(Path path, String name, LogMapping mapping) {
        if (!Files.isRegularFile(path)) {
            throw new SheetException(Problem.of(name, "There is no such file; check the name and the folder."));
        }
        try (Reader text = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
            return read(text, name, mapping);
        } catch (IOException e) {
            throw new SheetException(Problem.of(name, "The file cannot be read (" + e.getMessage() + ")."));
        }
    }

    static EngineLog read(Reader text, String name, LogMapping mapping) {
        Reader commented = mapping.before() > 0 ? new CommentedLines(text, mapping.before()) : text;
        try (CsvRows rows = CsvRows.open(commented, name)) {
            return new LogReading(rows, name, mapping).read();
        }
    }

    private EngineLog read() {
        uses = new LogHeadings(rows, file, mapping, problems, findings).read();
        problems.throwIfAny();
        for (int i = 0; i < mapping.after(); i++) {
            rows.next();
        }
        Column[] columns = new Column[uses.length];
        for (int i = 0; i < uses.length; i++) {
            columns[i] = uses[i] == null ? null : new Column();
        }
        Column lines = new Column();
        int n = 0;
        Row row = rows.next();
        while (row != null && problems.count() < MOST_PROBLEMS) {
            Row next = rows.next();
            if (whole(row, next == null)) {
                cells(row, columns);
                lines.add(row.line());
                n++;
            }
            if (n >= MOST_ROWS && next != null) {
                problem(next.line(), 0, "", "", "The log has more than " + MOST_ROWS + " rows; split it.");
                break;
            }
            row = next;
        }
        if (n == 0 && problems.count() == 0) {
            problem(rows.headingLine(), 0, "", "", "The log has no rows below its heading; read a log with samples.");
        }
        problems.throwIfAny();
        Map<LogChannel, double[]> values = new EnumMap<>(LogChannel.class);
        for (int i = 0; i < uses.length; i++) {
            if (uses[i] != null) {
                values.put(uses[i].channel(), columns[i].take());
            }
        }
        return new EngineLog(file, rows.comments(), values, lines.take(), mapping.ambient(), findings);
    }

    /** Whether a row has its cells; surplus cells are let through when they are empty. */
    private boolean whole(Row row, boolean last) {
        int cells = row.cells().size();
        boolean surplus = cells > uses.length
                && row.cells().subList(uses.length, cells).stream().allMatch(String::isEmpty);
        if (cells == uses.length || surplus) {
            return true;
        }
        if (last && cells < uses.length) {
            findings.add(new Finding(
                    Finding.Kind.CUT_SHORT,
                    "",
                    Double.NaN,
                    Double.NaN,
                    1,
                    "The last row (line " + row.line() + ") has " + cells + " of " + uses.length
                            + " cells and is left out; the logger stopped while it wrote."));
            return false;
        }
        problem(
                row.line(),
                0,
                "",
                "",
                "The row has " + cells + " cells where the heading has " + uses.length
                        + (rows.decimalComma()
                                ? "; mend the row."
                                : "; a decimal comma counts as two, write a point or part the cells by semicolons."));
        return false;
    }

    private void cells(Row row, Column[] columns) {
        for (int i = 0; i < uses.length; i++) {
            if (uses[i] != null) {
                String cell = row.cells().get(i);
                double si = ColumnUse.saysNothing(cell) ? Double.NaN : uses[i].si(cell, rows.decimalComma());
                if (Double.isNaN(si) && !ColumnUse.saysNothing(cell)) {
                    problem(
                            row.line(),
                            i + 1,
                            uses[i].channel().words(),
                            cell,
                            Excerpt.quoted(cell) + " is not a number"
                                    + (uses[i].channel() == LogChannel.NITROUS_ON ? " and neither on nor off" : "")
                                    + "; write one without its unit, or leave the cell empty where the sensor was lost.");
                }
                columns[i].add(si);
            }
        }
    }

    private void problem(int line, int column, String field, String found, String sentence) {
        problems.add(new Problem(file, line, column, field, found, sentence));
    }
}
