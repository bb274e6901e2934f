package org.shotledger.logs;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads the numbers of a log, with a decimal point or comma and with marks between thousands. */
final class LogNumber {
    private static final String SPACES = "[ '\u2019\u00a0\u2009\u202f]";
    private static final String END = "([eE][+-]?\\d{1,4})?";
    private static final Pattern POINTED =
            Pattern.compile("[+-]?([1-9]\\d{0,2}(,\\d{3})+|[1-9]\\d{0,2}(" + SPACES + "\\d{3})+|\\d*)(\\.\\d*)?" + END);
    private static final Pattern COMMAED =
            Pattern.compile("[+-]?([1-9]\\d{0,2}(\\.\\d{3})+|[1-9]\\d{0,2}(" + SPACES + "\\d{3})+|\\d*)(,\\d*)?" + END);
    /** One mark, before three digits and after one to three that do not begin with zero: thousands or decimals. */
    private static final Pattern EITHER = Pattern.compile("[+-]?[1-9]\\d{0,2}[.,]\\d{3}");

    private static final Pattern GAPS = Pattern.compile(SPACES);
    private static final Pattern MARKS = Pattern.compile("[-\u2013\u2014_*?.~]+");
    private static final Set<String> NOTHING = Set.of(
            "",
            "nan",
            "n/a",
            "na",
            "#n/a",
            "#na",
            "null",
            "nil",
            "none",
            "-nan",
            "nan(ind)",
            "-nan(ind)",
            "1.#qnan",
            "-1.#ind",
            "1.#ind",
            "no data",
            "no value",
            "n.a.",
            "invalid",
            "err",
            "error",
            "#value!",
            "#num!");

    private static final int LONGEST_NOTHING = 12;

    private LogNumber() {}

    /** Whether a cell says that there is no value. */
    static boolean saysNothing(String cell) {
        if (cell.length() > LONGEST_NOTHING) {
            return false;
        }
        return cell.isEmpty() || MARKS.matcher(cell).matches() || NOTHING.contains(cell.toLowerCase(Locale.ROOT));
    }

    /** The number in a cell, NaN when there is none. */
    static double read(String cell, boolean decimalComma) {
        if (isPlain(cell, decimalComma ? ',' : '.')) {
            return Double.parseDouble(decimalComma ? cell.replace(',', '.') : cell);
        }
        String plain = cell.replace('\u2212', '-');
        if (!holdsDigit(plain)
                || !(decimalComma ? COMMAED : POINTED).matcher(plain).matches()) {
            return Double.NaN;
        }
        String whole = GAPS.matcher(plain).replaceAll("");
        return Double.parseDouble(decimalComma ? whole.replace(".", "").replace(',', '.') : whole.replace(",", ""));
    }

    /** Digits with a sign before and one mark between at most: what nearly all cells are, told without a pattern. */
    private static boolean isPlain(String cell, char mark) {
        int digits = 0;
        int marks = 0;
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c >= '0' && c <= '9') {
                digits++;
            } else if (c == mark) {
                marks++;
            } else if (i > 0 || (c != '-' && c != '+')) {
                return false;
            }
        }
        return digits > 0 && marks <= 1;
    }

    private static boolean holdsDigit(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                return true;
            }
            if (c == 'e' || c == 'E') {
                return false;
            }
        }
        return false;
    }

    /** What a cell tells about the decimal mark: +1 a comma, -1 a point, 0 nothing. */
    static int evidence(String cell) {
        boolean marked = cell.indexOf(',') >= 0 || cell.indexOf('.') >= 0;
        if (!marked || EITHER.matcher(cell).matches()) {
            return 0;
        }
        boolean comma = !Double.isNaN(read(cell, true));
        boolean point = !Double.isNaN(read(cell, false));
        return comma == point ? 0 : comma ? 1 : -1;
    }

    /** Whether a cell is a different number under either decimal mark. */
    static boolean readsEitherWay(String cell) {
        return EITHER.matcher(cell).matches();
    }

    /** Whether a cell is a number under some decimal mark. */
    static boolean isNumber(String cell) {
        return !Double.isNaN(read(cell, false)) || !Double.isNaN(read(cell, true));
    }
}
