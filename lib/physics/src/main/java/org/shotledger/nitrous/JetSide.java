package org.shotledger.nitrous;

/** Which of a nozzle's two jets. */
public enum JetSide {
    /** The nitrous jets. */
    NITROUS("nitrous jets"),
    /** The jets of the nitrous fuel. */
    FUEL("nitrous fuel jets");

    private final String words;

    JetSide(String words) {
        this.words = words;
    }

    /**
     * The words a reader sees.
     *
     * @return for example {@code "nitrous jets"}
     */
    public String words() {
        return words;
    }
}
