package org.shotledger.snippet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The marks {@code %%time} at the top of a cell and {@code %time} in front of a line, which ask how long it takes. */
final class Timing {

    private static final Pattern MARK = Pattern.compile("(?m)^[ \\t]*(%%time|%time)(?=\\s)");

    private final String source;
    private final List<Integer> lines = new ArrayList<>();
    private boolean whole;

    private Timing(String source) {
        StringBuilder plain = new StringBuilder(source);
        Matcher mark = MARK.matcher(source);
        while (mark.find()) {
            boolean top = source.substring(0, mark.start()).isBlank();
            if (mark.group(1).equals("%time") || top) {
                plain.replace(
                        mark.start(1), mark.end(1), " ".repeat(mark.group(1).length()));
                whole |= mark.group(1).equals("%%time");
                lines.add(mark.end(1));
            }
        }
        this.source = plain.toString();
    }

    /** The marks of a cell. */
    static Timing of(String source) {
        return new Timing(source);
    }

    /** The cell with spaces in place of the marks. */
    String source() {
        return source;
    }

    boolean isWhole() {
        return whole;
    }

    /** Whether a mark stands in front of a piece whose text begins at an offset of the cell. */
    boolean isAsked(Piece piece, int begin) {
        return !whole && lines.stream().anyMatch(at -> at >= piece.offset() && at <= begin);
    }

    /** A time in the unit that suits it, three figures. */
    static String text(long nanos) {
        double value = nanos < 1_000_000 ? nanos / 1e3 : nanos < 1_000_000_000 ? nanos / 1e6 : nanos / 1e9;
        String unit = nanos < 1_000_000 ? " µs" : nanos < 1_000_000_000 ? " ms" : " s";
        return new BigDecimal(value).round(new MathContext(3)).toPlainString() + unit;
    }
}
