package org.shotledger.view;

import org.shotledger.budget.Comparison;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** Two ledgers line by line. */
public final class ComparisonTables {
    private ComparisonTables() {}

    /**
     * Two budgets line by line.
     *
     * @param comparison the comparison
     * @return one row a figure
     */
    public static Listing of(Comparison comparison) {
        Listing.Builder rows = Listing.titled("Line by line")
                .words("Figure")
                .mixed("Before")
                .mixed("After")
                .mixed("Change")
                .words("Moved by");
        for (Comparison.Line line : comparison.lines()) {
            rows.row(
                    line.name(),
                    new Cell.Figure(line.before(), line.kind()),
                    new Cell.Figure(line.after(), line.kind()),
                    change(line),
                    because(line.because()));
        }
        return rows.build();
    }

    /** Margins are compared in points, everything else in per cent of what it was; a temperature by its difference. */
    private static Cell change(Comparison.Line line) {
        if (Double.isNaN(line.change())) {
            return new Cell.Text("");
        }
        return switch (line.kind()) {
            case FRACTION -> new Cell.Text(String.format(Locale.ROOT, "%+.1f points", 100 * line.change()));
            case TEMPERATURE -> new Cell.Figure(line.change(), QuantityKind.TEMPERATURE_DIFFERENCE, true);
            default -> new Cell.Figure(line.relativeChange(), QuantityKind.FRACTION, true);
        };
    }

    private static String because(Collection<String> names) {
        return String.join(", ", names);
    }

    private static String power(double watts) {
        return QuantityKind.POWER.text(watts, org.shotledger.units.UnitSystem.US);
    }
}
