package org.shotledger.car;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shotledger.sheet.Found;
import org.shotledger.units.FigureText;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitException;

/**
 * Where one figure of the sheet comes from.
 *
 * @param path place in the sheet, for example {@code "engine.bore"}
 * @param text the figure as written, for example {@code "84.5 mm"}
 * @param kind what it measures; null for a word, a name or a table
 * @param value its SI value; NaN for a word, a name or a table
 * @param uncertainty standard uncertainty, SI; NaN when none is stated
 * @param from the builder's reason, may be empty
 * @param provenance how the figure is known: {@code measured}, {@code published}, {@code calculated}, {@code common practice}
 *     or {@code assumed}
 * @param file name of the file
 * @param line line in it, from 1
 * @param meant what the builder says, at the figure itself, about its being meant
 */
public record Origin(
        String path,
        String text,
        QuantityKind kind,
        double value,
        double uncertainty,
        String from,
        String provenance,
        String file,
        int line,
        Found.Meant meant) {
    /** Figures closer than this are the same figure in two units. */
    private static final double SAME = 1e-9;

    private static final Pattern FIGURE = Pattern.compile("\\s*([-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?)\\s*(.*?)\\s*");

    /**
     * The origin of a value found in a sheet; a writer who names no provenance assumes.
     *
     * @param found what stands there
     * @return its origin
     */
    public static Origin of(Found found) {
        String provenance = found.provenance().isEmpty() ? "assumed" : found.provenance();
        return new Origin(
                found.path(),
                found.text(),
                found.kind(),
                found.value(),
                found.uncertainty(),
                found.from(),
                provenance,
                found.file(),
                found.line(),
                found.meant());
    }

    /**
     * Whether a figure written otherwise is the same figure.
     *
     * @param written number and unit
     * @return true when it is
     */
    public boolean means(String written) {
        try {
            double other = FigureText.read(written, kind).value();
            return Math.abs(other - value) <= SAME * Math.max(Math.abs(other), Math.abs(value));
        } catch (UnitException e) {
            return false; // the reader of the sheet will say what is wrong with it
        }
    }

    /**
     * Whether the sheet states the figure.
     *
     * @return false for a default that the reader of the sheet took in its place
     */
    public boolean stated() {
        return !from.startsWith(Found.DEFAULT);
    }

    /**
     * Half-width of the stated band.
     *
     * @return SI; NaN when none is stated
     */
    public double halfWidth() {
        return uncertainty * Math.sqrt(3);
    }

    /**
     * The figure at another value, as it would be written: in its own unit and without a band.
     *
     * @param si the other value, SI
     * @return number and unit
     * @throws IllegalArgumentException when no number with a unit stands here
     */
    public String written(double si) {
        int band = text.indexOf("+/-");
        Matcher figure = FIGURE.matcher(band < 0 ? text : text.substring(0, band));
        if (kind == null || !figure.matches()) {
            throw new IllegalArgumentException("The field \"" + path + "\" stands as \"" + text
                    + "\"; only a number with a unit can have a distribution.");
        }
        double number = Double.parseDouble(figure.group(1));
        String unit = figure.group(2);
        double perUnit = FigureText.read(text(number + 1, unit), kind).value()
                - FigureText.read(text(number, unit), kind).value();
        return text(number + (si - value) / perUnit, unit);
    }

    private static String text(double number, String unit) {
        return (String.format(Locale.ROOT, "%.12g", number) + " " + unit).strip();
    }

    /**
     * The words a ledger shows as the source.
     *
     * @return the reason if there is one, and file and line
     */
    public String source() {
        String place = file + ", line " + line;
        return from.isEmpty() ? place : from + " (" + place + ")";
    }
}
