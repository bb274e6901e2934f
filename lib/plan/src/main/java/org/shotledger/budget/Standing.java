package org.shotledger.budget;

/** How well a figure is known: what kind of statement it is. */
public enum Standing {
    /** Read from an instrument on this car or part. */
    MEASURED("measured"),
    /** Taken from a standard, a handbook or a paper. */
    PUBLISHED("published"),
    /** Follows from other entries by a stated equation. */
    CALCULATED("calculated"),
    /** A habit of the trade, without a source. */
    COMMON_PRACTICE("common practice"),
    /** Set by the builder without proof. */
    ASSUMED("assumed");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    /**
     * The words a reader sees.
     *
     * @return for example {@code "common practice"}
     */
    public String words() {
        return words;
    }

    /**
     * Reads the words back.
     *
     * @param words for example {@code "common practice"}
     * @return the standing; {@link #ASSUMED} for other words
     */
    public static Standing ofWords(String words) {
        for (Standing standing : values()) {
            if (standing.words.equals(words)) {
                return standing;
            }
        }
        return ASSUMED;
    }
}
