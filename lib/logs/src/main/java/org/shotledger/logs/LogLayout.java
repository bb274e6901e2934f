package org.shotledger.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How the text of a log is laid out, as found by looking at its first rows.
 *
 * @param delimiter what parts the cells: comma, semicolon or tab
 * @param before lines above the headings
 * @param after lines between the headings and the first row
 * @param units units that stand in a line of their own under the headings, column by column; empty when there is no such line
 * @param commas for each column whether its numbers have a decimal comma
 * @param undecided columns, from 1, whose numbers read either way while nothing in the file tells
 * @param clocks columns, from 1, that hold clock times
 */
record LogLayout(
        char delimiter,
        int before,
        int after,
        List<String> units,
        List<Boolean> commas,
        List<Integer> undecided,
        List<Integer> clocks) {

    LogLayout {
        units = List.copyOf(units);
        commas = List.copyOf(commas);
        undecided = List.copyOf(undecided);
        clocks = List.copyOf(clocks);
    }

    /** Whether a column, from 1, has a decimal comma. */
    boolean comma(int column) {
        return column <= commas.size() && commas.get(column - 1);
    }

    /** The unit under a heading, for a column from 1; empty when there is none. */
    String unit(int column) {
        return column <= units.size() ? units.get(column - 1) : "";
    }

    /** What was found, in words. */
    String words() {
        String parted = delimiter == '\t' ? "tabs" : delimiter == ';' ? "semicolons" : "commas";
        boolean some = commas.contains(true);
        return String.format(
                Locale.ROOT,
                "cells parted by %s, decimal %s, headings on line %d%s",
                parted,
                some && commas.contains(false) ? "points and commas" : some ? "commas" : "points",
                before + 1,
                units.isEmpty() ? "" : ", units under them");
    }

    /** A line of the sample as cells. */
    static List<String> cells(String line, char delimiter) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == delimiter && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }
}
