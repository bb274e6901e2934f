package org.shotledger.flow;

/** What limits the flow at the narrowest section. */
public enum Choking {
    /** The downstream pressure limits; lowering it still raises the flow. */
    NONE("not choked"),
    /** The stream reaches the speed of sound of the mixture (or gas); lowering the downstream pressure changes nothing. */
    SONIC("choked at the speed of sound"),
    /**
     * The liquid reaches its saturation line: the speed of sound drops at the first bubble, so the largest flux sits at this
     * kink.
     */
    FLASH_INCEPTION("choked where the first bubble forms");

    private final String words;

    Choking(String words) {
        this.words = words;
    }

    /**
     * Tells the state in words.
     *
     * @return a short phrase for a report, never empty
     */
    public String words() {
        return words;
    }
}
