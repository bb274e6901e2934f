package org.shotledger.limits;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Limits, with the one that is closest.
 *
 * @param all the limits, each key once, in the order in which they are listed
 */
public record Limits(List<Limit> all) {

    public Limits {
        all = List.copyOf(all);
    }

    /**
     * Of each limit the one with the least margin.
     *
     * @param many limits in which a key may stand several times
     * @return the limits, each key once
     */
    public static Limits closest(Collection<Limit> many) {
        Map<String, Limit> closest = new LinkedHashMap<>();
        for (Limit limit : many) {
            closest.merge(limit.key(), limit, (a, b) -> b.relativeMargin() < a.relativeMargin() ? b : a);
        }
        return new Limits(new ArrayList<>(closest.values()));
    }

    /**
     * The worst verdict among the limits.
     *
     * @return {@link Verdict#HOLDS} when every limit holds or there is none
     */
    public Verdict verdict() {
        return all.stream().map(Limit::verdict).reduce(Verdict.HOLDS, Verdict::worse);
    }

    /**
     * The limit with the smallest relative margin.
     *
     * @return the limit that is closest, or empty when there is none
     */
    public Optional<Limit> first() {
        return all.stream().min(Comparator.comparingDouble(Limit::relativeMargin));
    }

    /**
     * The smallest relative margin.
     *
     * @return a fraction of the bound; negative when a limit is broken, positive infinity when there is no limit
     */
    public double leastMargin() {
        return first().map(Limit::relativeMargin).orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * Looks a limit up.
     *
     * @param key its key
     * @return the limit, or empty when there is none of that name
     */
    public Optional<Limit> find(String key) {
        return all.stream().filter(limit -> limit.key().equals(key)).findFirst();
    }

    /**
     * Those that are broken.
     *
     * @return worst first
     */
    public List<Limit> broken() {
        return all.stream()
                .filter(limit -> limit.verdict() == Verdict.BROKEN)
                .sorted(Comparator.comparingDouble(Limit::relativeMargin))
                .toList();
    }
}
