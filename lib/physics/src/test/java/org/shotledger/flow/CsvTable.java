package org.shotledger.flow;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the small reference tables of the tests. */
public final class CsvTable {
    private CsvTable() {}

    public static List<Map<String, String>> read(Class<?> owner, String name) {
        List<Map<String, String>> rows = new ArrayList<>();
        try (var stream = owner.getResourceAsStream(name);
                var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            List<String> lines =
                    reader.lines().filter(line -> !line.startsWith("#")).toList();
            String[] header = lines.get(0).split(",", -1);
            for (String line : lines.subList(1, lines.size())) {
                Map<String, String> row = new LinkedHashMap<>();
                String[] cells = line.split(",", -1);
                for (int i = 0; i < header.length; i++) {
                    row.put(header[i].replaceAll("\\[.*", ""), cells[i]);
                }
                rows.add(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    public static double number(Map<String, String> row, String key) {
        return Double.parseDouble(row.get(key));
    }
}
