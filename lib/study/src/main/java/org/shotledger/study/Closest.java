package org.shotledger.study;

/**
 * The limit that is closest among some.
 *
 * @param margin its relative margin; positive infinity among none
 * @param limit its number in {@link Names}
 */
record Closest(double margin, int limit) {
    static final Closest NONE = new Closest(Double.POSITIVE_INFINITY, 0);

    Closest or(double other, int which) {
        return other < margin ? new Closest(other, which) : this;
    }

    Closest or(Closest other) {
        return or(other.margin, other.limit);
    }
}
