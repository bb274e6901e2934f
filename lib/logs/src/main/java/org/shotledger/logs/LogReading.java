package org.shotledger.logs;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
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

/** Reads the rows of a log. */
final class LogReading {
    private static final int MOST_ROWS = 5_000_000;

    private final CsvRows rows;
    private final String file;
    private final LogMapping mapping;
    private final LogLayout layout;
    private final Problems problems = new Problems();
    private final List<Finding> findings = new ArrayList<>();
    private ColumnUse[] uses;
    private RowShapes shapes;
    private CellProblems cells;

    private LogReading(CsvRows rows, String file, LogMapping mapping, LogLayout layout) {
        this.rows = rows;
        this.file = file;
        this.mapping = mapping;
        this.layout = layout;
    }

    static EngineLog read(Path path, String name, LogMapping mapping) {
        if (!Files.isRegularFile(path)) {
            throw new SheetException(Problem.of(name, "There is no such file; check the name and the folder."));
        }
        try (BufferedReader text = LogText.open(path)) {
            return read(text, name, mapping);
        } catch (IOException e) {
            throw new SheetException(Problem.of(name, "The file cannot be read (" + e.getMessage() + ")."));
        }
    }

    static EngineLog read(Reader text, String name, LogMapping mapping) {
        try (BufferedReader lines = new BufferedReader(text)) {
            LogLayout layout = LayoutSearch.of(LogSample.of(lines), mapping.before(), mapping.after());
            try (CsvRows rows = CsvRows.open(lines, name, layout.delimiter(), layout.before())) {
                return new LogReading(rows, name, mapping, layout).read();
            }
        } catch (IOException e) {
            throw new SheetException(Problem.of(name, "The file cannot be read (" + e.getMessage() + ")."));
        }
    }

    private EngineLog read() {
        uses = new LogHeadings(rows, file, mapping, layout, problems, findings).read();
        problems.throwIfAny();
        shapes = new RowShapes(rows.headings(), file, findings, problems);
        cells = new CellProblems(file, uses);
        for (int i = 0; i < layout.after(); i++) {
            rows.next();
        }
        Column[] columns = new Column[uses.length];
        for (int i = 0; i < uses.length; i++) {
            columns[i] = uses[i] == null ? null : new Column();
        }
        Column lines = new Column();
        int n = rows(columns, lines);
        shapes.report(n);
        cells.report(problems);
        if (n == 0 && problems.count() == 0) {
            problem(rows.headingLine(), "The log has no rows below its heading; read a log with samples.");
        }
        problems.throwIfAny();
        return new EngineLog(file, layout.words(), rows.comments(), taken(columns), lines.take(), mapping, findings);
    }

    private int rows(Column[] columns, Column lines) {
        int n = 0;
        Row row = rows.next();
        while (row != null && !cells.tooMany()) {
            Row next = rows.next();
            if (shapes.isRow(row, next == null)) {
                for (int i = 0; i < uses.length; i++) {
                    if (uses[i] != null) {
                        columns[i].add(cells.value(row, i));
                    }
                }
                lines.add(row.line());
                n++;
            }
            if (n >= MOST_ROWS && next != null) {
                problem(next.line(), "The log has more than " + MOST_ROWS + " rows; split it.");
                break;
            }
            row = next;
        }
        return n;
    }

    private Map<LogChannel, double[]> taken(Column[] columns) {
        Map<LogChannel, double[]> values = new EnumMap<>(LogChannel.class);
        for (int i = 0; i < uses.length; i++) {
            if (uses[i] != null) {
                values.put(uses[i].channel(), columns[i].take());
            }
        }
        return values;
    }

    private void problem(int line, String sentence) {
        problems.add(new Problem(file, line, 0, "", "", sentence));
    }
}
