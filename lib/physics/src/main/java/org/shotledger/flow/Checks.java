package org.shotledger.flow;

/** Argument checks of this package: one clear sentence with the name, the value and what is allowed. */
final class Checks {
    private Checks() {}

    /** The pressure behind a hole; at or above the pressure upstream it is allowed and gives no flow. */
    static void behind(String where, double pressure) {
        notNegative(where, "downstream pressure", pressure, "Pa");
    }

    static void positive(String where, String name, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    where + ": " + name + " is " + value + " " + unit + "; it must be a finite number above zero.");
        }
    }

    static void notNegative(String where, String name, double value, String unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    where + ": " + name + " is " + value + " " + unit + "; it must be a finite number, zero or above.");
        }
    }

    static void within(String where, String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(where + ": " + name + " is " + value + " " + unit + "; allowed are "
                    + low + " to " + high + " " + unit + ".");
        }
    }
}
