package org.shotledger.setup;

/**
 * What a model may be wrong by, as a factor on its result; 1 is the model as it stands. One list for everything that asks what
 * is not known: cases, chances, faults, and the causes of a log.
 */
public enum Factor {
    /** On the nitrous oxide that the feed path passes. */
    NITROUS_FLOW("nitrous flow of the jets"),
    /** On the flow of the nitrous system's fuel jets. */
    FUEL_JET_FLOW("flow of the nitrous fuel jets"),
    /** On the main fuel that is metered for the air. */
    MAIN_FUEL("main fuel metered"),
    /** On the volumetric efficiency. */
    BREATHING("air breathed at a plenum pressure"),
    /** On the indicated work of the engine. */
    ENGINE_WORK("work of the engine for its heat"),
    /** On the share of the nitrous heat that works. */
    NITROUS_WORK("work that the nitrous adds"),
    /** On the exhaust temperature before the turbine. */
    EXHAUST_TEMPERATURE("exhaust temperature"),
    /** On the peak cylinder pressure. */
    PEAK_PRESSURE("peak cylinder pressure"),
    /** On the knock index. */
    KNOCK("knock index");

    private final String words;

    Factor(String words) {
        this.words = words;
    }

    /**
     * The words a reader sees.
     *
     * @return for example {@code "nitrous flow of the jets"}
     */
    public String words() {
        return words;
    }
}
