package org.shotledger.evaluate;

/** What the engine is doing at an operating point. */
public enum Mode {
    /** On boost alone, the nitrous not armed. */
    BOOST_ALONE("nitrous not armed"),
    /** Armed, but outside the speeds at which the nitrous may open. */
    ARMED("nitrous armed, closed"),
    /** The moment at which the nitrous opens, with as much boost above its target as the arming conditions allow. */
    OPENING("nitrous opening"),
    /** With the nitrous on. */
    NITROUS("nitrous on"),
    /** The moment after the nitrous has closed, with the boost that was there. */
    CLOSING("nitrous just closed");

    private final String words;

    Mode(String words) {
        this.words = words;
    }

    /**
     * The words a reader sees.
     *
     * @return for example {@code "nitrous on"}
     */
    public String words() {
        return words;
    }

    /**
     * Whether nitrous flows.
     *
     * @return true while it is opening or on
     */
    public boolean nitrousFlows() {
        return this == OPENING || this == NITROUS;
    }
}
