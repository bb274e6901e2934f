package org.shotledger.bottle;

/** Why a pass came to its end. */
public enum PassEnd {
    /** Liquid left within the band for the whole time. */
    FULL_TIME("the whole time"),
    /** The siphon drew vapour. */
    LIQUID_GONE("the liquid is gone"),
    /** The pressure fell below the band, or stood below it at the start. */
    BAND_LOW("the pressure is below the working band"),
    /** The pressure stood above the band at the start, or was heated above it. */
    BAND_HIGH("the pressure is above the working band"),
    /** Nothing left the bottle. */
    NOTHING_TAKEN("nothing is taken");

    private final String words;

    PassEnd(String words) {
        this.words = words;
    }

    /**
     * Tells the reason in words.
     *
     * @return a short phrase for a report
     */
    public String words() {
        return words;
    }

    static PassEnd of(History history) {
        BottleEvent end = history.events().get(history.events().size() - 1);
        return switch (end.kind()) {
            case TIME_UP -> history.balance().massOut() > 0 ? FULL_TIME : NOTHING_TAKEN;
            case PRESSURE_BELOW -> BAND_LOW;
            case PRESSURE_ABOVE, BEYOND_EQUATION -> BAND_HIGH;
            default -> LIQUID_GONE;
        };
    }
}
