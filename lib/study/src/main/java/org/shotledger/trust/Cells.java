package org.shotledger.trust;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The cells of a comma-separated table: lines that begin with # are its source, the first other line its heading. */
final class Cells {
    private Cells() {}

    static List<List<String>> of(Path table) {
        try {
            return Files.readAllLines(table).stream()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .skip(1)
                    .map(Cells::cells)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(
                    "The table " + table + " cannot be read; name the project's folder \"data\".", e);
        }
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
