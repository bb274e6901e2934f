package org.shotledger.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.shotledger.sheet.SheetNode.Entry;
import org.shotledger.sheet.SheetNode.Mapping;
import org.shotledger.sheet.SheetNode.Place;
import org.shotledger.sheet.SheetNode.Scalar;
import org.shotledger.units.Excerpt;
import org.shotledger.units.NearestName;
import org.shotledger.units.QuantityKind;

/** Where a section stands: what it holds, what was asked of it, the reasons it hands down, and how it reports. */
final class SectionPlace {
    private static final Set<String> OWN = Set.of("from", "provenance", "note");
    private static final String SURE = "sure";

    private final SheetReading reading;
    private final String path;
    private final Mapping mapping;
    private final boolean missing;
    private final String from;
    private final String provenance;
    private final int problemsBefore;
    private final Set<String> asked = new LinkedHashSet<>();

    SectionPlace(SheetReading reading, String path, Mapping mapping, boolean missing, String from, String provenance) {
        this.reading = reading;
        this.path = path;
        this.mapping = mapping;
        this.missing = missing;
        this.problemsBefore = reading.problems().count();
        this.from = own("from", mapping).orElse(from);
        this.provenance = provenance("provenance", mapping).orElse(provenance);
    }

    /** A scalar with its reason. */
    record Value(Scalar scalar, String from, String provenance, Found.Meant meant) {
        Value with(String reason) {
            return new Value(scalar, reason, provenance, meant);
        }
    }

    SheetReading reading() {
        return reading;
    }

    String path() {
        return path;
    }

    boolean missing() {
        return missing;
    }

    /** Whether anything in here was wrong. */
    boolean broken() {
        return missing || reading.problems().count() > problemsBefore;
    }

    Place at() {
        return mapping.at();
    }

    /** An entry, which from now on counts as known. */
    Optional<Entry> find(String key) {
        asked.add(key);
        return mapping.find(key);
    }

    /** The entries whose names the writer chose. */
    List<Entry> named() {
        return mapping.entries().stream().filter(e -> !OWN.contains(e.key())).toList();
    }

    SectionPlace inner(String innerPath, Mapping inner) {
        return new SectionPlace(reading, innerPath, inner, false, from, provenance);
    }

    /** The same place with entries for values it does not state, written where the key that gives them stands. */
    SectionPlace filled(String key, Map<String, String> values, String reason, String known) {
        Place at = find(key).map(e -> e.value().at()).orElse(mapping.at());
        List<Entry> entries = new ArrayList<>(mapping.entries());
        values.forEach((name, text) -> {
            if (mapping.find(name).isEmpty()) {
                entries.add(entry(
                        name,
                        new Mapping(
                                List.of(
                                        entry("value", scalar(text, at), at),
                                        entry("from", scalar(reason, at), at),
                                        entry("provenance", scalar(known, at), at)),
                                at,
                                at.offset(),
                                true),
                        at));
            }
        });
        SectionPlace fuller = new SectionPlace(
                reading,
                path,
                new Mapping(entries, mapping.at(), mapping.end(), mapping.flow()),
                missing,
                from,
                provenance);
        fuller.asked.addAll(asked);
        return fuller;
    }

    private static Entry entry(String name, SheetNode value, Place at) {
        return new Entry(name, at, at.offset(), value);
    }

    private static Scalar scalar(String text, Place at) {
        return new Scalar(text, at, at.offset(), false);
    }

    /** A place that stays silent, for a section that is not there and was reported. */
    SectionPlace absent(String key) {
        return new SectionPlace(
                reading,
                name(key),
                new Mapping(List.of(), mapping.at(), mapping.at().offset(), false),
                true,
                from,
                provenance);
    }

    /** A value under this section's own reasons. */
    Value plain(Scalar scalar) {
        return new Value(scalar, from, provenance, Found.Meant.UNSAID);
    }

    /** A single value with its reason; one that is missing is reported with the advice. */
    Optional<Value> scalar(String key, Supplier<String> advice) {
        Optional<Entry> entry = find(key);
        if (entry.isEmpty()) {
            if (!missing) {
                report(mapping.at(), key, "", "\"" + name(key) + "\" is missing; " + advice.get() + ".");
            }
            return Optional.empty();
        }
        SheetNode node = entry.get().value();
        if (node instanceof Scalar scalar && !scalar.text().isBlank()) {
            return Optional.of(plain(scalar));
        }
        if (node instanceof Mapping inner && inner.find("value").isPresent()) {
            return reasoned(key, inner);
        }
        report(node.at(), key, "", "\"" + name(key) + "\" has no value; " + advice.get() + ".");
        return Optional.empty();
    }

    /** A value of a list, alone or with its reason; empty where it is neither. */
    Optional<Value> item(String key, SheetNode node) {
        if (node instanceof Scalar scalar) {
            return Optional.of(plain(scalar));
        }
        return node instanceof Mapping inner && inner.find("value").isPresent()
                ? reasoned(key, inner)
                : Optional.empty();
    }

    private Optional<Value> reasoned(String key, Mapping inner) {
        for (Entry entry : inner.entries()) {
            if (!entry.key().equals("value") && !entry.key().equals(SURE) && !OWN.contains(entry.key())) {
                report(
                        entry.keyAt(),
                        key,
                        entry.key(),
                        Excerpt.quoted(entry.key())
                                + " is not known beside a value; known are value, from, provenance, sure, note.");
            }
        }
        if (inner.find("value").orElseThrow().value() instanceof Scalar scalar) {
            return Optional.of(new Value(
                    scalar,
                    own("from", inner).orElse(from),
                    provenance(key + ".provenance", inner).orElse(provenance),
                    meant(key, inner)));
        }
        report(inner.at(), key, "", "\"value\" must be a plain figure or word.");
        return Optional.empty();
    }

    private Found.Meant meant(String key, Mapping inner) {
        Optional<String> sure = own(SURE, inner);
        if (sure.isPresent() && !Words.YES_OR_NO.containsKey(sure.get())) {
            report(
                    inner.find(SURE).orElseThrow().value().at(),
                    key + ".sure",
                    sure.get(),
                    Excerpt.quoted(sure.get()) + " is no answer here; write yes or no.");
        }
        if (sure.map(Words.YES_OR_NO::get).orElse(false)) {
            return Found.Meant.SURE;
        }
        return own("from", inner).filter(reason -> !reason.isEmpty()).isPresent()
                ? Found.Meant.REASONED
                : Found.Meant.UNSAID;
    }

    private static Optional<String> own(String key, Mapping mapping) {
        return mapping.find(key)
                .filter(e -> e.value() instanceof Scalar)
                .map(e -> ((Scalar) e.value()).text().strip());
    }

    private Optional<String> provenance(String key, Mapping inner) {
        Optional<String> word = own("provenance", inner);
        if (word.isPresent() && !Found.STANDINGS.contains(word.get())) {
            report(
                    inner.find("provenance").orElseThrow().value().at(),
                    key,
                    word.get(),
                    Excerpt.quoted(word.get()) + " is not a provenance; allowed are "
                            + String.join(", ", Found.STANDINGS) + ".");
            return Optional.empty();
        }
        return word;
    }

    void note(String key, Value value, QuantityKind kind, double si, double halfWidth) {
        reading.note(new Found(
                name(key),
                value.scalar().text().strip(),
                kind,
                si,
                halfWidth,
                value.from(),
                value.provenance(),
                reading.file(),
                value.scalar().at().line(),
                value.meant()));
    }

    void noteDefault(String key, String text, QuantityKind kind, double usual, String why) {
        reading.note(new Found(
                name(key),
                text,
                kind,
                usual,
                Double.NaN,
                Found.DEFAULT + why,
                "common practice",
                reading.file(),
                mapping.at().line(),
                Found.Meant.UNSAID));
    }

    void reportUnknown() {
        String where = path.isEmpty() ? "the sheet" : "\"" + path + "\"";
        for (Entry entry : named()) {
            String key = entry.key();
            if (!asked.contains(key)) {
                report(
                        entry.keyAt(),
                        key,
                        key,
                        Excerpt.quoted(key) + " is not known in " + where + "; " + nearest(key, asked) + "known are "
                                + String.join(", ", asked) + ".");
            }
        }
    }

    /** Words that name the nearest of some names, or nothing. */
    static String nearest(String found, Set<String> names) {
        return NearestName.of(found, names)
                .map(near -> "the nearest name is \"" + near + "\"; ")
                .orElse("");
    }

    String name(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    void report(Place at, String key, String found, String sentence) {
        reading.problem(at, Excerpt.of(name(key)), found, sentence);
    }
}
