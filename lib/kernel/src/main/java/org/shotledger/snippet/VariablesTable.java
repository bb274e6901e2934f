package org.shotledger.snippet;

import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.shotledger.display.Display;
import org.shotledger.display.Displayable;

/** The variables of a session: name, type and the beginning of the value's text. */
final class VariablesTable implements Displayable {

    private static final int VALUE_WIDTH = 80;

    /** One variable. */
    record Row(String name, String type, String value) {}

    private final List<Row> rows;

    VariablesTable(List<Row> rows) {
        this.rows = List.copyOf(rows);
    }

    static Row row(String name, String type, Object value) {
        String text;
        try {
            text = String.valueOf(Display.bundle(value).get(Display.TEXT)).strip();
        } catch (RuntimeException | Error e) { // a value's own text may fail in any way
            text = "(cannot be shown: " + e.getClass().getSimpleName() + ")";
        }
        String line = text.replaceAll("\\s*\n\\s*", " ");
        return new Row(name, type, line.length() <= VALUE_WIDTH ? line : line.substring(0, VALUE_WIDTH - 1) + "…");
    }

    @Override
    public String toText() {
        int name = rows.stream().mapToInt(r -> r.name().length()).max().orElse(0);
        int type = rows.stream().mapToInt(r -> r.type().length()).max().orElse(0);
        return rows.isEmpty()
                ? "no variables"
                : rows.stream()
                        .map(r -> pad(r.name(), name) + "  " + pad(r.type(), type) + "  " + r.value())
                        .collect(Collectors.joining("\n"));
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(width - text.length());
    }

    @Override
    public String toHtml() {
        return rows.stream()
                .map(r -> "<tr><th scope=\"row\">" + Display.escapeHtml(r.name()) + "</th><td>"
                        + Display.escapeHtml(r.type()) + "</td><td>" + Display.escapeHtml(r.value()) + "</td></tr>")
                .collect(Collectors.joining(
                        "",
                        "<table class=\"listing\"><thead><tr><th scope=\"col\">variable</th><th scope=\"col\">type</th>"
                                + "<th scope=\"col\">value</th></tr></thead><tbody>",
                        "</tbody></table>"));
    }

    /** The rows by name. */
    static VariablesTable of(java.util.Map<String, Row> named) {
        return new VariablesTable(List.copyOf(new TreeMap<>(named).values()));
    }

    @Override
    public String toString() {
        return toText();
    }
}
