package org.shotledger.units;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads figures as people write them: {@code 84.5 mm}, {@code 950 psi gauge}, {@code 590 +/- 15 hp}, {@code 5/64 in},
 * {@code drill 52}, {@code 35 %}.
 */
public final class FigureText {
    private static final int LONGEST = 200;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,4})?");
    private static final Pattern QUOTIENT = Pattern.compile("(\\d{1,4})/(\\d{1,4})(?=\\s)");
    private static final Pattern COMMA = Pattern.compile("[+-]?\\d+,\\d+.*");
    private static final Pattern DRILL = Pattern.compile("drill\\s+#?([0-9]{1,2}|[A-Z])");

    private FigureText() {}

    /**
     * Reads a figure.
     *
     * @param text number, unit, and optionally a band after {@code +/-}
     * @param kind what is wanted
     * @return the figure in SI
     * @throws UnitException when the text is not such a figure; one sentence says why and what to write
     */
    public static Reading read(String text, QuantityKind kind) {
        String figure = text.strip().replace('\u2212', '-').replace("\u00b1", "+/-");
        String quoted = Excerpt.quoted(figure);
        if (figure.length() > LONGEST) {
            throw new UnitException(quoted + " is longer than " + LONGEST + " characters; write a number and a unit.");
        }
        Matcher drill = DRILL.matcher(figure);
        if (kind.dimension() == Dimension.LENGTH && drill.matches()) {
            return new Reading(kind, DrillSizes.diameter(drill.group(1)), Double.NaN, figure);
        }
        int band = figure.indexOf("+/-");
        if (band < 0) {
            Part part = part(figure, quoted);
            return new Reading(kind, value(part, kind, quoted), Double.NaN, figure);
        }
        Part left = part(figure.substring(0, band), quoted);
        Part right = part(figure.substring(band + 3), quoted);
        return banded(figure, kind, quoted, left, right);
    }

    /**
     * Finds a unit by itself, as in the heading of a table column.
     *
     * @param unit the unit's name, empty for a pure number
     * @param kind what is wanted
     * @return the unit
     * @throws UnitException when there is no such unit, or it measures something else
     */
    public static UnitName unit(String unit, QuantityKind kind) {
        if (kind.dimension() == Dimension.NUMBER && unit.isBlank()) {
            return UnitTable.get().find("");
        }
        return UnitReader.read(unit, kind, "", Excerpt.quoted(unit.strip()));
    }

    /**
     * The units in which a kind may be written.
     *
     * @param kind what is measured
     * @return the units, the customary ones first
     */
    public static List<UnitName> unitsOf(QuantityKind kind) {
        return UnitTable.get().of(kind.dimension());
    }

    /**
     * Tells whether a text is a figure of a kind, where two kinds may be written.
     *
     * @param text the figure as written
     * @param kind the kind
     * @return true when {@link #read} would answer
     */
    public static boolean isA(String text, QuantityKind kind) {
        try {
            return read(text, kind).kind() == kind;
        } catch (UnitException e) {
            return false;
        }
    }

    /**
     * Tells whether a figure is said to be a gauge pressure.
     *
     * @param text the figure as written
     * @return true for {@code "950 psi gauge"} and {@code "950 psig"}
     */
    public static boolean saysGauge(String text) {
        return UnitReader.normal(text).contains(" gauge");
    }

    private static Reading banded(String figure, QuantityKind kind, String quoted, Part left, Part right) {
        boolean relative = right.unit.equals("%") && !left.unit.equals("%");
        Part centre = left.unit.isEmpty() && !relative ? new Part(left.number, left.digits, right.unit) : left;
        double value = value(centre, kind, quoted);
        double halfWidth;
        if (relative) {
            halfWidth = Math.abs(value) * right.number / 100;
        } else {
            String unit = right.unit.isEmpty() ? centre.unit : right.unit;
            halfWidth = unitOf(new Part(right.number, right.digits, bandUnit(unit)), bandKind(kind), quoted)
                    .differenceToSi(right.number);
        }
        if (!(halfWidth >= 0)) {
            throw new UnitException(quoted + " has a negative band after +/-; write it without a sign.");
        }
        return new Reading(kind, value, halfWidth, figure);
    }

    private static String bandUnit(String unit) {
        String normal = UnitReader.normal(unit).replaceAll(" (gauge|abs|absolute|difference)$", "");
        UnitName known = UnitTable.get().find(normal);
        boolean degrees = known != null && known.dimension() == Dimension.TEMPERATURE && !normal.equals("K");
        return degrees ? normal + " difference" : normal;
    }

    private static QuantityKind bandKind(QuantityKind kind) {
        return switch (kind) {
            case GAUGE_PRESSURE, ABSOLUTE_PRESSURE -> QuantityKind.PRESSURE_DIFFERENCE;
            case TEMPERATURE -> QuantityKind.TEMPERATURE_DIFFERENCE;
            default -> kind;
        };
    }

    private static double value(Part part, QuantityKind kind, String quoted) {
        double si = unitOf(part, kind, quoted).toSi(part.number);
        if (!Double.isFinite(si)) {
            throw new UnitException(quoted + " is too large a number; write one the machine can hold.");
        }
        if ((kind == QuantityKind.TEMPERATURE || kind == QuantityKind.ABSOLUTE_PRESSURE) && si < 0) {
            throw new UnitException(quoted + " lies below absolute zero; write a value above it.");
        }
        return si;
    }

    private static UnitName unitOf(Part part, QuantityKind kind, String quoted) {
        if (kind.dimension() == Dimension.NUMBER && part.unit.isEmpty()) {
            if (kind == QuantityKind.FRACTION && !(part.number >= 0 && part.number <= 1)) {
                throw new UnitException(
                        quoted + " is not a fraction from 0 to 1; write it so, or with a percent sign as \""
                                + part.digits + " %\".");
            }
            return UnitTable.get().find("");
        }
        return UnitReader.read(part.unit, kind, part.digits, quoted);
    }

    private static Part part(String text, String quoted) {
        String body = text.strip();
        Matcher quotient = QUOTIENT.matcher(body);
        if (quotient.lookingAt() && Integer.parseInt(quotient.group(2)) > 0) {
            double number = Double.parseDouble(quotient.group(1)) / Integer.parseInt(quotient.group(2));
            return new Part(
                    number, quotient.group(), body.substring(quotient.end()).strip());
        }
        if (COMMA.matcher(body).matches()) {
            throw new UnitException(
                    quoted + " has a comma in its number; write a decimal point, and thousands without a mark.");
        }
        Matcher number = NUMBER.matcher(body);
        if (!number.lookingAt()) {
            throw new UnitException(
                    quoted + " does not begin with a number; write a number and a unit, such as \"84.5 mm\".");
        }
        double value = Double.parseDouble(number.group());
        if (!Double.isFinite(value)) {
            throw new UnitException(quoted + " is too large a number; write one the machine can hold.");
        }
        return new Part(value, number.group(), body.substring(number.end()).strip());
    }

    private record Part(double number, String digits, String unit) {}
}
