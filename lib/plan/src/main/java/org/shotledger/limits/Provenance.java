package org.shotledger.limits;

/** How well a figure is known: what kind of statement it is. */
public enum Provenance {
    /** Read from an instrument on this car or part. */
    MEASURED("measured"),
    /** Taken from a standard, a handbook or a paper. */
    PUBLISHED("published"),
    /** Follows from other entries by a stated equation. */
    CALCULATED("calculated"),
    /** A habit of the trade, without a source. */
    COMMON_PRACTICE("common practice"),
    /** Worked out from other figures of this car by a habit of the trade, with a wide band. */
    ESTIMATED("estimated"),
    /** Set by the builder without proof. */
    ASSUMED("assumed");

    private final String words;

    Provenance(String words) {
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
     * @return the provenance; {@link #ASSUMED} for other words
     */
    public static Provenance ofWords(String words) {
        for (Provenance provenance : values()) {
            if (provenance.words.equals(words)) {
                return provenance;
            }
        }
        return ASSUMED;
    }
}
