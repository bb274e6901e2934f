package org.shotledger.logs;

import java.util.Locale;
import org.shotledger.sheet.CsvRows.Row;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.Problems;
import org.shotledger.units.Excerpt;

/** Turns cells into values and remembers, column by column, the first cell that is none and how many there are. */
final class CellProblems {
    private static final int MOST = 100_000;

    private final String file;
    private final ColumnUse[] uses;
    private final Problem[] first;
    private final int[] count;
    private int all;

    CellProblems(String file, ColumnUse[] uses) {
        this.file = file;
        this.uses = uses;
        this.first = new Problem[uses.length];
        this.count = new int[uses.length];
    }

    /** The SI value of a cell, by its index from 0; NaN where there is none. */
    double value(Row row, int index) {
        String cell = row.cells().get(index);
        if (LogNumber.saysNothing(cell)) {
            return Double.NaN;
        }
        double si = uses[index].si(cell);
        if (Double.isNaN(si)) {
            all++;
            count[index]++;
            if (first[index] == null) {
                first[index] = new Problem(
                        file, row.line(), index + 1, uses[index].channel().words(), cell, Excerpt.quoted(cell));
            }
        }
        return si;
    }

    boolean tooMany() {
        return all > MOST;
    }

    void report(Problems problems) {
        for (int i = 0; i < first.length; i++) {
            if (first[i] != null) {
                Problem p = first[i];
                String more = count[i] == 1
                        ? ""
                        : String.format(Locale.ROOT, " (and %d more cells of this column)", count[i] - 1);
                problems.add(new Problem(
                        p.file(),
                        p.line(),
                        p.column(),
                        p.field(),
                        p.found(),
                        p.sentence() + " is not " + wanted(uses[i]) + more + "; " + advice(uses[i])));
            }
        }
    }

    private static String wanted(ColumnUse use) {
        return switch (use.channel()) {
            case TIME -> "a number and not a clock time";
            case NITROUS_ON -> "a number and neither on nor off";
            default -> "a number with a decimal " + (use.comma() ? "comma" : "point");
        };
    }

    private static String advice(ColumnUse use) {
        return use.channel() == LogChannel.NITROUS_ON
                ? "say in the mapping which word means on, such as \"on: FIRE\"."
                : "write one without its unit, or leave the cell empty where the sensor was lost.";
    }
}
