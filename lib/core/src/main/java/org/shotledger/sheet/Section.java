package org.shotledger.sheet;

import static org.shotledger.units.AbsolutePressure.STANDARD_ATMOSPHERE;
import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.shotledger.sheet.SheetNode.Entry;
import org.shotledger.sheet.SheetNode.Items;
import org.shotledger.sheet.SheetNode.Mapping;
import org.shotledger.sheet.SheetNode.Place;
import org.shotledger.sheet.SheetNode.Scalar;
import org.shotledger.units.FigureText;
import org.shotledger.units.NearestName;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitException;
import org.shotledger.units.UnitSystem;

/**
 * One section of a sheet: asks for each value by name, kind and range, reports what is wrong and goes on, and notes where
 * each value came from.
 *
 * <p>A value stands plainly ({@code bore: 84.5 mm}) or with its reason ({@code bore: {value: 84.5 mm, from: bore gauge,
 * standing: measured}}); {@code from} and {@code standing} of a section count for all its values that have none.
 */
public final class Section {
    private static final Set<String> OWN = Set.of("from", "standing", "note");

    private final SheetReading reading;
    private final String path;
    private final Mapping mapping;
    private final boolean missing;
    private final String from;
    private final String standing;
    private final int problemsBefore;
    private final Set<String> asked = new LinkedHashSet<>();

    private Section(SheetReading reading, String path, Mapping mapping, boolean missing, String from, String standing) {
        this.reading = reading;
        this.path = path;
        this.mapping = mapping;
        this.missing = missing;
        this.problemsBefore = reading.problems().count();
        this.from = own("from", mapping).orElse(from);
        this.standing = standing("standing", mapping).orElse(standing);
    }

    /**
     * The whole sheet as a section.
     *
     * @param reading the state of the reading
     * @param root the sheet's content
     * @return the outermost section
     */
    public static Section root(SheetReading reading, Mapping root) {
        return new Section(reading, "", root, false, "", "");
    }

    /**
     * Tells whether a value stands here.
     *
     * @param key its name
     * @return true when it does
     */
    public boolean has(String key) {
        asked.add(key);
        return mapping.find(key).isPresent();
    }

    /**
     * A figure that must be there.
     *
     * @param key its name
     * @param kind what it measures
     * @param low least plausible value, SI
     * @param high greatest plausible value, SI
     * @return the SI value; NaN when a problem was reported
     */
    public double figure(String key, QuantityKind kind, double low, double high) {
        return scalar(key, "write " + kind.dimension().words() + " from " + Range.text(kind, low, high))
                .map(value -> read(key, value, kind, low, high))
                .orElse(Double.NaN);
    }

    /**
     * A figure that has a default.
     *
     * @param key its name
     * @param kind what it measures
     * @param low least plausible value, SI
     * @param high greatest plausible value, SI
     * @param usual the default, SI
     * @param why where the default comes from
     * @return the SI value, or the default; NaN when a problem was reported
     */
    public double figureOr(String key, QuantityKind kind, double low, double high, double usual, String why) {
        if (has(key)) {
            return figure(key, kind, low, high);
        }
        noteDefault(key, kind.text(usual, UnitSystem.SI), kind, usual, why);
        return usual;
    }

    /**
     * A pressure that may be written as absolute or as gauge pressure.
     *
     * @param key its name
     * @param low least plausible value, Pa absolute
     * @param high greatest plausible value, Pa absolute
     * @param ambient pressure around the gauge, Pa absolute; NaN when a problem was reported for it
     * @return Pa absolute; NaN when a problem was reported
     */
    public double pressure(String key, double low, double high, double ambient) {
        boolean gauge = scalar(key, "write a pressure from " + Range.text(ABSOLUTE_PRESSURE, low, high))
                .map(value -> value.scalar().text().contains("gauge"))
                .orElse(false);
        if (!gauge) {
            return has(key) ? figure(key, ABSOLUTE_PRESSURE, low, high) : Double.NaN;
        }
        double around = Double.isNaN(ambient) ? STANDARD_ATMOSPHERE.pascals() : ambient;
        return figure(key, GAUGE_PRESSURE, low - around, high - around) + around;
    }

    /**
     * Standard uncertainty of a figure read before.
     *
     * @param key its name
     * @return the standard uncertainty, SI; NaN when no band was given
     */
    public double uncertainty(String key) {
        Found found = reading.found().get(name(key));
        return found == null ? Double.NaN : found.uncertainty();
    }

    /**
     * All sections in here, by the names the writer chose.
     *
     * @return name to section, in the order of the sheet
     */
    public Map<String, Section> namedSections() {
        Map<String, Section> all = new LinkedHashMap<>();
        for (Entry entry : mapping.entries()) {
            if (!OWN.contains(entry.key())) {
                all.put(entry.key(), section(entry.key()));
            }
        }
        return all;
    }

    /**
     * Several figures in brackets.
     *
     * @param key their name
     * @param kind what they measure
     * @param low least plausible value, SI
     * @param high greatest plausible value, SI
     * @return the SI values; empty when a problem was reported
     */
    public List<Double> figures(String key, QuantityKind kind, double low, double high) {
        asked.add(key);
        Optional<Entry> entry = mapping.find(key);
        if (entry.isEmpty() || !(entry.get().value() instanceof Items items)) {
            report(
                    entry.map(e -> e.value().at()).orElse(mapping.at()),
                    key,
                    "",
                    "\"" + name(key) + "\" is not a list; write figures in square brackets, each from "
                            + Range.text(kind, low, high) + ".");
            return List.of();
        }
        List<Double> values = new ArrayList<>();
        for (SheetNode item : items.items()) {
            String itemKey = key + "[" + values.size() + "]";
            if (item instanceof Scalar value) {
                values.add(read(itemKey, new Value(value, from, standing), kind, low, high));
            } else {
                report(item.at(), itemKey, "", "A plain figure is wanted here.");
            }
        }
        return values;
    }

    /**
     * A whole number that must be there.
     *
     * @param key its name
     * @param low least value
     * @param high greatest value
     * @return the number; {@code low} when a problem was reported
     */
    public int count(String key, int low, int high) {
        double value = figure(key, QuantityKind.COUNT, low, high);
        if (Double.isNaN(value)) {
            return low;
        }
        if (value != Math.rint(value)) {
            report(
                    mapping.find(key).orElseThrow().value().at(),
                    key,
                    "",
                    "A whole number is wanted from " + low + " to " + high + ".");
            return low;
        }
        return (int) value;
    }

    /**
     * A whole number that has a default.
     *
     * @param key its name
     * @param low least value
     * @param high greatest value
     * @param usual the default
     * @param why where the default comes from
     * @return the number, or the default
     */
    public int countOr(String key, int low, int high, int usual, String why) {
        if (has(key)) {
            return count(key, low, high);
        }
        noteDefault(key, String.valueOf(usual), QuantityKind.COUNT, usual, why);
        return usual;
    }

    /**
     * Words that must be there.
     *
     * @param key their name
     * @return the words; empty when a problem was reported
     */
    public String text(String key) {
        Optional<Value> found = scalar(key, "write a few words");
        found.ifPresent(value -> noteWord(key, value));
        return found.map(value -> value.scalar().text().strip()).orElse("");
    }

    /**
     * Words that have a default.
     *
     * @param key their name
     * @param usual the default
     * @return the words, or the default
     */
    public String textOr(String key, String usual) {
        return has(key) ? text(key) : usual;
    }

    /**
     * One of several words.
     *
     * @param <E> what the words mean
     * @param key the name
     * @param choices word to meaning
     * @return the meaning; the first one when a problem was reported
     */
    public <E> E choice(String key, Map<String, E> choices) {
        String allowed = String.join(", ", new LinkedHashSet<>(choices.keySet()));
        Optional<Value> found = scalar(key, "write one of " + allowed);
        E first = choices.values().iterator().next();
        if (found.isEmpty()) {
            return first;
        }
        Scalar scalar = found.get().scalar();
        E meant = choices.get(scalar.text().strip());
        if (meant == null) {
            report(
                    scalar.at(),
                    key,
                    scalar.text(),
                    "\"" + shortened(scalar.text()) + "\" is not a choice for \"" + name(key) + "\"; "
                            + nearest(scalar.text(), choices.keySet()) + "allowed are " + allowed + ".");
            return first;
        }
        noteWord(key, found.get());
        return meant;
    }

    /**
     * One of several words, with a default.
     *
     * @param <E> what the words mean
     * @param key the name
     * @param choices word to meaning
     * @param usual the default word
     * @param why where the default comes from
     * @return the meaning
     */
    public <E> E choiceOr(String key, Map<String, E> choices, String usual, String why) {
        if (has(key)) {
            return choice(key, choices);
        }
        noteDefault(key, usual, null, Double.NaN, why);
        return choices.get(usual);
    }

    /**
     * Yes or no.
     *
     * @param key the name
     * @return the answer; false when a problem was reported
     */
    public boolean yes(String key) {
        Map<String, Boolean> ordered = new LinkedHashMap<>();
        ordered.put("no", false);
        ordered.put("yes", true);
        ordered.put("false", false);
        ordered.put("true", true);
        return choice(key, ordered);
    }

    /**
     * Yes or no, with a default.
     *
     * @param key the name
     * @param usual the default
     * @param why where the default comes from
     * @return the answer
     */
    public boolean yesOr(String key, boolean usual, String why) {
        if (has(key)) {
            return yes(key);
        }
        noteDefault(key, usual ? "yes" : "no", null, Double.NaN, why);
        return usual;
    }

    /**
     * A table in a file beside the sheet.
     *
     * @param key the name
     * @param columns the columns it must or may have
     * @return the table; empty when a problem was reported
     */
    public Optional<CsvTable> table(String key, List<CsvColumn> columns) {
        Optional<Value> found = scalar(key, "name a CSV file beside the sheet");
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Scalar scalar = found.get().scalar();
        try {
            String named = scalar.text().strip();
            Path file = TablePath.inside(reading.folder(), named);
            CsvTable table = CsvTable.read(file, named, columns);
            reading.tables().put(named, file);
            noteWord(key, found.get(), String.join(" ", table.comments()));
            return Optional.of(table);
        } catch (SheetException e) {
            reading.problems().addAll(e);
        } catch (IllegalArgumentException e) {
            report(scalar.at(), key, scalar.text(), e.getMessage());
        }
        return Optional.empty();
    }

    /**
     * A section that must be there.
     *
     * @param key its name
     * @return the section; one that stays silent when a problem was reported
     */
    public Section section(String key) {
        asked.add(key);
        Optional<Entry> entry = mapping.find(key);
        if (entry.isPresent() && entry.get().value() instanceof Mapping inner) {
            return inner(name(key), inner);
        }
        if (!missing) {
            Place at = entry.map(Entry::keyAt).orElse(mapping.at());
            report(
                    at,
                    key,
                    "",
                    entry.isPresent()
                            ? "\"" + name(key) + "\" is not a section; write its values on the lines below, indented."
                            : "The section \"" + name(key) + "\" is missing; add it.");
        }
        return new Section(reading, name(key), new Mapping(List.of(), mapping.at()), true, from, standing);
    }

    /**
     * A section that may be there.
     *
     * @param key its name
     * @return the section, or empty
     */
    public Optional<Section> sectionIf(String key) {
        return has(key) ? Optional.of(section(key)) : Optional.empty();
    }

    /**
     * A list of sections, each begun with a dash.
     *
     * @param key its name
     * @return the sections; empty when a problem was reported
     */
    public List<Section> sections(String key) {
        asked.add(key);
        Optional<Entry> entry = mapping.find(key);
        if (entry.isEmpty() || !(entry.get().value() instanceof Items items)) {
            if (!missing) {
                report(
                        entry.map(Entry::keyAt).orElse(mapping.at()),
                        key,
                        "",
                        "\"" + name(key) + "\" is not a list; begin each of its parts with a dash on the lines below.");
            }
            return List.of();
        }
        List<Section> list = new ArrayList<>();
        for (SheetNode item : items.items()) {
            String itemName = name(key) + "[" + list.size() + "]";
            if (item instanceof Mapping inner) {
                list.add(inner(itemName, inner));
            } else {
                report(item.at(), key, "", "Each part of \"" + name(key) + "\" must have named values.");
            }
        }
        return list;
    }

    /**
     * Ends the section: reports the names nobody asked for, then makes what the section describes unless something in it
     * was wrong.
     *
     * @param <T> what the section describes
     * @param maker makes it; an {@code IllegalArgumentException} of it is reported here
     * @return what was made, or null when a problem was reported
     */
    public <T> T make(Supplier<T> maker) {
        reportUnknown();
        if (missing || reading.problems().count() > problemsBefore) {
            return null;
        }
        try {
            return maker.get();
        } catch (IllegalArgumentException e) {
            reading.problems().add(new Problem(reading.file(), mapping.at().line(), 0, path, "", e.getMessage()));
            return null;
        }
    }

    /**
     * Reports a problem of this section's own.
     *
     * @param key the value it is about
     * @param sentence what is wrong
     */
    public void report(String key, String sentence) {
        Place at = mapping.find(key).map(e -> e.value().at()).orElse(mapping.at());
        report(at, key, "", sentence);
    }

    /**
     * The section's place in the sheet.
     *
     * @return for example {@code "engine"}; empty for the whole sheet
     */
    public String path() {
        return path;
    }

    private void reportUnknown() {
        for (Entry entry : mapping.entries()) {
            String key = entry.key();
            if (!asked.contains(key) && !OWN.contains(key)) {
                String where = path.isEmpty() ? "the sheet" : "\"" + path + "\"";
                report(
                        entry.keyAt(),
                        key,
                        key,
                        "\"" + shortened(key) + "\" is not known in " + where + "; " + nearest(key, asked)
                                + "known are " + String.join(", ", asked) + ".");
            }
        }
    }

    private static String nearest(String found, Set<String> names) {
        return NearestName.of(found, names)
                .map(near -> "the nearest name is \"" + near + "\"; ")
                .orElse("");
    }

    private Section inner(String innerPath, Mapping inner) {
        return new Section(reading, innerPath, inner, false, from, standing);
    }

    /** A scalar with its reason. */
    private record Value(Scalar scalar, String from, String standing) {}

    private Optional<Value> scalar(String key, String advice) {
        asked.add(key);
        Optional<Entry> entry = mapping.find(key);
        if (entry.isEmpty()) {
            if (!missing) {
                report(mapping.at(), key, "", "\"" + name(key) + "\" is missing; " + advice + ".");
            }
            return Optional.empty();
        }
        SheetNode node = entry.get().value();
        if (node instanceof Scalar scalar && !scalar.text().isBlank()) {
            return Optional.of(new Value(scalar, from, standing));
        }
        if (node instanceof Mapping inner && inner.find("value").isPresent()) {
            return reasoned(key, inner);
        }
        report(node.at(), key, "", "\"" + name(key) + "\" has no value; " + advice + ".");
        return Optional.empty();
    }

    private Optional<Value> reasoned(String key, Mapping inner) {
        for (Entry entry : inner.entries()) {
            if (!entry.key().equals("value") && !OWN.contains(entry.key())) {
                report(
                        entry.keyAt(),
                        key,
                        entry.key(),
                        "\"" + shortened(entry.key())
                                + "\" is not known beside a value; known are value, from, standing, note.");
            }
        }
        if (inner.find("value").orElseThrow().value() instanceof Scalar scalar) {
            return Optional.of(new Value(
                    scalar,
                    own("from", inner).orElse(from),
                    standing(key + ".standing", inner).orElse(standing)));
        }
        report(inner.at(), key, "", "\"value\" must be a plain figure or word.");
        return Optional.empty();
    }

    private double read(String key, Value value, QuantityKind kind, double low, double high) {
        Scalar scalar = value.scalar();
        try {
            org.shotledger.units.Reading figure = FigureText.read(scalar.text(), kind);
            double si = figure.value();
            double slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
            if (si < low - slack || si > high + slack) {
                report(
                        scalar.at(),
                        key,
                        scalar.text(),
                        "\"" + shortened(scalar.text()) + "\" is not plausible for \"" + name(key) + "\"; allowed is "
                                + Range.text(kind, low, high) + ".");
                return Double.NaN;
            }
            reading.note(new Found(
                    name(key),
                    scalar.text(),
                    kind,
                    si,
                    figure.halfWidth(),
                    value.from(),
                    value.standing(),
                    reading.file(),
                    scalar.at().line(),
                    true));
            return si;
        } catch (UnitException e) {
            report(scalar.at(), key, scalar.text(), e.getMessage());
            return Double.NaN;
        }
    }

    private void noteWord(String key, Value value) {
        noteWord(key, value, "");
    }

    private void noteWord(String key, Value value, String reason) {
        reading.note(new Found(
                name(key),
                value.scalar().text().strip(),
                null,
                Double.NaN,
                Double.NaN,
                value.from().isEmpty() ? reason : value.from(),
                value.standing(),
                reading.file(),
                value.scalar().at().line(),
                true));
    }

    private void noteDefault(String key, String text, QuantityKind kind, double usual, String why) {
        reading.note(new Found(
                name(key),
                text,
                kind,
                usual,
                Double.NaN,
                "default: " + why,
                "common practice",
                reading.file(),
                mapping.at().line(),
                false));
    }

    private String name(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    private void report(Place at, String key, String found, String sentence) {
        reading.problem(at, name(key), found, sentence);
    }

    private static Optional<String> own(String key, Mapping mapping) {
        return mapping.find(key)
                .filter(e -> e.value() instanceof Scalar)
                .map(e -> ((Scalar) e.value()).text().strip());
    }

    private Optional<String> standing(String key, Mapping inner) {
        Optional<String> word = own("standing", inner);
        if (word.isPresent() && !Found.STANDINGS.contains(word.get())) {
            report(
                    inner.find("standing").orElseThrow().value().at(),
                    key,
                    word.get(),
                    "\"" + shortened(word.get()) + "\" is not a standing; allowed are "
                            + String.join(", ", Found.STANDINGS) + ".");
            return Optional.empty();
        }
        return word;
    }

    private static String shortened(String text) {
        String line = text.replaceAll("\\p{Cntrl}", " ");
        return line.length() > 60 ? line.substring(0, 57) + "..." : line;
    }
}
