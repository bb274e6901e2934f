package org.shotledger.sheet;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shotledger.sheet.SectionPlace.Value;
import org.shotledger.sheet.SheetNode.Scalar;
import org.shotledger.units.Excerpt;

/** Reads what is no figure in a section: words, choices, and the tables its words name. */
final class Words {
    static final Map<String, Boolean> YES_OR_NO = new LinkedHashMap<>();

    static {
        YES_OR_NO.put("no", false);
        YES_OR_NO.put("yes", true);
        YES_OR_NO.put("false", false);
        YES_OR_NO.put("true", true);
    }

    private final SectionPlace place;

    Words(SectionPlace place) {
        this.place = place;
    }

    String text(String key) {
        Optional<Value> found = place.scalar(key, () -> "write a few words");
        found.ifPresent(value -> note(key, value));
        return found.map(value -> value.scalar().text().strip()).orElse("");
    }

    <E> E choice(String key, Map<String, E> choices) {
        Set<String> words = choices.keySet();
        Optional<Value> found = place.scalar(key, () -> "write one of " + String.join(", ", words));
        E first = choices.values().iterator().next();
        if (found.isEmpty()) {
            return first;
        }
        Scalar scalar = found.get().scalar();
        E meant = choices.get(scalar.text().strip());
        if (meant == null) {
            place.report(
                    scalar.at(),
                    key,
                    scalar.text(),
                    Excerpt.quoted(scalar.text()) + " is not a choice for \"" + place.name(key) + "\"; "
                            + SectionPlace.nearest(scalar.text(), words) + "allowed are " + String.join(", ", words)
                            + ".");
            return first;
        }
        note(key, found.get());
        return meant;
    }

    boolean yes(String key) {
        return choice(key, YES_OR_NO);
    }

    Optional<CsvTable> table(String key, List<CsvColumn> columns) {
        Optional<Value> found = place.scalar(key, () -> "name a CSV file beside the sheet");
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Value value = found.get();
        SheetReading reading = place.reading();
        try {
            String named = value.scalar().text().strip();
            CsvTable table =
                    ShippedTables.means(named) && !Files.exists(reading.folder().resolve(named))
                            ? CsvTable.read(ShippedTables.open(named), named, columns)
                            : beside(named, columns);
            String reason = value.from().isEmpty() ? String.join(" ", table.comments()) : value.from();
            note(key, value.with(reason));
            return Optional.of(table);
        } catch (SheetException e) {
            reading.problems().addAll(e);
        } catch (IllegalArgumentException e) {
            place.report(value.scalar().at(), key, value.scalar().text(), e.getMessage());
        }
        return Optional.empty();
    }

    private CsvTable beside(String named, List<CsvColumn> columns) {
        SheetReading reading = place.reading();
        Path file = TablePath.inside(reading.folder(), named);
        CsvTable table = CsvTable.read(file, named, columns);
        reading.tables().put(named, file);
        return table;
    }

    private void note(String key, Value value) {
        place.note(key, value, null, Double.NaN, Double.NaN);
    }
}
