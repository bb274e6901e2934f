package org.shotledger.table;

import java.util.LinkedHashMap;
import java.util.Map;
import org.shotledger.display.Display;
import org.shotledger.display.DisplayRenderer;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/** Shows tablesaw tables in a notebook; of a long table the first rows, and how many there are. */
public final class TableRenderer implements DisplayRenderer<Table> {
    private static final int MOST_ROWS = 60;

    /** Made by the service loader. */
    public TableRenderer() {}

    @Override
    public Class<Table> type() {
        return Table.class;
    }

    @Override
    public Map<String, Object> render(Table table) {
        Map<String, Object> forms = new LinkedHashMap<>();
        forms.put(Display.TEXT, table.print(MOST_ROWS));
        forms.put(Display.HTML, html(table));
        return forms;
    }

    private static String html(Table table) {
        int rows = Math.min(table.rowCount(), MOST_ROWS);
        StringBuilder out = new StringBuilder("<table class=\"listing\"><caption>")
                .append(Display.escapeHtml(table.name() == null ? "" : table.name()))
                .append(rows < table.rowCount() ? " (first " + rows + " of " + table.rowCount() + " rows)" : "")
                .append("</caption><thead><tr>");
        for (Column<?> column : table.columns()) {
            out.append("<th scope=\"col\"").append(align(column)).append('>');
            out.append(Display.escapeHtml(column.name())).append("</th>");
        }
        out.append("</tr></thead><tbody>");
        for (int row = 0; row < rows; row++) {
            out.append("<tr>");
            for (Column<?> column : table.columns()) {
                out.append("<td").append(align(column)).append('>');
                out.append(Display.escapeHtml(column.getString(row))).append("</td>");
            }
            out.append("</tr>");
        }
        return out.append("</tbody></table>").toString();
    }

    private static String align(Column<?> column) {
        return column instanceof NumericColumn ? " style=\"text-align:right\"" : " style=\"text-align:left\"";
    }
}
