package org.shotledger.document;

/** The parts of a customer document, in the order in which they are read. */
public enum Section {
    /** What the customer asked for. */
    WISH("The wish"),
    /** What is recommended, and the verdict. */
    RECOMMENDATION("Recommendation and verdict"),
    /** How the power is shared between boost and nitrous oxide. */
    SPLIT("The split between boost and nitrous oxide"),
    /** Jets and settings. */
    JETS("Jets and settings"),
    /** What is left to each limit. */
    MARGINS("Margins"),
    /** Faults and what each would do. */
    RISKS("What could go wrong"),
    /** How to prove the plan in small steps. */
    STEP_UP("Step-up plan"),
    /** What the bottle gives and how to keep it. */
    BOTTLE("Bottle plan"),
    /** Wiring, sensors, and channels of the controller. */
    WIRING("Wiring and sensors"),
    /** Every figure with its reasoning. */
    REASONING("The reasoning in full"),
    /** Publications, standards and files behind the figures. */
    SOURCES("Sources"),
    /** What to mind so that nobody is hurt. */
    CAUTIONS("Cautions"),
    /** Who has read and agreed. */
    SIGN_OFF("Sign-off"),
    /** What changed since the last revision, and why. */
    REVISIONS("Revisions and differences");

    private final String heading;

    Section(String heading) {
        this.heading = heading;
    }

    /**
     * The heading a reader sees.
     *
     * @return the words
     */
    public String heading() {
        return heading;
    }

    /**
     * The name used in links inside the document.
     *
     * @return for example {@code "step-up"}
     */
    public String anchor() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
