package org.shotledger.table;

import java.util.List;
import org.shotledger.units.UnitSystem;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/** A listing as a tablesaw table. */
final class TableSaw {
    private TableSaw() {}

    static Table of(Listing listing) {
        Table table = Table.create(listing.caption());
        List<UnitSystem> systems = listing.shown().systems();
        Flat flat = Flat.spread(listing);
        int at = 0;
        for (int i = 0; i < listing.columns().size(); i++) {
            Heading column = listing.columns().get(i);
            for (UnitSystem system : Flat.spread(column, systems)) {
                if (column.kind() == null) {
                    table.addColumns(words(column.header(system), flat, at));
                } else {
                    table.addColumns(numbers(column.header(system), listing, i, system));
                }
                at++;
            }
        }
        return table;
    }

    private static StringColumn words(String name, Flat flat, int at) {
        StringColumn column = StringColumn.create(name);
        flat.rows().forEach(row -> column.append(row.get(at).words()));
        return column;
    }

    private static DoubleColumn numbers(String name, Listing listing, int at, UnitSystem system) {
        DoubleColumn column = DoubleColumn.create(name);
        for (List<Cell> row : listing.rows()) {
            if (row.get(at) instanceof Cell.Figure figure) {
                column.append(figure.kind().shown(figure.value(), system));
            } else {
                column.appendMissing();
            }
        }
        return column;
    }
}
