package org.shotledger.budget;

/** Whether a limit is kept. */
public enum Verdict {
    /** Kept with room to spare. */
    HOLDS("holds"),
    /** Kept, but the margin is smaller than the limit's own caution band. */
    TIGHT("tight"),
    /** Not kept. */
    BROKEN("broken");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /**
     * The word a reader sees.
     *
     * @return {@code "holds"}, {@code "tight"} or {@code "broken"}
     */
    public String word() {
        return word;
    }

    /**
     * The graver of two verdicts.
     *
     * @param other another verdict
     * @return whichever is worse
     */
    public Verdict worse(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
