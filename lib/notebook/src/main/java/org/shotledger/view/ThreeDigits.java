package org.shotledger.view;

import java.util.Locale;
import org.shotledger.display.Units;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Figures of a page to decide on: no decimals beyond three digits that count, since no model here is known better than one part in a
 * thousand. The tables behind hold the same figures with the digits the trade reads.
 */
final class ThreeDigits {
    private static final int DIGITS = 3;

    private ThreeDigits() {}

    static String of(QuantityKind kind, double value, UnitSystem system) {
        String usual = kind.number(value, system);
        int point = usual.indexOf('.');
        double shown = Math.abs(kind.shown(value, system));
        int whole = shown < 1 ? 0 : 1 + (int) Math.log10(shown);
        int decimals = Math.max(0, Math.min(usual.length() - 1 - point, DIGITS - whole));
        String number =
                point < 0 ? usual : String.format(Locale.ROOT, "%." + decimals + "f", kind.shown(value, system));
        String unit = kind.unit(system);
        return unit.isEmpty() ? number : number + " " + Units.printed(unit);
    }

    /** US units first and SI units in brackets. */
    static String both(QuantityKind kind, double value) {
        String us = of(kind, value, UnitSystem.US);
        String si = of(kind, value, UnitSystem.SI);
        return us.equals(si) ? us : us + " (" + si + ")";
    }
}
