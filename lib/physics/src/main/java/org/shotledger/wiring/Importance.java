package org.shotledger.wiring;

/** How much a signal is needed, the most needed first. */
public enum Importance {
    /** Without it the kit must not be armed. */
    MUST("must", 0),
    /** It should be there. */
    SHOULD("should", 1),
    /** It is good to have. */
    COULD("could", 2);

    private final String words;
    private final int rank;

    Importance(String words, int rank) {
        this.words = words;
        this.rank = rank;
    }

    /** How many are more important. */
    int rank() {
        return rank;
    }

    /**
     * The importance in words.
     *
     * @return {@code "must"}, {@code "should"} or {@code "could"}
     */
    public String words() {
        return words;
    }
}
