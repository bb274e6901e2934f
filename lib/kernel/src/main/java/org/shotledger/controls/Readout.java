package org.shotledger.controls;

import java.util.Locale;

/**
 * How a value becomes a number that is shown, and back.
 *
 * @param <T> the values
 */
public interface Readout<T> {

    /** Plain numbers, without a unit, three digits behind the point. */
    Readout<Double> NUMBERS = new Readout<>() {
        @Override
        public double shown(Double value) {
            return value;
        }

        @Override
        public Double value(double shown) {
            return shown;
        }

        @Override
        public String unit() {
            return "";
        }

        @Override
        public int digits() {
            return 3;
        }
    };

    /**
     * The number that stands for a value.
     *
     * @param value a value
     * @return the number, in the unit
     */
    double shown(T value);

    /**
     * The value for a number.
     *
     * @param shown a number, in the unit
     * @return the value
     */
    T value(double shown);

    /**
     * The unit of the number.
     *
     * @return its name, empty for none
     */
    String unit();

    /**
     * How exactly the number is written.
     *
     * @return digits behind the point, 0 to 9
     */
    int digits();

    /**
     * A value as text.
     *
     * @param value a value
     * @return number and unit
     */
    default String words(T value) {
        String number = String.format(Locale.ROOT, "%." + digits() + "f", shown(value));
        return unit().isEmpty() ? number : number + " " + unit();
    }
}
