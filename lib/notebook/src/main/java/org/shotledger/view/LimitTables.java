package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.verdict;
import static org.shotledger.table.Column.words;

import java.util.Comparator;
import java.util.List;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Limits;
import org.shotledger.limits.Side;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** Limits as tables. */
public final class LimitTables {
    private LimitTables() {}

    /**
     * Every limit with what is left to it.
     *
     * @param limits the limits
     * @return one row a limit, where it is closest
     */
    public static Listing of(Limits limits) {
        return rows("Limits, each where it is closest, the closest first", closestFirst(limits));
    }

    /**
     * Some limits with what is left to them.
     *
     * @param caption what they are
     * @param limits the limits
     * @return one row a limit
     */
    static Listing rows(String caption, List<Limit> limits) {
        return Listing.of(
                caption,
                limits,
                words("Limit", Limit::name),
                column("Value", Limit::kind, Limit::value),
                words("Must be", limit -> limit.side() == Side.AT_MOST ? "at most" : "at least"),
                column("Bound", Limit::kind, Limit::bound),
                column("Margin", QuantityKind.FRACTION, Limit::relativeMargin),
                verdict("Verdict", Limit::verdict),
                words("Case", Limit::caseName),
                words("Where", Limit::place));
    }

    /**
     * Where each bound comes from, and what happens beyond it.
     *
     * @param limits the limits
     * @return one row a limit; hard ones say that they are not to be moved
     */
    public static Listing reasons(Limits limits) {
        return Listing.of(
                "Where the bounds come from, and what happens beyond them",
                closestFirst(limits),
                words("Limit", Limit::name),
                words("Bound known as", limit -> limit.provenance().words()),
                words("Reason", Limit::reason),
                words("Beyond it", Limit::consequence),
                words("Bound moved by", LimitTables::moved));
    }

    private static String moved(Limit limit) {
        return limit.hard() ? "nobody: " + limit.remedy() : "the builder";
    }

    private static List<Limit> closestFirst(Limits limits) {
        return limits.all().stream()
                .sorted(Comparator.comparingDouble(Limit::relativeMargin))
                .toList();
    }
}
