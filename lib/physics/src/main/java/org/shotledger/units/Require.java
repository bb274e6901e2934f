package org.shotledger.units;

import java.math.BigDecimal;
import java.math.MathContext;

/** Checks of numbers on their way into a record; each failure is one sentence with the name, the value and the limits. */
public final class Require {
    private static final MathContext DIGITS = new MathContext(5);
    private static final String PASCAL = "Pa";

    private Require() {}

    /**
     * Lets a number through when it lies between two limits, both included.
     *
     * @param what the number's name as a reader knows it, for example {@code "bore"}
     * @param value the number, in the unit named
     * @param low the least allowed
     * @param high the greatest allowed
     * @param unit the unit's name, empty for a pure number
     * @return the value
     * @throws IllegalArgumentException outside the limits, and for a value that is not a number
     */
    public static double within(String what, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException("The " + what + " is " + with(value, unit) + "; allowed is "
                    + number(low, unit) + " to " + with(high, unit) + ". Check the value and its unit.");
        }
        return value;
    }

    /**
     * The same for the number of a named thing; for paths that run often, as the text is joined only on failure.
     *
     * @param what the number's name, for example {@code "temperature"}
     * @param of what it belongs to, for example a fuel's name
     * @param value the number, in the unit named
     * @param low the least allowed
     * @param high the greatest allowed
     * @param unit the unit's name, empty for a pure number
     * @return the value
     * @throws IllegalArgumentException outside the limits, and for a value that is not a number
     */
    public static double within(String what, String of, double value, double low, double high, String unit) {
        return value >= low && value <= high ? value : within(what + " of " + of, value, low, high, unit);
    }

    /**
     * Lets a number through when it is finite and greater than zero.
     *
     * @param what the number's name
     * @param value the number, in the unit named
     * @param unit the unit's name, empty for a pure number
     * @return the value
     * @throws IllegalArgumentException at zero, below, and for a value that is not finite
     */
    public static double positive(String what, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "The " + what + " is " + with(value, unit) + "; it must be a finite number above zero.");
        }
        return value;
    }

    /**
     * Lets a number through when it is finite and not below zero.
     *
     * @param what the number's name
     * @param value the number, in the unit named
     * @param unit the unit's name, empty for a pure number
     * @return the value
     * @throws IllegalArgumentException below zero, and for a value that is not finite
     */
    public static double notNegative(String what, double value, String unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "The " + what + " is " + with(value, unit) + "; it must be a finite number, zero or above.");
        }
        return value;
    }

    /**
     * The same for the number of a named thing; the text is joined only on failure.
     *
     * @param what the number's name
     * @param of what it belongs to
     * @param value the number, in the unit named
     * @param unit the unit's name, empty for a pure number
     * @return the value
     * @throws IllegalArgumentException below zero, and for a value that is not finite
     */
    public static double notNegative(String what, String of, double value, String unit) {
        return value >= 0 && value < Double.POSITIVE_INFINITY ? value : notNegative(what + " of " + of, value, unit);
    }

    /**
     * Lets a name through when it has letters.
     *
     * @param what what is named
     * @param name the name
     * @return the name
     * @throws IllegalArgumentException when it is missing or blank
     */
    public static String named(String what, String name) {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("The " + what + " has no name; give it one.");
        }
        return name;
    }

    /**
     * Lets an object through when it is there.
     *
     * @param what what it is
     * @param value the object
     * @param <T> its type
     * @return the object
     * @throws IllegalArgumentException when it is missing
     */
    public static <T> T given(String what, T value) {
        if (value == null) {
            throw new IllegalArgumentException("The " + what + " is missing; give one.");
        }
        return value;
    }

    private static String with(double value, String unit) {
        String shown = unit.equals(PASCAL) ? "kPa" : unit;
        return unit.isEmpty() ? number(value, unit) : number(value, unit) + " " + shown;
    }

    /** Nobody reads an engine's pressures in pascals. */
    private static String number(double value, String unit) {
        return shown(unit.equals(PASCAL) ? value / 1e3 : value);
    }

    /**
     * A calculated number as a reader can take it in.
     *
     * @param value any number
     * @return at most five significant digits
     */
    public static String shown(double value) {
        return Double.isFinite(value)
                ? Double.toString(new BigDecimal(value).round(DIGITS).doubleValue())
                : Double.toString(value);
    }
}
