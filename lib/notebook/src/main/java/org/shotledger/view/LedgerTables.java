package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.words;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.shotledger.ledger.Entry;
import org.shotledger.ledger.Ledger;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** The ledger as tables. */
public final class LedgerTables {
    private static final int LONG = 40;
    private static final int LETTERS = 26;

    private LedgerTables() {}

    /**
     * Every figure with its reasoning.
     *
     * @param ledger the ledger
     * @return one row an entry
     */
    public static Listing of(Ledger ledger) {
        return entries("Every figure and where it comes from", ledger.entries());
    }

    /**
     * Why a figure is what it is.
     *
     * @param ledger the ledger
     * @param key the key of the figure
     * @return the figure first, then everything it rests on, down to the inputs
     * @throws IllegalArgumentException when there is no such figure; the message lists the keys
     */
    public static Listing why(Ledger ledger, String key) {
        var chain = ledger.why(key);
        return entries("Why: " + chain.get(0).name(), chain);
    }

    /**
     * Entries of a ledger.
     *
     * @param caption what they answer
     * @param entries the entries
     * @return one row an entry
     */
    public static Listing entries(String caption, Collection<Entry> entries) {
        return Listing.of(
                caption,
                entries,
                words("Figure", LedgerTables::name),
                column("Value", Entry::kind, Entry::value),
                column("Uncertainty", entry -> difference(entry.kind()), Entry::uncertainty),
                words("Known as", entry -> entry.provenance().words()),
                words("Basis", Entry::basis),
                words("Source", Entry::source),
                words("Rests on", entry -> String.join(", ", entry.inputs())));
    }

    /**
     * The ledger as an appendix on paper: fewer columns than {@link #of}, entries and repeated sources by number.
     *
     * @param ledger the ledger
     * @return one row an entry
     */
    static Listing appendix(Ledger ledger) {
        Map<String, Integer> numbers = new HashMap<>();
        ledger.entries().forEach(entry -> numbers.put(entry.key(), numbers.size() + 1));
        List<String> repeated = repeated(ledger);
        Listing.Builder rows = Listing.titled("Every figure and where it comes from; numbers in the third column are"
                        + " those of the rows it rests on")
                .words("No. and figure")
                .mixed("Value, standard uncertainty")
                .words("Basis")
                .words("Known as, source");
        for (Entry entry : ledger.entries()) {
            String on =
                    entry.inputs().stream().map(key -> "" + numbers.get(key)).collect(Collectors.joining(", "));
            rows.row(
                    numbers.get(entry.key()) + " " + name(entry),
                    new Cell.Figure(entry.value(), entry.kind(), false, entry.uncertainty()),
                    entry.basis() + (on.isEmpty() ? "" : " [" + on + "]"),
                    entry.provenance().words() + "; " + named(entry.source(), repeated));
        }
        return rows.build();
    }

    /**
     * The sources that {@link #appendix} names by a letter.
     *
     * @param ledger the ledger
     * @return one row a source; none when none stands there twice
     */
    static Listing letters(Ledger ledger) {
        List<String> repeated = repeated(ledger);
        Listing.Builder rows =
                Listing.titled("Sources named by a letter").words("Letter").words("Source");
        repeated.forEach(source -> rows.row(letter(repeated.indexOf(source)), source));
        return rows.build();
    }

    /** Sources that are long enough and stand there often enough that a letter saves the reader something. */
    private static List<String> repeated(Ledger ledger) {
        return ledger.entries().stream()
                .map(Entry::source)
                .filter(source -> source.length() > LONG)
                .collect(Collectors.groupingBy(source -> source, LinkedHashMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .filter(source -> source.getValue() > 1)
                .map(Map.Entry::getKey)
                .toList();
    }

    private static String named(String source, List<String> repeated) {
        return repeated.contains(source) ? "source " + letter(repeated.indexOf(source)) : source;
    }

    /** A to Z, then AA, AB and so on. */
    private static String letter(int index) {
        return (index < LETTERS ? "" : letter(index / LETTERS - 1)) + (char) ('A' + index % LETTERS);
    }

    private static String name(Entry entry) {
        return entry.symbol().isBlank() ? entry.name() : entry.name() + ", " + entry.symbol();
    }

    /** How a difference of two values is shown. */
    static QuantityKind difference(QuantityKind kind) {
        return switch (kind) {
            case TEMPERATURE -> QuantityKind.TEMPERATURE_DIFFERENCE;
            case ABSOLUTE_PRESSURE, GAUGE_PRESSURE -> QuantityKind.PRESSURE_DIFFERENCE;
            default -> kind;
        };
    }
}
