package org.shotledger.trust;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.shotledger.sheet.CsvRows;
import org.shotledger.sheet.CsvRows.Row;

/** The cells of a comma-separated table: lines that begin with # are its source, the first other line its heading. */
final class Cells {
    private Cells() {}

    static List<List<String>> of(Path table) {
        List<List<String>> all = new ArrayList<>();
        try (CsvRows rows = CsvRows.open(table, table.toString())) {
            for (Row row = rows.next(); row != null; row = rows.next()) {
                all.add(row.cells());
            }
        }
        return all;
    }
}
