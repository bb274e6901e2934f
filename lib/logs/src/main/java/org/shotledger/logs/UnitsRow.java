package org.shotledger.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shotledger.units.FigureText;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitException;

/** Tells units from words, and takes them out of headings. */
final class UnitsRow {
    private static final Pattern BRACKETS = Pattern.compile("(.*?)\\s*[\\[({]([^\\[\\](){}]*)[\\])}]\\s*");
    private static final Pattern CLOCK = Pattern.compile("(?i)\\[?(h+|m+):(m+|s+)(:s+)?([.,:]\\w+)?\\]?");
    private static final Pattern NO_UNIT = Pattern.compile("(?i)-*|bool|flag|state|on/off|0/1|text|lambda|afr|n/a");

    private UnitsRow() {}

    /** The units of a line that holds nothing else; empty when a cell is no unit, or none is one. */
    static Optional<List<String>> in(List<String> cells) {
        List<String> units = new ArrayList<>();
        boolean any = false;
        for (String cell : cells) {
            String bare = bare(cell);
            boolean known = isUnit(bare);
            any |= known;
            if (!known && !NO_UNIT.matcher(bare).matches()) {
                return Optional.empty();
            }
            units.add(known ? bare : "");
        }
        return any ? Optional.of(units) : Optional.empty();
    }

    /** Without brackets around all of it. */
    static String bare(String cell) {
        Matcher m = BRACKETS.matcher(cell);
        return m.matches() && m.group(1).isEmpty() ? m.group(2).strip() : cell.strip();
    }

    /** A heading and the unit at its end in round or curly brackets; the unit is empty where the brackets hold something else. */
    static String[] parted(String heading) {
        Matcher m = BRACKETS.matcher(heading);
        if (m.matches()
                && !m.group(1).isBlank()
                && (isUnit(m.group(2)) || NO_UNIT.matcher(m.group(2)).matches())) {
            return new String[] {
                m.group(1).strip(), isUnit(m.group(2)) ? m.group(2).strip() : ""
            };
        }
        return new String[] {heading, ""};
    }

    /** Whether the unit says that the column holds clock times. */
    static boolean isClock(String unit) {
        return CLOCK.matcher(unit).matches() || unit.equalsIgnoreCase("clock");
    }

    /** Whether a text is the name of a unit in which some channel may be logged. */
    static boolean isUnit(String text) {
        return !text.isBlank()
                && text.length() <= 24
                && (isClock(text) || kind(text).isPresent());
    }

    /** What a unit measures; a pressure without its reference is a difference. */
    static Optional<QuantityKind> kind(String unit) {
        for (QuantityKind kind : List.of(
                QuantityKind.FRACTION,
                QuantityKind.PRESSURE_DIFFERENCE,
                QuantityKind.ABSOLUTE_PRESSURE,
                QuantityKind.GAUGE_PRESSURE,
                QuantityKind.TEMPERATURE,
                QuantityKind.ROTATION,
                QuantityKind.TIME,
                QuantityKind.VOLTAGE,
                QuantityKind.POWER,
                QuantityKind.TORQUE,
                QuantityKind.SPEED,
                QuantityKind.CRANK_ANGLE,
                QuantityKind.MASS_FLOW,
                QuantityKind.VOLUME_FLOW,
                QuantityKind.FREQUENCY,
                QuantityKind.LENGTH,
                QuantityKind.CURRENT,
                QuantityKind.MASS)) {
            if (measures(unit, kind)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    private static boolean measures(String unit, QuantityKind kind) {
        try {
            FigureText.unit(LogUnits.usual(unit), kind);
            return !unit.isBlank();
        } catch (UnitException e) {
            return false;
        }
    }
}
