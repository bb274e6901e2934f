package org.shotledger.flow;

/** Shape of a hole's inlet. */
public enum Edge {
    /** Rounded or coned inlet. */
    ROUNDED("rounded inlet"),
    /** Sharp square edge, as drilled. */
    SQUARE("square edge"),
    /** Nobody has looked; takes the widest band. */
    UNKNOWN("edge not known");

    private final String words;

    Edge(String words) {
        this.words = words;
    }

    /**
     * The words a reader sees.
     *
     * @return for example {@code "square edge"}
     */
    public String words() {
        return words;
    }
}
