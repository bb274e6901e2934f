package org.shotledger.build;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.shotledger.boost.MapReference;
import org.shotledger.sheet.CsvColumn;
import org.shotledger.sheet.CsvRows;
import org.shotledger.sheet.CsvTable;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;

/** Tells everything that is wrong with build sheets and tables, without using them. */
public final class Check {
    private static final Map<String, List<CsvColumn>> TABLES = new LinkedHashMap<>();

    static {
        TABLES.put("compressor map", Tables.COMPRESSOR_MAP);
        TABLES.put("fuel pump", Tables.PUMP);
        TABLES.put("volumetric efficiency", Tables.VOLUMETRIC_EFFICIENCY);
        TABLES.put("injector dead time", Tables.DEAD_TIME);
        TABLES.put("jet ladder", Tables.JET_LADDER);
    }

    private Check() {}

    /**
     * Checks files.
     *
     * @param files build sheets ({@code .yaml}, {@code .yml}), folders that hold a {@code build.yaml}, and tables
     *     ({@code .csv}), whose headings tell what they are
     * @return every problem, in the order of the files; empty when all can be used
     */
    public static List<Problem> files(List<Path> files) {
        List<Problem> problems = new ArrayList<>();
        files.forEach(file -> problems.addAll(file(file)));
        return problems;
    }

    private static List<Problem> file(Path file) {
        String name = file.toString();
        String lower = name.toLowerCase(Locale.ROOT);
        try {
            if (Files.isDirectory(file) || lower.endsWith(".yaml") || lower.endsWith(".yml")) {
                Build.load(file);
            } else if (lower.endsWith(".csv")) {
                table(file, name);
            } else {
                return List.of(Problem.of(
                        name, "This is neither a build sheet (.yaml) nor a table (.csv); name one of them."));
            }
            return List.of();
        } catch (SheetException e) {
            return e.problems();
        }
    }

    private static void table(Path file, String name) {
        String kind = kind(file, name);
        CsvTable table = CsvTable.read(file, name, TABLES.get(kind));
        switch (kind) {
            case "compressor map" -> Tables.compressorMap(name, table, MapReference.SI, 400_000);
            case "fuel pump" -> Tables.pump(name, table);
            case "volumetric efficiency" -> Tables.curve(name, table, "engine speed", "volumetric efficiency");
            case "injector dead time" -> Tables.curve(name, table, "voltage", "dead time");
            default -> Tables.ladder(table);
        }
    }

    /** The kind of table most of whose columns stand in the heading. */
    private static String kind(Path file, String name) {
        List<String> headings;
        int line;
        try (CsvRows rows = CsvRows.open(file, name)) {
            headings = rows.headings().stream()
                    .map(h -> h.name().toLowerCase(Locale.ROOT))
                    .toList();
            line = rows.headingLine();
        }
        return TABLES.keySet().stream()
                .filter(kind -> score(kind, headings) > 0)
                .max(Comparator.comparingDouble(kind -> score(kind, headings)))
                .orElseThrow(() -> new SheetException(new Problem(
                        name,
                        line,
                        0,
                        "",
                        "",
                        "No column of any known table stands in the heading; known tables are " + known() + ".")));
    }

    private static double score(String kind, List<String> headings) {
        List<CsvColumn> columns = TABLES.get(kind);
        long met = columns.stream().filter(c -> headings.contains(c.name())).count();
        return (double) met / columns.stream().filter(CsvColumn::required).count();
    }

    private static String known() {
        List<String> words = new ArrayList<>();
        TABLES.forEach((kind, columns) -> words.add(kind + " ("
                + String.join(", ", columns.stream().map(CsvColumn::name).toList()) + ")"));
        return String.join("; ", words);
    }
}
