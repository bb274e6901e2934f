package org.shotledger.table;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.shotledger.limits.Verdict;
import org.shotledger.units.QuantityKind;

/**
 * A column of a table whose rows all show one type: what it is called, and which part of the row stands in it.
 *
 * @param <T> what a row shows
 */
public final class Column<T> {
    private final Heading heading;
    private final Function<? super T, Cell> cell;

    private Column(Heading heading, Function<? super T, Cell> cell) {
        this.heading = heading;
        this.cell = cell;
    }

    /**
     * A column of quantities of one kind; the unit stands in its head.
     *
     * @param <T> what a row shows
     * @param header what it holds, without the unit
     * @param kind what it measures
     * @param value the quantity, SI; not-a-number is shown as a dash
     * @return the column
     */
    public static <T> Column<T> column(String header, QuantityKind kind, ToDoubleFunction<? super T> value) {
        return new Column<>(new Heading(header, kind, true), row -> new Cell.Figure(value.applyAsDouble(row), kind));
    }

    /**
     * A column of quantities of one kind, none with a digit that its band leaves open.
     *
     * @param <T> what a row shows
     * @param header what it holds, without the unit
     * @param kind what it measures
     * @param value the quantity, SI; not-a-number is shown as a dash
     * @param band how far it is known, SI
     * @return the column
     */
    public static <T> Column<T> column(
            String header, QuantityKind kind, ToDoubleFunction<? super T> value, ToDoubleFunction<? super T> band) {
        return new Column<>(
                new Heading(header, kind, true),
                row -> new Cell.Figure(value.applyAsDouble(row), kind, false, band.applyAsDouble(row)));
    }

    /**
     * A column of quantities of several kinds; each shows its own unit.
     *
     * @param <T> what a row shows
     * @param header what it holds
     * @param kind what the quantity of a row measures
     * @param value the quantity, SI; not-a-number is shown as a dash
     * @return the column
     */
    public static <T> Column<T> column(
            String header, Function<? super T, QuantityKind> kind, ToDoubleFunction<? super T> value) {
        return new Column<>(
                new Heading(header, null, true), row -> new Cell.Figure(value.applyAsDouble(row), kind.apply(row)));
    }

    /**
     * A column of words.
     *
     * @param <T> what a row shows
     * @param header what it holds
     * @param words the words, unescaped
     * @return the column
     */
    public static <T> Column<T> words(String header, Function<? super T, String> words) {
        return new Column<>(new Heading(header, null, false), row -> new Cell.Text(words.apply(row)));
    }

    /**
     * A column of verdicts, shown by shape and word.
     *
     * @param <T> what a row shows
     * @param header what it holds
     * @param verdict the verdict
     * @return the column
     */
    public static <T> Column<T> verdict(String header, Function<? super T, Verdict> verdict) {
        return new Column<>(new Heading(header, null, false), row -> new Cell.Judged(verdict.apply(row)));
    }

    Heading heading() {
        return heading;
    }

    Cell cell(T row) {
        return cell.apply(row);
    }
}
