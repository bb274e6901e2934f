package org.shotledger.sheet;

import java.util.Set;
import org.shotledger.units.QuantityKind;

/**
 * A column a table must or may have.
 *
 * @param name its name in the heading, before the unit
 * @param kind what it holds
 * @param low least value, SI
 * @param high greatest value, SI
 * @param required whether the table is useless without it
 */
public record CsvColumn(String name, QuantityKind kind, double low, double high, boolean required) {

    /**
     * A column that must be there.
     *
     * @param name its name
     * @param kind what it holds
     * @param low least value, SI
     * @param high greatest value, SI
     * @return the column
     */
    public static CsvColumn required(String name, QuantityKind kind, double low, double high) {
        return new CsvColumn(name, kind, low, high, true);
    }

    /**
     * A column that may be there.
     *
     * @param name its name
     * @param kind what it holds
     * @param low least value, SI
     * @param high greatest value, SI
     * @return the column
     */
    public static CsvColumn optional(String name, QuantityKind kind, double low, double high) {
        return new CsvColumn(name, kind, low, high, false);
    }

    /**
     * Tells whether a heading means this column.
     *
     * @param heading the heading without its unit
     * @param taken the names that are spoken for
     * @return true when it does
     */
    boolean isNamed(String heading, Set<String> taken) {
        return !taken.contains(name) && name.equalsIgnoreCase(heading);
    }
}
