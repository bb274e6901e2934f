package org.shotledger.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.shotledger.sheet.SheetNode.Entry;
import org.shotledger.sheet.SheetNode.Mapping;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * One section of a sheet: asks for each value by name, kind and range, reports what is wrong and goes on, and notes where
 * each value came from.
 *
 * <p>A value stands plainly ({@code bore: 84.5 mm}) or with its reason ({@code bore: {value: 84.5 mm, from: bore gauge,
 * provenance: measured}}); {@code from} and {@code provenance} of a section count for all its values that have none.
 */
public final class SheetSection {
    private final SectionPlace place;
    private final Figures figures;
    private final Words words;

    private SheetSection(SectionPlace place) {
        this.place = place;
        this.figures = new Figures(place);
        this.words = new Words(place);
    }

    /**
     * The whole sheet as a section.
     *
     * @param reading the state of the reading
     * @param root the sheet's content
     * @return the outermost section
     */
    public static SheetSection root(SheetReading reading, Mapping root) {
        return new SheetSection(new SectionPlace(reading, "", root, false, "", ""));
    }

    /**
     * Tells whether a value stands here.
     *
     * @param key its name
     * @return true when it does
     */
    public boolean has(String key) {
        return place.find(key).isPresent();
    }

    /**
     * Names that stand in this section but are read by another reader, so that this one does not call them unknown.
     *
     * @param keys the names
     */
    public void readElsewhere(String... keys) {
        for (String key : keys) {
            place.find(key);
        }
    }

    /**
     * The same section with values that it does not state itself, such as those of a part it names. What it states stands.
     *
     * @param key the value that names where the others come from; its place is theirs
     * @param values name to value, as they would be written
     * @param from where they come from
     * @param provenance how they are known
     * @return the fuller section
     */
    public SheetSection filled(String key, Map<String, String> values, String from, String provenance) {
        return new SheetSection(place.filled(key, values, from, provenance));
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
        return figures.one(key, kind, low, high);
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
            return figures.one(key, kind, low, high);
        }
        place.noteDefault(key, kind.text(usual, UnitSystem.SI), kind, usual, why);
        return usual;
    }

    /**
     * Tells whether a value stands here as a figure of a kind, where the sheet may state either of two.
     *
     * @param key its name
     * @param kind what it might measure
     * @return true when it does
     */
    public boolean measures(String key, QuantityKind kind) {
        return figures.measures(key, kind);
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
        return figures.pressure(key, low, high, ambient);
    }

    /**
     * Standard uncertainty of a figure read before.
     *
     * @param key its name
     * @return the standard uncertainty, SI; NaN when no band was given
     */
    public double uncertainty(String key) {
        Found found = place.reading().found().get(place.name(key));
        return found == null ? Double.NaN : found.uncertainty();
    }

    /**
     * The band of a figure read before, as it stands behind {@code +/-}.
     *
     * @param key its name
     * @return the half width, SI; NaN when no band was given
     */
    public double halfWidth(String key) {
        Found found = place.reading().found().get(place.name(key));
        return found == null ? Double.NaN : found.halfWidth();
    }

    /**
     * All sections in here, by the names the writer chose.
     *
     * @return name to section, in the order of the sheet
     */
    public Map<String, SheetSection> namedSections() {
        Map<String, SheetSection> all = new LinkedHashMap<>();
        place.named().forEach(entry -> all.put(entry.key(), section(entry.key())));
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
        return figures.several(key, kind, low, high);
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
        return figures.count(key, low, high);
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
            return figures.count(key, low, high);
        }
        place.noteDefault(key, String.valueOf(usual), QuantityKind.COUNT, usual, why);
        return usual;
    }

    /**
     * Words that must be there.
     *
     * @param key their name
     * @return the words; empty when a problem was reported
     */
    public String text(String key) {
        return words.text(key);
    }

    /**
     * Words that have a default.
     *
     * @param key their name
     * @param usual the default
     * @return the words, or the default
     */
    public String textOr(String key, String usual) {
        return has(key) ? words.text(key) : usual;
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
        return words.choice(key, choices);
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
            return words.choice(key, choices);
        }
        place.noteDefault(key, usual, null, Double.NaN, why);
        return choices.get(usual);
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
            return words.yes(key);
        }
        place.noteDefault(key, usual ? "yes" : "no", null, Double.NaN, why);
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
        return words.table(key, columns);
    }

    /**
     * A section that must be there.
     *
     * @param key its name
     * @return the section; one that stays silent when a problem was reported
     */
    public SheetSection section(String key) {
        Optional<Entry> entry = place.find(key);
        if (entry.isPresent() && entry.get().value() instanceof Mapping inner) {
            return new SheetSection(place.inner(place.name(key), inner));
        }
        if (!place.missing()) {
            String name = "\"" + place.name(key) + "\"";
            place.report(
                    entry.map(Entry::keyAt).orElse(place.at()),
                    key,
                    "",
                    entry.isPresent()
                            ? name + " is not a section; write its values on the lines below, indented."
                            : "The section " + name + " is missing; add it.");
        }
        return new SheetSection(place.absent(key));
    }

    /**
     * A section that may be there.
     *
     * @param key its name
     * @return the section, or empty
     */
    public Optional<SheetSection> sectionIf(String key) {
        return has(key) ? Optional.of(section(key)) : Optional.empty();
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
        place.reportUnknown();
        if (place.broken()) {
            return null;
        }
        try {
            return maker.get();
        } catch (IllegalArgumentException e) {
            SheetReading reading = place.reading();
            reading.problems().add(new Problem(reading.file(), place.at().line(), 0, place.path(), "", e.getMessage()));
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
        place.report(place.find(key).map(e -> e.value().at()).orElse(place.at()), key, "", sentence);
    }

    /**
     * The section's place in the sheet.
     *
     * @return for example {@code "engine"}; empty for the whole sheet
     */
    public String path() {
        return place.path();
    }
}
