package org.shotledger.sheet;

import java.io.Reader;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shotledger.sheet.CsvRows.Heading;
import org.shotledger.sheet.CsvRows.Row;
import org.shotledger.units.Excerpt;
import org.shotledger.units.FigureText;
import org.shotledger.units.NearestName;
import org.shotledger.units.UnitException;
import org.shotledger.units.UnitName;

/** A table of figures in SI, every column checked for its unit and every cell for its range. */
public final class CsvTable {
    private static final int MOST_ROWS = 2_000_000;

    private final String file;
    private final List<String> comments;
    private final Map<String, double[]> values;
    private final int[] lines;

    private CsvTable(String file, List<String> comments, Map<String, double[]> values, int[] lines) {
        this.file = file;
        this.comments = comments;
        this.values = values;
        this.lines = lines;
    }

    /**
     * Reads a table.
     *
     * @param path the file
     * @param name the file as the user named it
     * @param wanted the columns it must or may have
     * @return the table
     * @throws SheetException with every problem found
     */
    public static CsvTable read(Path path, String name, List<CsvColumn> wanted) {
        try (CsvRows rows = CsvRows.open(path, name)) {
            return new Reading(rows, name, wanted).read();
        }
    }

    /**
     * Reads a table from text.
     *
     * @param text the text
     * @param name the file as the user named it
     * @param wanted the columns it must or may have
     * @return the table
     * @throws SheetException with every problem found
     */
    public static CsvTable read(Reader text, String name, List<CsvColumn> wanted) {
        try (CsvRows rows = CsvRows.open(text, name)) {
            return new Reading(rows, name, wanted).read();
        }
    }

    /**
     * A column in SI.
     *
     * @param column its name
     * @return a copy of its values
     * @throws IllegalArgumentException when the table has no such column
     */
    public double[] column(String column) {
        double[] found = values.get(column);
        if (found == null) {
            throw new IllegalArgumentException(
                    "The table " + file + " has no column '" + column + "'; it has " + values.keySet() + ".");
        }
        return found.clone();
    }

    /**
     * Tells whether an optional column is there.
     *
     * @param column its name
     * @return true when it is
     */
    public boolean has(String column) {
        return values.containsKey(column);
    }

    /**
     * The number of rows.
     *
     * @return the count
     */
    public int rows() {
        return lines.length;
    }

    /**
     * The line of a row in the file.
     *
     * @param row the row from 0
     * @return the line from 1
     */
    public int line(int row) {
        return lines[row];
    }

    /**
     * The comment lines before the heading.
     *
     * @return the lines without their marks
     */
    public List<String> comments() {
        return comments;
    }

    /**
     * The file as the user named it.
     *
     * @return its name
     */
    public String file() {
        return file;
    }

    /** The state of one reading. */
    private static final class Reading {
        private final CsvRows rows;
        private final String file;
        private final List<CsvColumn> wanted;
        private final Problems problems = new Problems();
        private final CsvColumn[] byPosition;
        private final ColumnTroubles[] cells;

        Reading(CsvRows rows, String file, List<CsvColumn> wanted) {
            this.rows = rows;
            this.file = file;
            this.wanted = wanted;
            this.byPosition = new CsvColumn[rows.headings().size()];
            this.cells = new ColumnTroubles[rows.headings().size()];
        }

        CsvTable read() {
            readHeadings();
            problems.throwIfAny();
            double[][] columns = new double[byPosition.length][64];
            int[] lines = new int[64];
            int n = 0;
            for (Row row = rows.next(); row != null; row = rows.next()) {
                if (n == lines.length) {
                    lines = Arrays.copyOf(lines, 2 * n);
                    for (int i = 0; i < columns.length; i++) {
                        columns[i] = Arrays.copyOf(columns[i], 2 * n);
                    }
                }
                if (readRow(row, columns, n)) {
                    lines[n++] = row.line();
                }
                if (n >= MOST_ROWS) {
                    problem(row.line(), 0, "", "", "The table has more than " + MOST_ROWS + " rows; split it.");
                    break;
                }
            }
            Arrays.stream(cells)
                    .flatMap(column -> column.told().stream())
                    .sorted(Comparator.comparingInt(Problem::line))
                    .forEach(problems::add);
            if (n == 0 && problems.count() == 0) {
                problem(rows.headingLine(), 0, "", "", "The table has no rows; write at least one below the heading.");
            }
            problems.throwIfAny();
            Map<String, double[]> values = new LinkedHashMap<>();
            for (int i = 0; i < columns.length; i++) {
                values.put(byPosition[i].name(), Arrays.copyOf(columns[i], n));
            }
            return new CsvTable(file, rows.comments(), values, Arrays.copyOf(lines, n));
        }

        private void readHeadings() {
            Set<String> taken = new HashSet<>();
            for (Heading heading : rows.headings()) {
                CsvColumn column = wanted.stream()
                        .filter(c -> c.isNamed(heading.name(), taken))
                        .findFirst()
                        .orElse(null);
                if (column == null) {
                    unknown(heading, taken);
                } else {
                    taken.add(column.name());
                    byPosition[heading.column() - 1] = column;
                    cells[heading.column() - 1] =
                            new ColumnTroubles(file, heading.column(), column, unit(heading, column));
                }
            }
            for (CsvColumn column : wanted) {
                if (column.required() && !taken.contains(column.name())) {
                    problem(
                            rows.headingLine(),
                            0,
                            column.name(),
                            "",
                            "The table lacks the column \"" + column.name()
                                    + "\"; add it with its unit in brackets, such as \"" + example(column) + "\".");
                }
            }
        }

        private static String example(CsvColumn column) {
            String unit = column.kind().unit(org.shotledger.units.UnitSystem.SI);
            return unit.isEmpty() ? column.name() : column.name() + " [" + unit + "]";
        }

        private void unknown(Heading heading, Set<String> taken) {
            List<String> names = wanted.stream().map(CsvColumn::name).toList();
            String lower = heading.name().toLowerCase(java.util.Locale.ROOT);
            String sentence = taken.contains(lower)
                    ? "The column " + Excerpt.quoted(heading.name()) + " stands twice; keep one of them."
                    : "The column " + Excerpt.quoted(heading.name()) + " is not known here; "
                            + NearestName.of(heading.name(), names)
                                    .map(near -> "the nearest name is \"" + near + "\".")
                                    .orElse("known are " + String.join(", ", names) + ".");
            problem(rows.headingLine(), heading.column(), Excerpt.of(heading.name()), heading.name(), sentence);
        }

        private UnitName unit(Heading heading, CsvColumn column) {
            try {
                return FigureText.unit(heading.unit(), column.kind());
            } catch (UnitException e) {
                String sentence = heading.unit().isEmpty()
                        ? "The heading " + Excerpt.quoted(heading.name())
                                + " has no unit; write it in brackets, such as \"" + example(column) + "\"."
                        : "In the heading, " + e.getMessage();
                problem(rows.headingLine(), heading.column(), column.name(), heading.unit(), sentence);
                return null;
            }
        }

        private boolean readRow(Row row, double[][] columns, int n) {
            if (row.cells().size() != byPosition.length) {
                problem(
                        row.line(),
                        0,
                        "",
                        "",
                        "The row has " + row.cells().size() + " cells where the heading has " + byPosition.length
                                + (rows.decimalComma()
                                        ? "."
                                        : "; a decimal comma counts as two, write a point or part the cells by semicolons."));
                return false;
            }
            boolean good = true;
            for (int i = 0; i < byPosition.length; i++) {
                double si = cells[i].read(row.line(), row.cells().get(i), rows.decimalComma());
                columns[i][n] = si;
                good &= !Double.isNaN(si);
            }
            return good;
        }

        private void problem(int line, int column, String field, String found, String sentence) {
            problems.add(new Problem(file, line, column, field, found, sentence));
        }
    }
}
