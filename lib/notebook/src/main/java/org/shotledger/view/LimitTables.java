package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.verdict;
import static org.shotledger.table.Column.words;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.shotledger.display.Units;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Limits;
import org.shotledger.limits.Side;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

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
                words("Bound known as, and why", limit -> limit.provenance().words() + ": " + limit.reason()),
                words("Beyond it", Limit::consequence),
                words("Moved by", LimitTables::moved));
    }

    private static String moved(Limit limit) {
        return limit.hard() ? "nobody" : "the builder";
    }

    /**
     * What to do about the limits that are not to be moved.
     *
     * @param limits the limits
     * @return one sentence for each remedy, with the limits it belongs to; none when the builder set every bound
     */
    static List<String> hard(Limits limits) {
        Map<String, List<String>> byRemedy = limits.all().stream()
                .filter(Limit::hard)
                .collect(Collectors.groupingBy(
                        Limit::remedy, LinkedHashMap::new, Collectors.mapping(Limit::name, Collectors.toList())));
        return byRemedy.entrySet().stream()
                .map(one -> "Moved by nobody (" + one.getKey() + "): "
                        + one.getValue().stream().distinct().collect(Collectors.joining(", ")) + ".")
                .toList();
    }

    /** Limits in as few columns as a page of facts has room for. */
    static Listing brief(String caption, List<Limit> limits, UnitSystem system) {
        return Listing.of(
                caption,
                limits,
                words("Limit", Limit::name),
                words("Stands at", limit -> Units.printed(limit.kind().brief(limit.value(), system))),
                words(
                        "Must be",
                        limit -> (limit.side() == Side.AT_MOST ? "at most " : "at least ")
                                + Units.printed(limit.kind().brief(limit.bound(), system))),
                column("Left", QuantityKind.FRACTION, Limit::relativeMargin),
                verdict("Verdict", Limit::verdict),
                words("Case and place", limit -> limit.caseName() + ": " + limit.place()));
    }

    private static List<Limit> closestFirst(Limits limits) {
        return limits.all().stream()
                .sorted(Comparator.comparingDouble(Limit::relativeMargin))
                .toList();
    }
}
