package org.shotledger.table;

import org.shotledger.display.Units;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * One column of a table.
 *
 * @param header what it holds
 * @param kind what its figures measure; null when it holds words, or figures of several kinds with their units
 * @param figures whether it holds figures, which stand at the right
 */
record Column(String header, QuantityKind kind, boolean figures) {

    String header(UnitSystem system) {
        String unit = kind == null ? "" : Units.printed(kind.unit(system));
        return unit.isEmpty() ? header : header + ", " + unit;
    }
}
