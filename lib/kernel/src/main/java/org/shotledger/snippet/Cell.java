package org.shotledger.snippet;

/**
 * A cell as it was run.
 *
 * @param label how the reader knows it, such as {@code In [4]}
 * @param source its text
 */
record Cell(String label, String source) {

    /** Line, from 1, of an offset into the source. */
    int lineAt(int offset) {
        int end = Math.min(offset, source.length());
        return 1 + (int) source.chars().limit(end).filter(c -> c == '\n').count();
    }

    /** The place of a whole line. */
    Place place(int line) {
        String text = textOf(line);
        int indent = 0;
        while (indent < text.length() && Character.isWhitespace(text.charAt(indent))) {
            indent++;
        }
        return new Place(label, line, text, indent);
    }

    /** The place of one character. */
    Place placeAt(int offset) {
        int bounded = Math.max(0, Math.min(offset, source.length()));
        int lineStart = source.lastIndexOf('\n', bounded - 1) + 1;
        int line = lineAt(bounded);
        return new Place(label, line, textOf(line), bounded - lineStart);
    }

    private String textOf(int line) {
        String[] lines = source.split("\n", -1);
        return line >= 1 && line <= lines.length ? lines[line - 1].stripTrailing() : "";
    }
}
