package org.shotledger.job;

import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.shotledger.sheet.CsvRows;
import org.shotledger.sheet.CsvRows.Row;
import org.shotledger.units.Excerpt;
import org.shotledger.units.NearestName;

/** The one table of what a job sheet can state: usual ranges for the reader, explanations for the writer. */
public final class SheetFields {
    private static final String TABLE = "fields.csv";
    private static final int COLUMNS = 8;

    /** Read once: the table is part of the program and cannot change while it runs. */
    private static final List<SheetField> ALL = read();

    private static final Map<String, List<SheetField>> EXACT =
            ALL.stream().collect(Collectors.groupingBy(SheetField::path));
    private static final Map<SheetField, Pattern> STARRED = starred();

    private SheetFields() {}

    /**
     * All fields, in the order of a sheet.
     *
     * @return the fields; one that can be stated in two kinds of unit stands twice
     */
    public static List<SheetField> all() {
        return ALL;
    }

    /**
     * What stands at a place of a sheet.
     *
     * @param path the place as messages name it, for example {@code "vehicle.gears[2]"} or {@code "conditions.event.altitude"}
     * @return the field, twice where it can be stated in two kinds of unit; empty when there is none
     */
    public static List<SheetField> at(String path) {
        String plain = path.replaceAll("\\[\\d+\\]", "");
        List<SheetField> exact = EXACT.get(plain);
        return exact != null
                ? exact
                : STARRED.entrySet().stream()
                        .filter(e -> e.getValue().matcher(plain).matches())
                        .map(Map.Entry::getKey)
                        .toList();
    }

    /** The fields whose path has a name the writer chooses, in their order. */
    private static Map<SheetField, Pattern> starred() {
        Map<SheetField, Pattern> starred = new LinkedHashMap<>();
        ALL.stream()
                .filter(f -> f.path().contains("*"))
                .forEach(f ->
                        starred.put(f, Pattern.compile(Pattern.quote(f.path()).replace("*", "\\E[^.]+\\Q"))));
        return starred;
    }

    /**
     * Explains a field, or lists the fields of a section.
     *
     * @param asked a place in the sheet, the last part of one such as {@code "valve-kv"}, or a section such as {@code "bottle"}
     * @return what it is, its usual range, how to get it, what it changes
     * @throws IllegalArgumentException when there is no such field; the message names the nearest
     */
    public static String explain(String asked) {
        String name = asked.strip();
        List<SheetField> found = at(name);
        if (found.isEmpty()) {
            found = ALL.stream().filter(f -> f.path().endsWith("." + name)).toList();
        }
        if (!found.isEmpty()) {
            return found.stream().map(SheetFields::paragraph).collect(Collectors.joining("\n\n"));
        }
        List<SheetField> section = ALL.stream()
                .filter(f -> f.path().startsWith(name + ".") || f.path().contains("." + name + "."))
                .toList();
        if (!section.isEmpty()) {
            return section.stream().map(SheetFields::line).distinct().collect(Collectors.joining("\n"));
        }
        List<String> known = ALL.stream()
                .flatMap(f -> java.util.stream.Stream.of(
                        f.path(), f.path().substring(f.path().lastIndexOf('.') + 1)))
                .distinct()
                .toList();
        throw new IllegalArgumentException("A job sheet has no field " + Excerpt.quoted(asked) + "; "
                + NearestName.of(name, known)
                        .map(near -> "the nearest name is \"" + near + "\".")
                        .orElse("its sections are "
                                + ALL.stream()
                                        .map(f -> f.path().split("\\.", 2)[0])
                                        .distinct()
                                        .collect(Collectors.joining(", "))
                                + "."));
    }

    /**
     * The sections and how many fields each has.
     *
     * @return one line each
     */
    public static String sections() {
        return ALL.stream()
                .filter(f -> f.path().contains("."))
                .map(f -> f.path().split("\\.", 2)[0])
                .distinct()
                .map(section -> section + ": "
                        + ALL.stream()
                                .map(SheetField::path)
                                .filter(path -> path.startsWith(section + "."))
                                .map(path -> path.substring(section.length() + 1))
                                .distinct()
                                .collect(Collectors.joining(", ")))
                .collect(Collectors.joining("\n"));
    }

    private static String line(SheetField field) {
        return field.path() + ": " + field.what() + (field.hasRange() ? " (usual " + field.range() + ")" : "");
    }

    private static String paragraph(SheetField field) {
        StringBuilder text =
                new StringBuilder(field.path()).append("\n  what it is: ").append(field.what());
        if (field.hasRange()) {
            text.append("\n  usual: ")
                    .append(field.range())
                    .append(field.unit().isEmpty() ? " (a number without a unit)" : "")
                    .append(" (range: ")
                    .append(source(field))
                    .append(')');
        }
        return text.append("\n  how to get it: ")
                .append(field.how())
                .append("\n  what it changes: ")
                .append(field.moves())
                .toString();
    }

    static String source(SheetField field) {
        return field.source().equals("common practice") ? "common practice, no source" : field.source();
    }

    private static List<SheetField> read() {
        List<SheetField> fields = new ArrayList<>();
        try (CsvRows rows = CsvRows.open(
                new InputStreamReader(SheetFields.class.getResourceAsStream(TABLE), StandardCharsets.UTF_8), TABLE)) {
            for (Row row = rows.next(); row != null; row = rows.next()) {
                List<String> c = row.cells();
                if (c.size() != COLUMNS) {
                    throw new IllegalStateException(TABLE + ", line " + row.line() + ": " + c.size() + " cells");
                }
                fields.add(
                        new SheetField(c.get(0), c.get(1), c.get(2), c.get(3), c.get(4), c.get(5), c.get(6), c.get(7)));
            }
        }
        return List.copyOf(fields);
    }

    /** The field of a figure whose usual range is stated in a unit of its kind. */
    static Optional<SheetField> ranged(String path, org.shotledger.units.QuantityKind kind) {
        return at(path).stream().filter(f -> f.usual(kind).isPresent()).findFirst();
    }
}
