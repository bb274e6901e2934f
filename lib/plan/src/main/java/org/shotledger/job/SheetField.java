package org.shotledger.job;

import java.util.Optional;
import org.shotledger.sheet.Range;
import org.shotledger.units.AbsolutePressure;
import org.shotledger.units.FigureText;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitException;

/**
 * One thing a job sheet can state.
 *
 * @param path its place, with a star for a name the writer chooses, for example {@code "conditions.*.altitude"}
 * @param low lower end of the usual range as it is written; empty where there is none
 * @param high upper end
 * @param unit unit of both; empty for a pure number, a word or a table
 * @param what what it is
 * @param how how to get it
 * @param moves what it changes
 * @param source where the range comes from; empty where there is none
 */
public record SheetField(
        String path, String low, String high, String unit, String what, String how, String moves, String source) {

    /** The usual range of a figure, SI. */
    record Usual(double low, double high) {
        boolean holds(double value) {
            double slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
            return value >= low - slack && value <= high + slack;
        }
    }

    /**
     * Whether there is a usual range.
     *
     * @return true for most figures
     */
    public boolean hasRange() {
        return !low.isEmpty();
    }

    /** The usual range as a kind of quantity; empty where there is none or its unit measures something else. */
    Optional<Usual> usual(QuantityKind kind) {
        if (!hasRange() || kind == null) {
            return Optional.empty();
        }
        QuantityKind stated = stated(kind);
        double ambient = kind == stated ? 0 : AbsolutePressure.STANDARD_ATMOSPHERE.pascals();
        double shift = kind == QuantityKind.ABSOLUTE_PRESSURE ? ambient : -ambient;
        try {
            return Optional.of(new Usual(si(low, stated) + shift, si(high, stated) + shift));
        } catch (UnitException e) {
            return Optional.empty();
        }
    }

    /** A range of gauge pressures counts for absolute ones too, with a standard atmosphere between them, and the other way round. */
    private QuantityKind stated(QuantityKind kind) {
        boolean pressure = kind == QuantityKind.ABSOLUTE_PRESSURE || kind == QuantityKind.GAUGE_PRESSURE;
        return !pressure
                ? kind
                : unit.endsWith(" gauge") ? QuantityKind.GAUGE_PRESSURE : QuantityKind.ABSOLUTE_PRESSURE;
    }

    private double si(String number, QuantityKind kind) {
        return FigureText.read(unit.isEmpty() ? number : number + " " + unit, kind)
                .value();
    }

    /**
     * The usual range in words.
     *
     * @return for example {@code "60 to 115 mm"}; empty where there is none
     */
    public String range() {
        return hasRange() ? low + " to " + high + (unit.isEmpty() ? "" : " " + unit) : "";
    }

    /** The usual range in the unit in which a figure is written. */
    String rangeLike(String written, QuantityKind kind) {
        Usual usual = usual(kind).orElseThrow();
        return Range.like(kind, usual.low(), usual.high(), written);
    }
}
