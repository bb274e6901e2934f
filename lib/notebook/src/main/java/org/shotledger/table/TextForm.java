package org.shotledger.table;

import java.util.ArrayList;
import java.util.List;

/** A listing as aligned plain text; words longer than a column may be are continued on the next line. */
final class TextForm {
    private static final int WIDEST = 44;
    private static final String GAP = "  ";

    private TextForm() {}

    static String of(Listing listing) {
        Flat flat = Flat.of(listing);
        List<String> heads = flat.heads().stream().map(Flat.Head::words).toList();
        List<List<String>> rows = flat.rows().stream()
                .map(row -> row.stream().map(Flat.Value::words).toList())
                .toList();
        int[] widths = widths(heads, rows);
        StringBuilder out = new StringBuilder(listing.caption()).append('\n');
        append(out, heads, widths, flat);
        for (int width : widths) {
            out.append("-".repeat(width)).append(GAP);
        }
        trim(out).append('\n');
        rows.forEach(row -> append(out, row, widths, flat));
        return out.toString().stripTrailing();
    }

    private static int[] widths(List<String> heads, List<List<String>> rows) {
        int[] widths = new int[heads.size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.min(heads.get(i).length(), WIDEST);
            for (List<String> row : rows) {
                widths[i] = Math.max(widths[i], Math.min(row.get(i).length(), WIDEST));
            }
        }
        return widths;
    }

    private static void append(StringBuilder out, List<String> cells, int[] widths, Flat flat) {
        List<List<String>> wrapped = new ArrayList<>();
        int lines = 1;
        for (int i = 0; i < cells.size(); i++) {
            wrapped.add(wrap(cells.get(i), widths[i]));
            lines = Math.max(lines, wrapped.get(i).size());
        }
        for (int line = 0; line < lines; line++) {
            for (int i = 0; i < widths.length; i++) {
                String words = line < wrapped.get(i).size() ? wrapped.get(i).get(line) : "";
                String room = " ".repeat(widths[i] - words.length());
                out.append(flat.heads().get(i).figures() ? room + words : words + room)
                        .append(GAP);
            }
            trim(out).append('\n');
        }
    }

    private static List<String> wrap(String words, int width) {
        List<String> lines = new ArrayList<>();
        String rest = words;
        while (rest.length() > width) {
            int cut = rest.lastIndexOf(' ', width);
            int end = cut <= 0 ? width : cut;
            lines.add(rest.substring(0, end));
            rest = rest.substring(end).stripLeading();
        }
        lines.add(rest);
        return lines;
    }

    private static StringBuilder trim(StringBuilder out) {
        int end = out.length();
        while (end > 0 && out.charAt(end - 1) == ' ') {
            end--;
        }
        out.setLength(end);
        return out;
    }
}
