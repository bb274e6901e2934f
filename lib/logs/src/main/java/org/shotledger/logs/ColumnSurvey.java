package org.shotledger.logs;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.sheet.CsvRows;
import org.shotledger.sheet.CsvRows.Heading;
import org.shotledger.sheet.CsvRows.Row;

/** What stands in one column of a log that nobody has mapped yet. */
final class ColumnSurvey {
    private static final int MOST_ROWS = 100_000;

    private final Heading heading;
    private final boolean comma;
    private int numbers;
    private int clocks;
    private int flags;
    private int others;
    private int rises;
    private double first = Double.NaN;
    private double last = Double.NaN;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    private ColumnSurvey(Heading heading, boolean comma) {
        this.heading = heading;
        this.comma = comma;
    }

    /** Goes through the rows, at most the first hundred thousand. */
    static List<ColumnSurvey> of(CsvRows rows, LogLayout layout) {
        List<ColumnSurvey> surveys = new ArrayList<>();
        for (Heading h : LogHeadings.of(rows.headings(), layout)) {
            surveys.add(new ColumnSurvey(h, layout.comma(h.column())));
        }
        int n = 0;
        for (Row row = rows.next(); row != null && n < MOST_ROWS; row = rows.next(), n++) {
            for (int i = 0;
                    n >= layout.after()
                            && i < Math.min(surveys.size(), row.cells().size());
                    i++) {
                surveys.get(i).add(row.cells().get(i));
            }
        }
        return surveys;
    }

    private void add(String cell) {
        if (LogNumber.saysNothing(cell)) {
            return;
        }
        double value = LogNumber.read(cell, comma);
        if (Double.isFinite(value)) {
            rises += value > last ? 1 : 0;
            first = numbers == 0 ? value : first;
            last = value;
            low = Math.min(low, value);
            high = Math.max(high, value);
            numbers++;
        } else if (Clock.looksLike(cell)) {
            clocks++;
        } else if (!Double.isNaN(Flag.read(cell))) {
            flags++;
        } else {
            others++;
        }
    }

    Heading heading() {
        return heading;
    }

    double low() {
        return low;
    }

    double high() {
        return high;
    }

    /** Whether nearly all cells are numbers. */
    boolean isNumbers() {
        return numbers > 0 && clocks + flags + others <= 0.02 * numbers;
    }

    boolean isClock() {
        return clocks > 0 && clocks >= numbers + flags + others;
    }

    /** Words for on and off, or nothing but 0 and 1. */
    boolean isFlag() {
        return flags > numbers + others || (isNumbers() && low >= 0 && high <= 1 && rises <= 0.2 * numbers + 1);
    }

    /** Whether the numbers rise from row to row, nearly always. */
    boolean rises() {
        return isNumbers() && numbers > 1 && rises >= 0.9 * (numbers - 1);
    }

    /** The mean step from number to number. */
    double meanStep() {
        return (last - first) / Math.max(1, numbers - 1);
    }
}
