package org.shotledger.units;

import javax.measure.Quantity;

/**
 * A figure with its kind, for use at the edge where a bare number would not say its unit.
 *
 * @param kind what it measures
 * @param value the SI value
 */
public record Amount(QuantityKind kind, double value) {

    /** Refuses what is not a number. */
    public Amount {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "A figure of kind " + kind.words() + " is " + value + "; give a finite number.");
        }
    }

    /**
     * Reads a figure.
     *
     * @param text number and unit, such as {@code "84.5 mm"}
     * @param kind what is wanted
     * @return the figure
     * @throws UnitException when the text is not such a figure
     */
    public static Amount read(String text, QuantityKind kind) {
        return new Amount(kind, FigureText.read(text, kind).value());
    }

    /**
     * Takes over a quantity of the Units of Measurement API (JSR 385).
     *
     * @param quantity the quantity, in any unit of its dimension
     * @param kind what it measures
     * @return the figure in SI
     * @throws UnitException when the quantity has another dimension
     */
    public static Amount of(Quantity<?> quantity, QuantityKind kind) {
        return new Amount(kind, MeasureBridge.siValue(quantity, kind));
    }

    /**
     * The SI value, for calls that read better so.
     *
     * @return {@link #value()}
     */
    public double si() {
        return value;
    }

    /**
     * The number in a named unit.
     *
     * @param unit the unit's name, such as {@code "thou"}
     * @return the number to write before it
     * @throws UnitException when there is no such unit, or it measures something else
     */
    public double in(String unit) {
        return FigureText.unit(unit, kind).fromSi(value);
    }

    /**
     * The same figure as a quantity of the Units of Measurement API (JSR 385), in the coherent SI unit; rotation is in
     * reciprocal minutes and angle in degrees.
     *
     * @return the quantity
     */
    public Quantity<?> quantity() {
        return MeasureBridge.quantity(this);
    }

    /**
     * The figure as it is shown.
     *
     * @param system the unit system
     * @return number and unit
     */
    public String text(UnitSystem system) {
        return kind.text(value, system);
    }

    /** The figure in SI, with the US figure behind it where that is another. */
    @Override
    public String toString() {
        String si = text(UnitSystem.SI);
        String us = text(UnitSystem.US);
        return si.equals(us) ? si : si + " (" + us + ")";
    }
}
