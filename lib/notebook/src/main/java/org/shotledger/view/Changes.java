package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Comparison;
import org.shotledger.build.Difference;
import org.shotledger.build.Origin;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** What changed from one budget to the next: in the sheet with its reason, and in the plan. */
public final class Changes {
    private Changes() {}

    /**
     * Values of the sheet that changed, each with the reason written beside it.
     *
     * @param before the earlier budget
     * @param after the later one
     * @return one row a value; empty when the sheets say the same
     */
    public static Listing sheet(Budget before, Budget after) {
        Listing.Builder rows = Listing.titled("What changed in the build sheet")
                .words("Value")
                .words("Before")
                .words("Now")
                .words("Reason in the sheet");
        for (Difference difference : before.build().differences(after.build())) {
            rows.row(
                    difference.path(),
                    difference.before(),
                    difference.after(),
                    after.build().origin(difference.path()).map(Origin::from).orElse(""));
        }
        return rows.build();
    }

    /**
     * The plan before and now.
     *
     * @param before the earlier budget
     * @param after the later one
     * @return one row a figure
     */
    public static Listing plan(Budget before, Budget after) {
        Listing.Builder rows = Listing.titled("What changed in the plan")
                .words("Figure")
                .mixed("Before")
                .mixed("Now")
                .words("Moved by");
        for (Comparison.Line line : Comparison.of(before, after).digest().lines()) {
            rows.row(
                    line.name(),
                    new Cell.Figure(line.before(), line.kind()),
                    new Cell.Figure(line.after(), line.kind()),
                    String.join(", ", line.because()));
        }
        rows.row(
                "full passes from one bottle",
                new Cell.Figure(before.bottle().passes(), QuantityKind.COUNT),
                new Cell.Figure(after.bottle().passes(), QuantityKind.COUNT),
                "");
        rows.row("closest limit", closest(before), closest(after), "");
        rows.row("verdict", before.limits().verdict(), after.limits().verdict(), "");
        return rows.build();
    }

    /**
     * The differences of the plan in sentences, for the table of revisions.
     *
     * @param before the earlier budget
     * @param after the later one
     * @return one sentence a difference that shows
     */
    public static List<String> sentences(Budget before, Budget after) {
        List<String> said = new ArrayList<>();
        for (Comparison.Line line : Comparison.of(before, after).digest().lines()) {
            String was = Both.of(line.kind(), line.before());
            String is = Both.of(line.kind(), line.after());
            if (!was.equals(is)) {
                said.add(line.name().substring(0, 1).toUpperCase(Locale.ROOT)
                        + line.name().substring(1) + ": " + was + ", now " + is + ".");
            }
        }
        if (before.limits().verdict() != after.limits().verdict()) {
            said.add("Verdict: " + before.limits().verdict().word() + ", now "
                    + after.limits().verdict().word() + ".");
        }
        return said.isEmpty() ? List.of("The plan is the same.") : said;
    }

    private static String closest(Budget budget) {
        return budget.limits()
                .first()
                .map(limit -> limit.name() + ", "
                        + QuantityKind.FRACTION.text(limit.relativeMargin(), org.shotledger.units.UnitSystem.US)
                        + " left")
                .orElse("none");
    }
}
