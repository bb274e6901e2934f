package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.budget.Budget;
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
                .mixed("Now");
        figure(
                rows,
                "asked for",
                QuantityKind.POWER,
                before.wish().wheelPower(),
                after.wish().wheelPower());
        figure(
                rows,
                "planned at the wheels",
                QuantityKind.POWER,
                before.peak().wheelPower(),
                after.peak().wheelPower());
        figure(
                rows,
                "boost",
                QuantityKind.GAUGE_PRESSURE,
                before.peak().gaugePressure(),
                after.peak().gaugePressure());
        var old = before.jets().chosen();
        var now = after.jets().chosen();
        figure(
                rows,
                "nitrous jet",
                QuantityKind.BORE,
                old.pair().nitrousBore(),
                now.pair().nitrousBore());
        figure(
                rows,
                "fuel jet",
                QuantityKind.BORE,
                old.pair().fuelBore(),
                now.pair().fuelBore());
        figure(rows, "nitrous oxide flow", QuantityKind.MASS_FLOW, old.nitrousFlow(), now.nitrousFlow());
        figure(rows, "nitrous fuel flow", QuantityKind.MASS_FLOW, old.fuelFlow(), now.fuelFlow());
        figure(rows, "mixture of all streams", QuantityKind.RATIO, old.lambda(), now.lambda());
        figure(
                rows,
                "full passes from one bottle",
                QuantityKind.COUNT,
                before.bottle().passes(),
                after.bottle().passes());
        rows.row("closest limit", closest(before), closest(after));
        rows.row("verdict", before.limits().verdict(), after.limits().verdict());
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
        say(
                said,
                "Power at the wheels",
                QuantityKind.POWER,
                before.peak().wheelPower(),
                after.peak().wheelPower());
        say(
                said,
                "Boost",
                QuantityKind.GAUGE_PRESSURE,
                before.peak().gaugePressure(),
                after.peak().gaugePressure());
        var old = before.jets().chosen().pair();
        var now = after.jets().chosen().pair();
        say(said, "Nitrous jet", QuantityKind.BORE, old.nitrousBore(), now.nitrousBore());
        say(said, "Fuel jet", QuantityKind.BORE, old.fuelBore(), now.fuelBore());
        if (before.limits().verdict() != after.limits().verdict()) {
            said.add("Verdict: " + before.limits().verdict().word() + ", now "
                    + after.limits().verdict().word() + ".");
        }
        return said.isEmpty() ? List.of("The plan is the same.") : said;
    }

    private static void figure(Listing.Builder rows, String name, QuantityKind kind, double before, double now) {
        rows.row(name, new Cell.Figure(before, kind), new Cell.Figure(now, kind));
    }

    private static void say(List<String> said, String name, QuantityKind kind, double before, double now) {
        String was = Both.of(kind, before);
        String is = Both.of(kind, now);
        if (!was.equals(is)) {
            said.add(name + ": " + was + ", now " + is + ".");
        }
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
