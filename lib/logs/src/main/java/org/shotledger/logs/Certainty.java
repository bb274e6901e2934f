package org.shotledger.logs;

import java.util.Locale;

/** How far a proposal can be relied on. */
public enum Certainty {
    /** Heading, unit and values agree. */
    SURE,
    /** Heading and values agree, the unit was told by the values. */
    LIKELY,
    /** Something speaks for it and something is open: a person decides. */
    DOUBTFUL;

    /**
     * The word.
     *
     * @return for example {@code "likely"}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The lesser of two. */
    Certainty and(Certainty other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
