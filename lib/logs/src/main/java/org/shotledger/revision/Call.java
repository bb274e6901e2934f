package org.shotledger.revision;

/** What to do after a reading. */
public enum Call {
    /** The next step may be taken. */
    GO("go"),
    /** Not before something is known better. */
    HOLD("hold"),
    /** No further pull before the cause is found. */
    STOP("stop");

    private final String word;

    Call(String word) {
        this.word = word;
    }

    /**
     * The word.
     *
     * @return for example {@code "go"}
     */
    public String word() {
        return word;
    }

    /** The more careful of two. */
    Call and(Call other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
