package org.shotledger.snippet;

import java.util.List;

/**
 * A line of a cell.
 *
 * @param label the cell, such as {@code In [4]}
 * @param line line in the cell, from 1
 * @param text that line
 * @param column where the caret goes, in UTF-16 units from 0
 */
record Place(String label, int line, String text, int column) {

    String heading() {
        return label + ", line " + line;
    }

    /** The source line and a caret under it. */
    List<String> excerpt() {
        String before = text.substring(0, Math.min(column, text.length()));
        StringBuilder pad = new StringBuilder();
        before.codePoints().forEach(c -> pad.append(c == '\t' ? '\t' : ' '));
        return List.of("    " + text, "    " + pad + "^");
    }
}
