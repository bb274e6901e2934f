package org.shotledger.units;

import java.util.List;

/**
 * A unit the project can read: {@code si = number * factor + offset}.
 *
 * @param name the name written back, for example {@code "bar"}
 * @param dimension what the unit measures
 * @param factor SI units in one of it
 * @param offset SI value of its zero
 * @param spellings other spellings that are read
 */
public record UnitName(String name, Dimension dimension, double factor, double offset, List<String> spellings) {

    public UnitName {
        spellings = List.copyOf(spellings);
    }

    /**
     * Converts a number in this unit.
     *
     * @param number the number as written
     * @return the SI value
     */
    public double toSi(double number) {
        return number * factor + offset;
    }

    /**
     * Converts a difference in this unit, for which its zero does not count.
     *
     * @param number a difference or a half-width as written
     * @return the SI value
     */
    public double differenceToSi(double number) {
        return number * factor;
    }

    /**
     * Converts an SI value to this unit.
     *
     * @param si the SI value
     * @return the number to write before the unit
     */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }
}
