package org.shotledger.table;

import java.util.List;
import org.shotledger.display.Units;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Head of a column: what it holds and how its figures are shown.
 *
 * @param header what it holds
 * @param kind what its figures measure; null when it holds words, or figures of several kinds with their units
 * @param figures whether it holds figures, which stand at the right
 */
record Heading(String header, QuantityKind kind, boolean figures) {

    /** With the unit of each system, the second one in brackets. */
    String header(List<UnitSystem> systems) {
        String first = header(systems.get(0));
        return systems.size() == 1 ? first : first + " (" + Units.printed(kind.unit(systems.get(1))) + ")";
    }

    String header(UnitSystem system) {
        String unit = kind == null ? "" : Units.printed(kind.unit(system));
        return unit.isEmpty() ? header : header + ", " + unit;
    }
}
