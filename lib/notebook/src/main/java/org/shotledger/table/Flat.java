package org.shotledger.table;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.units.UnitSystem;

/** A listing spread over the unit systems shown: plain strings, ready to be set. */
record Flat(List<Head> heads, List<List<Value>> rows) {

    /** Beside each other both systems may take so many columns; more are folded into one column a figure. */
    private static final int MOST = 8;

    /** A column as it is printed. */
    record Head(String words, boolean figures) {}

    /** A cell as it is printed. */
    record Value(String words, Cell cell) {}

    static Flat of(Listing listing) {
        List<UnitSystem> systems = listing.shown().systems();
        int beside = listing.columns().stream()
                .mapToInt(column -> spread(column, systems).size())
                .sum();
        return beside > MOST && beside > listing.columns().size() ? folded(listing) : spread(listing);
    }

    /** The second system in brackets behind the first. */
    private static Flat folded(Listing listing) {
        List<UnitSystem> systems = listing.shown().systems();
        List<Head> heads = listing.columns().stream()
                .map(column -> new Head(column.header(spread(column, systems)), column.figures()))
                .toList();
        List<List<Value>> rows = new ArrayList<>();
        for (List<Cell> row : listing.rows()) {
            List<Value> flat = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                Heading column = listing.columns().get(i);
                List<UnitSystem> spread = spread(column, systems);
                String first = words(row.get(i), column, spread.get(0), systems);
                boolean both = spread.size() > 1 && row.get(i) instanceof Cell.Figure;
                String second = both ? " (" + words(row.get(i), column, spread.get(1), systems) + ")" : "";
                flat.add(new Value(first + second, row.get(i)));
            }
            rows.add(flat);
        }
        return new Flat(heads, rows);
    }

    /** Every column once for each system in which it differs. */
    static Flat spread(Listing listing) {
        List<UnitSystem> systems = listing.shown().systems();
        List<Head> heads = new ArrayList<>();
        for (Heading column : listing.columns()) {
            for (UnitSystem system : spread(column, systems)) {
                heads.add(new Head(column.header(system), column.figures()));
            }
        }
        List<List<Value>> rows = new ArrayList<>();
        for (List<Cell> row : listing.rows()) {
            List<Value> flat = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                for (UnitSystem system : spread(listing.columns().get(i), systems)) {
                    flat.add(new Value(words(row.get(i), listing.columns().get(i), system, systems), row.get(i)));
                }
            }
            rows.add(flat);
        }
        return new Flat(heads, rows);
    }

    /** A column of one kind takes one place for each system, unless both show the same. */
    static List<UnitSystem> spread(Heading column, List<UnitSystem> systems) {
        boolean same = column.kind() == null
                || column.kind().unit(systems.get(0)).equals(column.kind().unit(systems.get(systems.size() - 1)));
        return same ? systems.subList(0, 1) : systems;
    }

    private static String words(Cell cell, Heading column, UnitSystem system, List<UnitSystem> systems) {
        if (cell instanceof Cell.Text text) {
            return text.words();
        }
        if (cell instanceof Cell.Judged judged) {
            return judged.words();
        }
        Cell.Figure figure = (Cell.Figure) cell;
        if (column.kind() != null) {
            return figure.number(system);
        }
        String first = figure.full(systems.get(0));
        String second = figure.full(systems.get(systems.size() - 1));
        return first.equals(second) ? first : first + " (" + second + ")";
    }
}
