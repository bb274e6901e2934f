package org.shotledger.commission;

import org.shotledger.units.QuantityKind;
import org.shotledger.workshop.ListedPart;

/**
 * One line of the job list.
 *
 * @param key its name in the sheet, for example {@code "nitrous-jets"}
 * @param what the part or the job in words
 * @param size what its size is; NaN where it has none
 * @param sizeKind what the size measures
 * @param amount how much of it is wanted
 * @param amountKind a count, a length, a mass or a volume
 * @param circuit which circuit it belongs to
 * @param before what it must be there for
 * @param price of one, or of a metre, a kilogram or a cubic metre, in the sheet's money; NaN where none is given
 * @param hours of work, h; NaN where none are given
 * @param fitted whether it is in the car
 */
public record JobItem(
        String key,
        String what,
        double size,
        QuantityKind sizeKind,
        double amount,
        QuantityKind amountKind,
        ListedPart.Circuit circuit,
        ListedPart.Stage before,
        double price,
        double hours,
        boolean fitted) {

    static JobItem part(String key, String what, double amount, ListedPart.Circuit circuit, ListedPart.Stage before) {
        return sized(key, what, Double.NaN, QuantityKind.COUNT, amount, circuit, before);
    }

    static JobItem sized(
            String key,
            String what,
            double size,
            QuantityKind sizeKind,
            double amount,
            ListedPart.Circuit circuit,
            ListedPart.Stage before) {
        return new JobItem(
                key, what, size, sizeKind, amount, QuantityKind.COUNT, circuit, before, Double.NaN, Double.NaN, false);
    }

    /** The same by length, mass or volume. */
    JobItem measured(QuantityKind kind) {
        return new JobItem(key, what, size, sizeKind, amount, kind, circuit, before, price, hours, fitted);
    }

    /** The same with a price of one. */
    JobItem priced(double each) {
        return new JobItem(key, what, size, sizeKind, amount, amountKind, circuit, before, each, hours, fitted);
    }

    /** The same with what the sheet states of it. */
    JobItem stated(ListedPart part) {
        return new JobItem(
                key,
                part.what().isEmpty() ? what : part.what(),
                size,
                sizeKind,
                Double.isNaN(part.count()) ? amount : part.count(),
                amountKind,
                circuit,
                before,
                Double.isNaN(part.price()) ? price : part.price(),
                part.hours(),
                part.fitted());
    }

    /**
     * What all of it costs.
     *
     * @return in the sheet's money; NaN where no price is given
     */
    public double cost() {
        return price * amount;
    }
}
