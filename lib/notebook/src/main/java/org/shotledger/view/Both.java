package org.shotledger.view;

import org.shotledger.display.Units;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Figures in a sentence, US units first and SI units in brackets. */
final class Both {
    private Both() {}

    static String of(QuantityKind kind, double value) {
        return together(kind.text(value, UnitSystem.US), kind.text(value, UnitSystem.SI));
    }

    /** The same with no decimals beyond three digits that count; the tables hold the digits the trade reads. */
    static String brief(QuantityKind kind, double value) {
        return together(kind.brief(value, UnitSystem.US), kind.brief(value, UnitSystem.SI));
    }

    private static String together(String us, String si) {
        return Units.printed(us.equals(si) ? us : us + " (" + si + ")");
    }
}
