package org.shotledger.document;

/** The parts of a customer document, in the order in which they are read. */
public enum Section {
    /** One page to decide on: what is asked, what is proposed, what it needs, and the next step. */
    DECISION("To decide on", Part.DECISION),
    /** What to mind so that nobody is hurt. */
    CAUTIONS("Cautions", Part.REASONS),
    /** The tables that are entered. */
    TUNER("Card for the tuner", Part.TUNER),
    /** What is fitted, wired and checked. */
    MECHANIC("Card for the mechanic", Part.MECHANIC),
    /** What is looked at between passes. */
    TRACK("Card for the track", Part.TRACK),
    /** What the customer asked for, and the cases in which it must hold. */
    TARGET("What is asked", Part.REASONS),
    /** How boost and jets are set, and what the jets pass. */
    SETUP("The setup", Part.REASONS),
    /** The verdict, and what is left to each limit. */
    LIMITS("Verdict and limits", Part.REASONS),
    /** What the setup does in every case and at every engine speed. */
    OUTCOMES("Boost and nitrous oxide, case by case", Part.REASONS),
    /** The seconds of a pass, and the bottle. */
    PASS("The pass and the bottle", Part.REASONS),
    /** What else was weighed. */
    ALTERNATIVES("What else was weighed", Part.REASONS),
    /** Faults and what each would do. */
    RISKS("What could go wrong", Part.REASONS),
    /** How to prove the plan in small steps. */
    STEP_UP("Step-up plan", Part.REASONS),
    /** Wiring, sensors, and channels of the controller. */
    WIRING("Wiring and sensors", Part.REASONS),
    /** What changed since the last revision, and why. */
    REVISIONS("Revisions and differences", Part.REASONS),
    /** Every figure with its reasoning. */
    REASONING("The reasoning in full", Part.LEDGER),
    /** Publications, standards and files behind the figures. */
    SOURCES("Sources", Part.LEDGER);

    private final String heading;
    private final Part part;

    Section(String heading, Part part) {
        this.heading = heading;
        this.part = part;
    }

    /**
     * The part it belongs to.
     *
     * @return the part with which it is printed or left out
     */
    public Part part() {
        return part;
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
