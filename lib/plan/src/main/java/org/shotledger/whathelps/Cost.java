package org.shotledger.whathelps;

/** What a change costs, cheapest first; the order is common practice, no source. */
public enum Cost {
    /** Nothing but a setting. */
    SETTING("a setting"),
    /** A solenoid, a hose. */
    SMALL_PART("a small part"),
    /** A fuel pump with its wiring. */
    PUMP("a pump and its wiring"),
    /** Injectors, or another fuel. */
    FUEL("injectors or another fuel"),
    /** A charge cooler. */
    COOLER("a charge cooler"),
    /** A turbocharger or turbine. */
    TURBO("a turbocharger"),
    /** Inside the engine, or in the driveline. */
    ENGINE("work inside engine or driveline");

    private final String words;

    Cost(String words) {
        this.words = words;
    }

    /**
     * The words a reader sees.
     *
     * @return for example {@code "a small part"}
     */
    public String words() {
        return words;
    }
}
