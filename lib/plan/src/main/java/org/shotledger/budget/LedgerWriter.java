package org.shotledger.budget;

/** Writes down the reasoning of a budget's operating point of most power, inputs first. */
final class LedgerWriter {
    private LedgerWriter() {}

    static Ledger write(LedgerSubject from) {
        LedgerPen pen = new LedgerPen(from.build());
        WishEntries.write(pen, from);
        EngineEntries.write(pen, from);
        AirEntries.write(pen, from);
        NitrousEntries.write(pen, from);
        FuelEntries.write(pen, from);
        MixtureEntries.write(pen, from);
        PowerEntries.write(pen, from);
        BottleEntries.write(pen, from);
        return pen.ledger();
    }
}
