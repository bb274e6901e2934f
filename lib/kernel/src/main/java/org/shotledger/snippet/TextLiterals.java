package org.shotledger.snippet;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Finds texts that no class file can hold; the compiler notices them too late. */
final class TextLiterals {

    /** A text in a class file has its length in two bytes (Java Virtual Machine Specification, section 4.4.7). */
    private static final int MOST_BYTES = 65_535;

    private TextLiterals() {}

    /** The error of a text in a piece of a cell that is too long; null if there is none. */
    static CellError tooLong(Cell cell, Piece piece) {
        String source = piece.source();
        if (source.length() <= MOST_BYTES / 3) {
            return null;
        }
        int at = 0;
        while (at < source.length()) {
            int end = end(source, at);
            int bytes =
                    source.charAt(at) == '"' ? source.substring(at, end).getBytes(StandardCharsets.UTF_8).length : 0;
            if (bytes > MOST_BYTES) {
                return error(cell.placeAt(piece.offset() + at), bytes);
            }
            at = end;
        }
        return null;
    }

    /** Where the text, character or comment begins that holds a cursor; -1 if it stands in none. */
    static int around(String source, int cursor) {
        int at = 0;
        while (at < cursor) {
            int end = end(source, at);
            char first = source.charAt(at);
            boolean token = first == '"' || first == '\'' || end - at > 1;
            if (token && (end > cursor || (end == cursor && !isEnded(source.substring(at, end))))) {
                return at;
            }
            at = end;
        }
        return -1;
    }

    private static boolean isEnded(String token) {
        if (token.startsWith("/")) {
            return token.startsWith("/*") && token.length() >= 4 && token.endsWith("*/");
        }
        String mark = token.startsWith("\"\"\"") ? token.substring(0, 3) : token.substring(0, 1);
        return token.length() >= 2 * mark.length() && token.endsWith(mark);
    }

    private static CellError error(Place place, int bytes) {
        String sentence = "a text of " + bytes + " bytes is too long: a text in a cell may have " + MOST_BYTES
                + ". Put it into a file and read that, or join shorter texts with String.join.";
        List<String> lines = new ArrayList<>();
        lines.add(place.heading() + ": " + sentence);
        return new CellError("CompileError", sentence, lines, null);
    }

    /** Where the text, character, comment or other character that begins here ends. */
    static int end(String source, int at) {
        if (source.startsWith("\"\"\"", at)) {
            return closing(source, at + 3, "\"\"\"");
        }
        if (source.startsWith("//", at)) {
            int line = source.indexOf('\n', at);
            return line < 0 ? source.length() : line;
        }
        if (source.startsWith("/*", at)) {
            int close = source.indexOf("*/", at + 2);
            return close < 0 ? source.length() : close + 2;
        }
        char first = source.charAt(at);
        return first == '"' || first == '\'' ? closing(source, at + 1, String.valueOf(first)) : at + 1;
    }

    private static int closing(String source, int from, String mark) {
        for (int at = from; at < source.length(); at++) {
            if (source.charAt(at) == '\n' && mark.length() == 1) {
                return at;
            } else if (source.charAt(at) == '\\') {
                at++;
            } else if (source.startsWith(mark, at)) {
                return at + mark.length();
            }
        }
        return source.length();
    }
}
