package org.shotledger.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.shotledger.display.Displayable;
import org.shotledger.limits.Verdict;
import org.shotledger.units.QuantityKind;
import tech.tablesaw.api.Table;

/**
 * A table of words, quantities and verdicts. The first column names its row. Quantities are held in SI and shown in the
 * units asked for, which stand in the header where a whole column has one kind, and beside the number where it has not.
 */
public final class Listing implements Displayable {
    private final String caption;
    private final List<Heading> columns;
    private final List<List<Cell>> rows;
    private final Shown shown;

    private Listing(String caption, List<Heading> columns, List<List<Cell>> rows, Shown shown) {
        this.caption = caption;
        this.columns = columns;
        this.rows = rows;
        this.shown = shown;
    }

    /**
     * Begins a table.
     *
     * @param caption what it shows
     * @return a builder without columns
     */
    public static Builder titled(String caption) {
        return new Builder(caption);
    }

    /**
     * A table whose rows all show one type.
     *
     * @param <T> what a row shows
     * @param caption what the table shows
     * @param rows what its rows show, from the top
     * @param columns its columns, from the left
     * @return the table, shown in both unit systems
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // the columns are only read
    public static <T> Listing of(String caption, Collection<? extends T> rows, Column<T>... columns) {
        return new Listing(
                caption,
                Arrays.stream(columns).map(Column::heading).toList(),
                rows.stream()
                        .map(row -> Arrays.stream(columns)
                                .map(column -> column.cell(row))
                                .toList())
                        .toList(),
                Shown.BOTH);
    }

    /**
     * The same table in other units.
     *
     * @param units the units
     * @return the table
     */
    public Listing in(Shown units) {
        return new Listing(caption, columns, rows, units);
    }

    /**
     * What the table shows.
     *
     * @return the caption
     */
    public String caption() {
        return caption;
    }

    /**
     * Whether there is nothing to show.
     *
     * @return true when the table has no row
     */
    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /**
     * The table as a tablesaw table, numbers as numbers in the units shown, units in the column names.
     *
     * @return a new table
     */
    public Table table() {
        return TableSaw.of(this);
    }

    /**
     * The table as comma-separated values, numbers as numbers in the units shown, units in the heading.
     *
     * @return the heading and one line a row
     */
    public String csv() {
        java.io.StringWriter out = new java.io.StringWriter();
        table().write().csv(out);
        return out.toString();
    }

    @Override
    public String toText() {
        return TextForm.of(this);
    }

    @Override
    public String toHtml() {
        return HtmlForm.of(this);
    }

    @Override
    public String toString() {
        return toText();
    }

    List<Heading> columns() {
        return columns;
    }

    List<List<Cell>> rows() {
        return rows;
    }

    Shown shown() {
        return shown;
    }

    /** Collects the columns, then the rows. */
    public static final class Builder {
        private final String caption;
        private final List<Heading> columns = new ArrayList<>();
        private final List<List<Cell>> rows = new ArrayList<>();

        private Builder(String caption) {
            this.caption = caption;
        }

        /**
         * Adds a column of words or verdicts.
         *
         * @param header what it holds
         * @return this builder
         */
        public Builder words(String header) {
            columns.add(new Heading(header, null, false));
            return this;
        }

        /**
         * Adds a column of quantities of one kind; the unit stands in the header.
         *
         * @param header what it holds, without the unit
         * @param kind what it measures
         * @return this builder
         */
        public Builder figures(String header, QuantityKind kind) {
            columns.add(new Heading(header, kind, true));
            return this;
        }

        /**
         * Adds a column of quantities of several kinds; each shows its own unit.
         *
         * @param header what it holds
         * @return this builder
         */
        public Builder mixed(String header) {
            columns.add(new Heading(header, null, true));
            return this;
        }

        /**
         * Adds a row.
         *
         * @param cells one value a column: {@code String}, {@code Verdict}, {@code Cell}, or a number in SI for a column of
         *     one kind
         * @return this builder
         * @throws IllegalArgumentException when the row does not fit the columns
         */
        public Builder row(Object... cells) {
            if (cells.length != columns.size()) {
                throw new IllegalArgumentException("A row of the table '" + caption + "' has " + cells.length
                        + " cells; the table has " + columns.size() + " columns.");
            }
            List<Cell> row = new ArrayList<>();
            for (int i = 0; i < cells.length; i++) {
                row.add(cell(columns.get(i), cells[i]));
            }
            rows.add(List.copyOf(row));
            return this;
        }

        /**
         * Finishes the table, shown in both unit systems.
         *
         * @return the table
         */
        public Listing build() {
            return new Listing(caption, List.copyOf(columns), List.copyOf(rows), Shown.BOTH);
        }

        private Cell cell(Heading column, Object value) {
            if (value instanceof Cell cell) {
                return cell;
            }
            if (value instanceof Verdict verdict) {
                return new Cell.Judged(verdict);
            }
            if (value instanceof Number number && column.kind() != null) {
                return new Cell.Figure(number.doubleValue(), column.kind());
            }
            if (value instanceof String words) {
                return new Cell.Text(words);
            }
            throw new IllegalArgumentException("The column '" + column.header() + "' of the table '" + caption
                    + "' cannot hold " + value + "; give words, a verdict, or a figure with its kind.");
        }
    }
}
