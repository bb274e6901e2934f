package org.shotledger.sheet;

import java.util.Locale;

/**
 * One thing wrong with a file.
 *
 * @param file the file as the user named it
 * @param line line from 1, 0 when the file as a whole is meant
 * @param column column from 1, 0 when the line as a whole is meant
 * @param field the field, such as {@code engine.bore}, or a table column; may be empty
 * @param found what stands there, may be empty
 * @param sentence one sentence: what is wrong, what is allowed, what to do
 */
public record Problem(String file, int line, int column, String field, String found, String sentence) {

    /**
     * A problem of a file as a whole.
     *
     * @param file the file
     * @param sentence what is wrong
     * @return the problem
     */
    public static Problem of(String file, String sentence) {
        return new Problem(file, 0, 0, "", "", sentence);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(file);
        if (line > 0) {
            text.append(String.format(Locale.ROOT, ", line %d", line));
        }
        if (column > 0) {
            text.append(String.format(Locale.ROOT, ", column %d", column));
        }
        if (!field.isEmpty()) {
            text.append(", ").append(field);
        }
        return text.append(": ").append(sentence).toString();
    }
}
