package org.shotledger.view;

import org.shotledger.budget.Comparison;
import org.shotledger.budget.Ledger;

/** How a notebook shows ledgers; the nested classes are what the service loader finds. */
public final class LedgerRenderer {
    private LedgerRenderer() {}

    /** Shows a ledger. */
    public static final class OfLedger extends ResultRenderer<Ledger> {
        /** Made by the service loader. */
        public OfLedger() {
            super(Ledger.class, (ledger, shown) -> LedgerTables.of(ledger).in(shown));
        }
    }

    /** Shows two ledgers line by line. */
    public static final class OfComparison extends ResultRenderer<Comparison> {
        /** Made by the service loader. */
        public OfComparison() {
            super(
                    Comparison.class,
                    (comparison, shown) -> ComparisonTables.of(comparison).in(shown));
        }
    }
}
