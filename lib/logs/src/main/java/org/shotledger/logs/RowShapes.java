package org.shotledger.logs;

import java.util.List;
import org.shotledger.sheet.CsvRows.Heading;
import org.shotledger.sheet.CsvRows.Row;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.Problems;

/** Tells rows from what else stands between them: headings repeated, titles of further parts, rows that are torn. */
final class RowShapes {
    /** Torn rows up to this share of all, or this number, are left out and told; more mean that the file is not understood. */
    private static final double FEW = 0.01;

    private static final int FEW_ROWS = 3;

    private final List<Heading> headings;
    private final String file;
    private final List<Finding> findings;
    private final Problems problems;
    private int between;
    private int betweenLine;
    private int torn;
    private Problem firstTorn;

    RowShapes(List<Heading> headings, String file, List<Finding> findings, Problems problems) {
        this.headings = headings;
        this.file = file;
        this.findings = findings;
        this.problems = problems;
    }

    /** Whether the cells are a row; surplus cells are let through when they are empty. */
    boolean isRow(Row row, boolean last) {
        int cells = row.cells().size();
        int width = headings.size();
        boolean surplus =
                cells > width && row.cells().subList(width, cells).stream().allMatch(String::isEmpty);
        if (isBetween(row)) {
            between++;
            betweenLine = betweenLine == 0 ? row.line() : betweenLine;
            return false;
        }
        if (cells == width || surplus) {
            return true;
        }
        if (last && cells < width) {
            findings.add(finding(
                    Finding.Kind.CUT_SHORT,
                    1,
                    "The last row (line " + row.line() + ") has " + cells + " of " + width
                            + " cells and is left out; the logger stopped while it wrote."));
            return false;
        }
        torn++;
        if (firstTorn == null) {
            firstTorn = new Problem(
                    file,
                    row.line(),
                    0,
                    "",
                    "",
                    "The row has " + cells + " cells where the heading has " + width
                            + "; mend the row (a decimal comma counts as two cells where commas part them, unless the"
                            + " number stands in quotation marks).");
        }
        return false;
    }

    /** The headings or their units once more, or a line of words without a number. */
    private boolean isBetween(Row row) {
        List<String> cells = row.cells();
        if (cells.stream().anyMatch(LogNumber::isNumber) || cells.stream().anyMatch(Clock::looksLike)) {
            return false;
        }
        boolean again = cells.size() == headings.size()
                && headings.stream().allMatch(h -> cells.get(h.column() - 1).startsWith(h.name()));
        boolean title = headings.size() > 1
                && !cells.get(0).isEmpty()
                && cells.stream().skip(1).allMatch(String::isEmpty);
        return again || title || UnitsRow.in(cells).isPresent();
    }

    /** Says what was met, when all rows have been read. */
    void report(int rows) {
        if (between > 0) {
            findings.add(finding(
                    Finding.Kind.LINES_BETWEEN,
                    between,
                    between + " lines from line " + betweenLine
                            + " on are headings, units or titles and no rows; they are left out."));
        }
        if (torn > Math.max(FEW_ROWS, FEW * rows) || (torn > 0 && torn >= rows)) {
            problems.add(firstTorn);
        } else if (torn > 0) {
            findings.add(finding(
                    Finding.Kind.TORN_ROW,
                    torn,
                    torn + (torn == 1 ? " row has" : " rows have")
                            + " not as many cells as there are headings, the first on line " + firstTorn.line()
                            + ", and " + (torn == 1 ? "is" : "are") + " left out."));
        }
    }

    private static Finding finding(Finding.Kind kind, int count, String sentence) {
        return new Finding(kind, "", Double.NaN, Double.NaN, count, sentence);
    }
}
