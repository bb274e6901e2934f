package org.shotledger.table;

import java.util.List;
import org.shotledger.display.Display;

/** A listing as an HTML table: a caption, header cells with their scope, everything escaped. */
final class HtmlForm {
    /** A table of no more lines is kept on one page. */
    private static final int SHORT = 12;

    /** Letters that a column of words has room for, about. */
    private static final int LINE = 26;

    /** Words of no more letters are not broken. */
    private static final int UNBROKEN = 12;

    /** A table of more columns is set closer, to fit the paper. */
    private static final int MANY = 6;

    /** A figure may be broken before the one in brackets, and inside a unit of two words. */
    static final String BREAKS = " (?=\\(|difference)";

    private HtmlForm() {}

    static String of(Listing listing) {
        Flat flat = Flat.of(listing);
        StringBuilder out = new StringBuilder("<table class=\"listing")
                .append(lines(flat) > SHORT ? "" : " short")
                .append(flat.heads().size() > MANY ? " many" : "")
                .append("\"><caption>")
                .append(Display.escapeHtml(listing.caption()))
                .append("</caption>")
                .append(Widths.of(flat))
                .append("<thead><tr>");
        for (Flat.Head head : flat.heads()) {
            out.append("<th scope=\"col\"")
                    .append(align(head.figures()))
                    .append('>')
                    .append(Display.escapeHtml(head.words()))
                    .append("</th>");
        }
        out.append("</tr></thead><tbody>");
        for (List<Flat.Value> row : flat.rows()) {
            out.append("<tr>");
            for (int i = 0; i < row.size(); i++) {
                cell(out, row.get(i), flat.heads().get(i), i == 0);
            }
            out.append("</tr>");
        }
        return out.append("</tbody></table>").toString();
    }

    /** About how many lines the rows take when words are wrapped into their columns. */
    private static int lines(Flat flat) {
        int lines = 0;
        for (List<Flat.Value> row : flat.rows()) {
            int longest =
                    row.stream().mapToInt(value -> value.words().length()).max().orElse(0);
            lines += 1 + longest / LINE;
        }
        return lines;
    }

    /** A cell knows its column's head, which a narrow page writes before it: there a row becomes a card. */
    private static void cell(StringBuilder out, Flat.Value value, Flat.Head head, boolean first) {
        out.append(first ? "<th scope=\"row\"" : "<td").append(align(head.figures()));
        if (!first) {
            out.append(" data-head=\"").append(Display.escapeHtml(head.words())).append('"');
        }
        out.append('>');
        if (value.cell() instanceof Cell.Judged judged) {
            out.append("<span class=\"verdict ")
                    .append(judged.verdict().word())
                    .append("\">")
                    .append(value.words())
                    .append("</span>");
        } else if (value.cell() instanceof Cell.Figure) {
            for (String part : value.words().split(BREAKS, -1)) {
                out.append("<span style=\"white-space:nowrap\">")
                        .append(Display.escapeHtml(part))
                        .append("</span> ");
            }
        } else if (value.words().length() <= UNBROKEN) {
            out.append("<span style=\"white-space:nowrap\">")
                    .append(Display.escapeHtml(value.words()))
                    .append("</span>");
        } else {
            out.append(Display.escapeHtml(value.words()));
        }
        out.append(first ? "</th>" : "</td>");
    }

    private static String align(boolean figures) {
        return figures ? " style=\"text-align:right\"" : " style=\"text-align:left\"";
    }
}
