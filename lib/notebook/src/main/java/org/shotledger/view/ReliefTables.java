package org.shotledger.view;

import org.shotledger.relief.Attempt;
import org.shotledger.relief.Relief;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** What would have to change, as a table. */
public final class ReliefTables {
    private ReliefTables() {}

    /**
     * What would have to change.
     *
     * @param relief the search
     * @return one row a change that was tried, in the order of cost
     */
    public static Listing of(Relief relief) {
        Listing.Builder rows = Listing.titled(sentence(relief))
                .figures("Cost rank", QuantityKind.COUNT)
                .words("Change")
                .words("From")
                .words("To")
                .words("Reaches the target")
                .words("Helps")
                .figures("Least margin at the target", QuantityKind.FRACTION)
                .words("First limit then");
        for (Attempt attempt : relief.attempts()) {
            rows.row(
                    attempt.change().cost(),
                    attempt.change().words(),
                    attempt.before(),
                    attempt.after(),
                    attempt.reached() ? "yes" : "no",
                    attempt.helps() ? "yes" : "no",
                    attempt.leastMargin(),
                    attempt.limit());
        }
        return rows.build();
    }

    private static String sentence(Relief relief) {
        String asked = power(relief.wish().wheelPower());
        if (relief.before().reached()) {
            return asked + " is within reach as the build is";
        }
        String stop = asked + " is out of reach: the build gives "
                + power(relief.before().wheelPower()) + ", stopped by "
                + relief.before().limit() + ". ";
        return stop
                + relief.cheapest()
                        .map(a -> "Cheapest single change that reaches it: "
                                + a.change().words() + ", " + a.before() + " to " + a.after())
                        .orElse("No single change that was tried reaches it")
                + " (order of cost: common practice, no source)";
    }
}
