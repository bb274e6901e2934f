package org.shotledger.fluid;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Numbers of a comma-separated test resource: comment lines start with #, then one header line. */
final class Table {

    private Table() {}

    static List<double[]> read(String name) {
        Path shown = Path.of("../../data/published", name); // those that a notebook shows as well
        try (InputStream in =
                Files.exists(shown) ? Files.newInputStream(shown) : Table.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(Table::numbers)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double[] numbers(String line) {
        String[] cells = line.split(",", -1);
        double[] row = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            row[i] = cells[i].matches("[-+0-9.eE]+") ? Double.parseDouble(cells[i]) : Double.NaN;
        }
        return row;
    }
}
