package org.shotledger.budget;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Every limit of one budget, with the one that bites first.
 *
 * @param all the limits, in the order of the build sheet
 */
public record Limits(List<Limit> all) {

    /** Copies the list. */
    public Limits {
        all = List.copyOf(all);
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
     * @return the limit that bites first, or empty when there is none
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
}
