package org.shotledger.job;

import java.util.Locale;

/** Writes the text of a first sheet line by line: what was told as told, what is estimated with its band, its relation and how to measure it. */
final class SheetPen {
    private static final String TOLD = "told when this sheet was begun";
    private static final String ESTIMATED = "estimated: ";

    private final StringBuilder text = new StringBuilder();
    private String path = "";

    /** A section at the outermost level, or below the one that is open when it is indented. */
    SheetPen section(String dotted) {
        String[] parts = dotted.split("\\.", -1);
        String[] old = path.isEmpty() ? new String[0] : path.split("\\.", -1);
        int same = 0;
        while (same < Math.min(parts.length, old.length) && parts[same].equals(old[same])) {
            same++;
        }
        for (int i = same; i < parts.length; i++) {
            if (i == 0) {
                text.append('\n');
            }
            text.append("  ".repeat(i)).append(parts[i]).append(":\n");
        }
        path = dotted;
        return this;
    }

    /** Words, a table, a choice. */
    SheetPen plain(String key, String value) {
        indent().append(key).append(": ").append(value).append('\n');
        return this;
    }

    /** A figure as somebody told it. */
    SheetPen told(String key, double number, String unit) {
        return reasoned(key, figure(number, unit), TOLD, "assumed");
    }

    /** A figure that stands until it is measured, with its band as a share of it. */
    SheetPen guess(String key, double number, String unit, double band, String relation) {
        String value = figure(number, unit) + " +/- " + figure(number * band, unit);
        return measurable(key).reasoned(key, value, ESTIMATED + relation + "; common practice, no source", "estimated");
    }

    /** A figure without a band: a count, a setting. */
    SheetPen guess(String key, String value, String relation) {
        return measurable(key).reasoned(key, value, ESTIMATED + relation + "; common practice, no source", "estimated");
    }

    /** Whether a reason is one that stands in a sheet from its beginning, and so says nothing of what was written there since. */
    static boolean wrote(String from) {
        return from.equals(TOLD) || from.startsWith(ESTIMATED);
    }

    private SheetPen measurable(String key) {
        String full = path.isEmpty() ? key : path + "." + key;
        SheetFields.at(full).stream()
                .findFirst()
                .ifPresent(field -> indent().append("# ")
                        .append(field.what())
                        .append("; to get it: ")
                        .append(field.how())
                        .append('\n'));
        return this;
    }

    private SheetPen reasoned(String key, String value, String from, String provenance) {
        indent().append(key)
                .append(": {value: ")
                .append(value)
                .append(", from: \"")
                .append(from)
                .append("\", provenance: ")
                .append(provenance)
                .append("}\n");
        return this;
    }

    SheetPen comment(String words) {
        indent().append("# ").append(words).append('\n');
        return this;
    }

    /** Text as it is. */
    SheetPen raw(String lines) {
        text.append(lines);
        return this;
    }

    private StringBuilder indent() {
        int depth = path.isEmpty() ? 0 : path.split("\\.", -1).length;
        return text.append("  ".repeat(depth));
    }

    /** The outermost level again. */
    SheetPen top() {
        path = "";
        return this;
    }

    static String figure(double number, String unit) {
        String digits = FirstTables.number(Double.parseDouble(String.format(Locale.ROOT, "%.4g", number)));
        return unit.isEmpty() ? digits : digits + " " + unit;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
