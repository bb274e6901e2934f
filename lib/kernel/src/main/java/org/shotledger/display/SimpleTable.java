package org.shotledger.display;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A plain table as aligned text and as HTML. */
final class SimpleTable {

    private SimpleTable() {}

    /**
     * The two forms.
     *
     * @param heads a word for each column
     * @param rows the first rows
     * @param all how many rows there are
     */
    static Map<String, Object> forms(List<String> heads, List<List<String>> rows, int all) {
        String rest = all > rows.size() ? "first " + rows.size() + " of " + all : "";
        Map<String, Object> forms = new LinkedHashMap<>();
        forms.put(Display.TEXT, text(heads, rows) + (rest.isEmpty() ? "" : "\n" + rest));
        forms.put(Display.HTML, html(heads, rows, rest));
        return forms;
    }

    private static String text(List<String> heads, List<List<String>> rows) {
        int[] widths = new int[heads.size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = heads.get(i).length();
            for (List<String> row : rows) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        StringBuilder out = new StringBuilder();
        line(heads, widths, out);
        rows.forEach(row -> line(row, widths, out.append('\n')));
        return out.toString();
    }

    private static void line(List<String> cells, int[] widths, StringBuilder out) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String cell = cells.get(i);
            line.append(i == 0 ? "" : "  ").append(cell).append(" ".repeat(widths[i] - cell.length()));
        }
        out.append(line.toString().stripTrailing());
    }

    private static String html(List<String> heads, List<List<String>> rows, String rest) {
        StringBuilder out = new StringBuilder("<table class=\"listing\">");
        if (!rest.isEmpty()) {
            out.append("<caption>").append(rest).append("</caption>");
        }
        out.append("<thead><tr>");
        heads.forEach(head -> out.append("<th scope=\"col\">")
                .append(Display.escapeHtml(head))
                .append("</th>"));
        out.append("</tr></thead><tbody>");
        for (List<String> row : rows) {
            out.append("<tr>");
            row.forEach(
                    cell -> out.append("<td>").append(Display.escapeHtml(cell)).append("</td>"));
            out.append("</tr>");
        }
        return out.append("</tbody></table>").toString();
    }
}
