package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.words;

import java.util.Collection;
import org.shotledger.ledger.Entry;
import org.shotledger.ledger.Ledger;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** The ledger as tables. */
public final class LedgerTables {
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
