package org.shotledger.view;

import org.shotledger.display.Units;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Figures in a sentence, US units first and SI units in brackets. */
final class Both {
    private Both() {}

    static String of(QuantityKind kind, double value) {
        String us = Units.printed(kind.text(value, UnitSystem.US));
        String si = Units.printed(kind.text(value, UnitSystem.SI));
        return us.equals(si) ? us : us + " (" + si + ")";
    }
}
