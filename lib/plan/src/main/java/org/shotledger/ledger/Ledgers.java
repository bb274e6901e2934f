package org.shotledger.ledger;

import java.util.List;
import java.util.Optional;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.setup.Target;

/** Writes the ledger of an outcome: the reasoning of its point of most power, inputs first. */
public final class Ledgers {
    private Ledgers() {}

    /**
     * The ledger of an outcome.
     *
     * @param outcome the outcome
     * @return its entries; none where no engine speed has an answer
     */
    public static Ledger of(Outcome outcome) {
        return write(outcome, Optional.empty());
    }

    /**
     * The ledger of an outcome, with what was asked.
     *
     * @param outcome the outcome
     * @param target what the customer asks for
     * @return its entries; none where no engine speed has an answer
     */
    public static Ledger of(Outcome outcome, Target target) {
        return write(outcome, Optional.of(target));
    }

    private static Ledger write(Outcome outcome, Optional<Target> target) {
        Optional<OperatingPoint> strongest = outcome.strongest();
        if (strongest.isEmpty()) {
            return Ledger.of(List.of());
        }
        Subject subject = Subject.of(outcome, strongest.get());
        LedgerPen pen = new LedgerPen(outcome.car(), RailEntries.tolerance(subject));
        target.ifPresent(asked -> SetupEntries.target(pen, asked));
        SetupEntries.write(pen, subject);
        EngineEntries.write(pen, subject);
        NitrousEntries.write(pen, subject);
        FuelEntries.write(pen, subject);
        AirEntries.write(pen, subject);
        MixtureEntries.write(pen, subject);
        HeatEntries.write(pen, subject);
        PowerEntries.write(pen, subject);
        if (subject.nitrous()) {
            BottleEntries.write(pen, subject);
        }
        return pen.ledger();
    }
}
