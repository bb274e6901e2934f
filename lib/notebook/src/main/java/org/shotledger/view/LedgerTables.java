package org.shotledger.view;

import java.util.Collection;
import org.shotledger.budget.Entry;
import org.shotledger.budget.Ledger;
import org.shotledger.table.Cell;
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
        Listing.Builder rows = Listing.titled(caption)
                .words("Figure")
                .mixed("Value")
                .mixed("Uncertainty")
                .words("Standing")
                .words("Basis")
                .words("Source")
                .words("Rests on");
        for (Entry entry : entries) {
            rows.row(
                    entry.symbol().isBlank() ? entry.name() : entry.name() + ", " + entry.symbol(),
                    new Cell.Figure(entry.value(), entry.kind()),
                    new Cell.Figure(entry.uncertainty(), difference(entry.kind())),
                    entry.standing().words(),
                    entry.basis(),
                    entry.source(),
                    String.join(", ", entry.inputs()));
        }
        return rows.build();
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
