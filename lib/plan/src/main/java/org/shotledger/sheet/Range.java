package org.shotledger.sheet;

import java.util.Locale;
import org.shotledger.units.FigureText;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitException;
import org.shotledger.units.UnitName;
import org.shotledger.units.UnitSystem;

/** Words for the range a figure must lie in. */
public final class Range {
    private Range() {}

    /**
     * A range in a given unit.
     *
     * @param kind what is measured
     * @param low least value, SI
     * @param high greatest value, SI
     * @param unit the unit to write it in
     * @return for example {@code "40 to 140 mm"}
     */
    public static String text(QuantityKind kind, double low, double high, UnitName unit) {
        String name = unit.name().isEmpty() ? "" : " " + unit.name();
        return words(unit.fromSi(low), unit.fromSi(high)) + suffix(kind, name);
    }

    /**
     * A range in the SI unit in which the kind is shown.
     *
     * @param kind what is measured
     * @param low least value, SI
     * @param high greatest value, SI
     * @return for example {@code "40 to 140 mm"}
     */
    public static String text(QuantityKind kind, double low, double high) {
        String unit = kind.unit(UnitSystem.SI);
        return words(kind.shown(low, UnitSystem.SI), kind.shown(high, UnitSystem.SI))
                + (unit.isEmpty() ? "" : " " + unit);
    }

    /**
     * A range in the unit in which a figure is written.
     *
     * @param kind what is measured
     * @param low least value, SI
     * @param high greatest value, SI
     * @param written the figure as somebody wrote it, for example {@code "35 m +/- 1 m"}
     * @return for example {@code "0.1 to 20 m"}
     */
    public static String like(QuantityKind kind, double low, double high, String written) {
        String name = written.replaceFirst("\\+/-.*", "")
                .strip()
                .replaceFirst("^[+-]?[\\d.]+(?:[eE][+-]?\\d+)?", "")
                .strip();
        try {
            return text(kind, low, high, FigureText.unit(name, kind));
        } catch (UnitException e) {
            return text(kind, low, high); // a drill's number is no unit
        }
    }

    private static String suffix(QuantityKind kind, String name) {
        return switch (kind) {
            case GAUGE_PRESSURE -> name + " gauge";
            case ABSOLUTE_PRESSURE -> name + " abs";
            default -> name;
        };
    }

    private static String words(double low, double high) {
        return number(low) + " to " + number(high);
    }

    private static String number(double value) {
        if (Math.abs(value) >= 1e6 && Math.abs(value) < 1e10) {
            return String.format(Locale.ROOT, "%.0f", value);
        }
        String text = String.format(Locale.ROOT, "%.6g", value);
        return text.contains("e") || !text.contains(".")
                ? text
                : text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
