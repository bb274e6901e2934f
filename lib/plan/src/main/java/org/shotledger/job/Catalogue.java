package org.shotledger.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shotledger.sheet.CsvRows;
import org.shotledger.sheet.CsvRows.Heading;
import org.shotledger.sheet.CsvRows.Row;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.Problems;
import org.shotledger.sheet.ShippedTables;
import org.shotledger.units.Amount;
import org.shotledger.units.Excerpt;
import org.shotledger.units.FigureText;
import org.shotledger.units.NearestName;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitException;
import org.shotledger.units.UnitName;

/**
 * A file of the folder {@code data/catalogue}: parts by size class or a public table, one part a row, with its origin in the
 * comment lines above the heading. Columns with a unit in brackets hold figures; the others hold words or bare numbers.
 *
 * <p>For example {@code Catalogue.read(Path.of("data/catalogue/hoses.csv")).part("6").figure("hose bore")}.
 *
 * @param file the file's name
 * @param origin where the figures come from, as the file says it
 * @param parts the rows in their order
 */
public record Catalogue(String file, String origin, List<Part> parts) {

    public Catalogue {
        parts = List.copyOf(parts);
    }

    /**
     * One row.
     *
     * @param name its first cell
     * @param words the cells of columns without a unit, by heading
     * @param figures the cells of columns with a unit, by heading without the unit
     */
    public record Part(String name, Map<String, String> words, Map<String, Amount> figures) {

        public Part {
            words = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(words));
            figures = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(figures));
        }

        /**
         * A figure with its unit.
         *
         * @param heading its heading without the unit
         * @return the figure
         * @throws IllegalArgumentException when the table has no such column of figures; the message lists those it has
         */
        public Amount figure(String heading) {
            Amount found = figures.get(heading);
            if (found == null) {
                throw new IllegalArgumentException("The part " + name + " has no figure " + Excerpt.quoted(heading)
                        + "; it has " + String.join(", ", figures.keySet()) + ".");
            }
            return found;
        }
    }

    /**
     * Reads a catalogue file.
     *
     * @param path the file
     * @return its parts and their origin
     * @throws org.shotledger.sheet.SheetException with every problem found; a file that does not say its origin is one
     */
    public static Catalogue read(Path path) {
        String file = path.getFileName().toString();
        return read(CsvRows.open(path, file), file);
    }

    /** Reads a file of the catalogue that travels with the program. */
    static Catalogue shipped(String file) {
        return read(CsvRows.open(ShippedTables.open("catalogue/" + file), file), file);
    }

    private static Catalogue read(CsvRows open, String file) {
        Problems problems = new Problems();
        try (CsvRows rows = open) {
            String origin = String.join(" ", rows.comments());
            if (origin.isBlank()) {
                problems.add(Problem.of(
                        file,
                        "The file does not say where its figures come from; write it in comment lines"
                                + " above the heading."));
            }
            List<Column> columns = rows.headings().stream()
                    .map(h -> column(h, rows, file, problems))
                    .toList();
            List<Part> parts = new ArrayList<>();
            for (Row row = rows.next(); row != null; row = rows.next()) {
                if (row.cells().size() == columns.size()) {
                    parts.add(part(row, columns, file, problems));
                } else {
                    problems.add(new Problem(
                            file,
                            row.line(),
                            0,
                            "",
                            "",
                            "The row has " + row.cells().size() + " cells where the heading has " + columns.size()
                                    + "; mend it."));
                }
            }
            problems.throwIfAny();
            return new Catalogue(file, origin, parts);
        }
    }

    /**
     * The part of a name.
     *
     * @param name its first cell
     * @return the first part of that name
     * @throws IllegalArgumentException when there is none; the message names the nearest or all
     */
    public Part part(String name) {
        return parts.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow(() -> {
            List<String> names = parts.stream().map(Part::name).toList();
            return new IllegalArgumentException("There is no " + Excerpt.quoted(name) + " in " + file + "; "
                    + NearestName.of(name, names)
                            .map(near -> "the nearest name is \"" + near + "\".")
                            .orElse("it has " + names.stream().distinct().collect(Collectors.joining(", ")) + "."));
        });
    }

    /** A column; unit and kind are null where it holds words. */
    private record Column(Heading heading, QuantityKind kind, UnitName unit) {}

    private static Column column(Heading heading, CsvRows rows, String file, Problems problems) {
        if (heading.unit().isEmpty()) {
            return new Column(heading, null, null);
        }
        for (QuantityKind kind : QuantityKind.values()) {
            Optional<UnitName> unit = unit(heading.unit(), kind);
            if (unit.isPresent()) {
                return new Column(heading, kind, unit.get());
            }
        }
        problems.add(new Problem(
                file,
                rows.headingLine(),
                heading.column(),
                heading.name(),
                heading.unit(),
                "There is no unit " + Excerpt.quoted(heading.unit()) + "; mend it."));
        return new Column(heading, null, null);
    }

    private static Optional<UnitName> unit(String written, QuantityKind kind) {
        try {
            return Optional.of(FigureText.unit(written, kind));
        } catch (UnitException e) {
            return Optional.empty();
        }
    }

    private static Part part(Row row, List<Column> columns, String file, Problems problems) {
        Map<String, String> words = new LinkedHashMap<>();
        Map<String, Amount> figures = new LinkedHashMap<>();
        for (Column column : columns) {
            String cell = row.cells().get(column.heading().column() - 1);
            if (column.unit() == null) {
                words.put(column.heading().name(), cell);
                continue;
            }
            try {
                figures.put(
                        column.heading().name(),
                        Amount.read(cell + " " + column.heading().unit(), column.kind()));
            } catch (UnitException e) {
                problems.add(new Problem(
                        file,
                        row.line(),
                        column.heading().column(),
                        column.heading().name(),
                        cell,
                        e.getMessage()));
            }
        }
        return new Part(row.cells().get(0), words, figures);
    }
}
