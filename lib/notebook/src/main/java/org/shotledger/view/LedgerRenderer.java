package org.shotledger.view;

import org.shotledger.ledger.Ledger;

/** How a notebook shows a ledger; the nested classes are what the service loader finds. */
public final class LedgerRenderer {
    private LedgerRenderer() {}

    /** Shows a ledger. */
    public static final class OfLedger extends ResultRenderer<Ledger> {
        /** Made by the service loader. */
        public OfLedger() {
            super(Ledger.class, (ledger, shown) -> LedgerTables.of(ledger).in(shown));
        }
    }
}
