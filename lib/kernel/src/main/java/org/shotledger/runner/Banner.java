package org.shotledger.runner;

import java.util.List;
import org.shotledger.ipynb.NotebookCell;

/** Marks a notebook that stopped: a banner on top that links to the failing cell, and a mark in front of it. */
final class Banner {

    static final String TAG = "run-failure";
    static final String ANCHOR = "failing-cell";

    private Banner() {}

    static void remove(List<NotebookCell> cells) {
        cells.removeIf(cell -> cell.hasTag(TAG));
    }

    static void add(List<NotebookCell> cells, NotebookCell failing, String message) {
        String label = "In [" + failing.count() + "]";
        int at = cells.indexOf(failing);
        cells.add(
                at,
                NotebookCell.of(
                        "markdown",
                        "run-failure-mark",
                        "<a id=\"" + ANCHOR + "\"></a>**This cell stopped the run:**",
                        TAG));
        cells.add(
                0,
                NotebookCell.of(
                        "markdown",
                        "run-failure-banner",
                        "**This run stopped at [" + label.replace("[", "\\[").replace("]", "\\]") + "](#" + ANCHOR
                                + ").** Nothing below that cell was calculated. " + oneLine(message),
                        TAG));
    }

    private static String oneLine(String message) {
        return message.replaceAll("\\s+", " ").replaceAll("([\\\\`*_<>\\[\\]])", "\\\\$1");
    }
}
