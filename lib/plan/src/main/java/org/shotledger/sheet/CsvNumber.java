package org.shotledger.sheet;

import java.util.regex.Pattern;

/** Reads the number in a cell of a table. */
public final class CsvNumber {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,4})?");
    private static final Pattern WITH_COMMA = Pattern.compile("[+-]?\\d+,\\d+");

    private CsvNumber() {}

    /**
     * Reads a number.
     *
     * @param text the cell, stripped
     * @param decimalComma whether a decimal comma is read
     * @return the number, perhaps infinite where it is too large; NaN when the cell holds no number
     */
    public static double read(String text, boolean decimalComma) {
        String plain = decimalComma && WITH_COMMA.matcher(text).matches() ? text.replace(',', '.') : text;
        return NUMBER.matcher(plain).matches() ? Double.parseDouble(plain) : Double.NaN;
    }
}
