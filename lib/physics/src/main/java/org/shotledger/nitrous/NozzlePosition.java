package org.shotledger.nitrous;

/** Where the nozzle sprays, which decides the pressure it feels. */
public enum NozzlePosition {
    /** Between charge cooler and throttle. */
    BEFORE_THROTTLE("before the throttle"),
    /** In the plenum, or a plate between throttle and plenum. */
    PLENUM("at the plenum"),
    /** One nozzle in each inlet runner. */
    RUNNER("in each runner");

    private final String words;

    NozzlePosition(String words) {
        this.words = words;
    }

    /**
     * The words a reader sees.
     *
     * @return for example {@code "at the plenum"}
     */
    public String words() {
        return words;
    }
}
