package org.shotledger.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shotledger.units.Excerpt;
import org.shotledger.units.FigureText;
import org.shotledger.units.UnitName;

/**
 * What is wrong with the cells of one column. A few cells are told one by one; more have one cause, mostly the unit in the heading,
 * and are told in one line.
 */
final class ColumnTroubles {
    private static final int ONE_BY_ONE = 3;

    private final String file;
    private final int position;
    private final CsvColumn column;
    private final UnitName unit;
    private final List<Problem> first = new ArrayList<>();
    private int count;
    private boolean allNumbers = true;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;

    ColumnTroubles(String file, int position, CsvColumn column, UnitName unit) {
        this.file = file;
        this.position = position;
        this.column = column;
        this.unit = unit;
    }

    /** Reads a cell; SI, or NaN when something is wrong with it. */
    double read(int line, String text, boolean decimalComma) {
        double number = CsvNumber.read(text, decimalComma);
        if (Double.isNaN(number)) {
            allNumbers = false;
            return wrong(
                    line,
                    text,
                    text.isEmpty()
                            ? "The cell is empty; write a number."
                            : Excerpt.quoted(text) + " is not a number; write one without its unit.");
        }
        least = Math.min(least, number);
        greatest = Math.max(greatest, number);
        double si = unit.toSi(number);
        return si >= column.low() && si <= column.high()
                ? si
                : wrong(
                        line,
                        text,
                        Excerpt.quoted(text) + " is not plausible; allowed is "
                                + Range.text(column.kind(), column.low(), column.high(), unit) + ".");
    }

    private double wrong(int line, String text, String sentence) {
        if (count++ < ONE_BY_ONE) {
            first.add(new Problem(file, line, position, column.name(), text, sentence));
        }
        return Double.NaN;
    }

    /** Each cell's problem, or one for all of them. */
    List<Problem> told() {
        if (count <= ONE_BY_ONE) {
            return first;
        }
        Problem one = first.get(0);
        return List.of(new Problem(
                file,
                one.line(),
                position,
                column.name(),
                one.found(),
                one.sentence() + " Of this column " + (count - 1) + " more cells cannot be used" + advice()));
    }

    private String advice() {
        List<String> fitting = allNumbers ? fitting() : List.of();
        return fitting.isEmpty()
                ? "."
                : "; in " + String.join(" or ", fitting)
                        + " the whole column would be allowed: check the unit in the heading.";
    }

    /** Units in which the whole column would be allowed, those first in which it fills most of the range. */
    private List<String> fitting() {
        return FigureText.unitsOf(column.kind()).stream()
                .filter(other -> !other.name().isEmpty()
                        && other.toSi(least) >= column.low()
                        && other.toSi(greatest) <= column.high())
                .sorted(Comparator.comparingDouble((UnitName other) -> -other.toSi(greatest)))
                .map(UnitName::name)
                .limit(ONE_BY_ONE)
                .toList();
    }
}
