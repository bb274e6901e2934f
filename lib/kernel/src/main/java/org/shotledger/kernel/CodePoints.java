package org.shotledger.kernel;

/** Cursor positions: front ends count code points, Java counts UTF-16 units. */
final class CodePoints {

    private CodePoints() {}

    static int toUnits(String text, int codePoints) {
        int all = text.codePointCount(0, text.length());
        return text.offsetByCodePoints(0, Math.max(0, Math.min(codePoints, all)));
    }

    static int fromUnits(String text, int units) {
        return text.codePointCount(0, Math.max(0, Math.min(units, text.length())));
    }
}
