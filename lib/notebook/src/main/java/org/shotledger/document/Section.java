package org.shotledger.document;

/** The parts of a customer document, in the order in which they are read. */
public enum Section {
    /** One page to decide on: what is asked, what is proposed, what it needs, and the next step. */
    DECISION("To decide on", DocumentPart.DECISION),
    /** What to mind so that nobody is hurt. */
    CAUTIONS("Cautions", DocumentPart.REASONS),
    /** The tables that are entered. */
    TUNER("Card for the tuner", DocumentPart.TUNER),
    /** What is fitted, wired and checked. */
    MECHANIC("Card for the mechanic", DocumentPart.MECHANIC),
    /** What is looked at between passes. */
    TRACK("Card for the track", DocumentPart.TRACK),
    /** What the customer asked for, and the cases in which it must hold. */
    TARGET("What is asked", DocumentPart.REASONS),
    /** How boost and jets are set, and what the jets pass. */
    SETUP("The setup", DocumentPart.REASONS),
    /** The verdict, and what is left to each limit. */
    LIMITS("Verdict and limits", DocumentPart.REASONS),
    /** What the setup does in every case and at every engine speed. */
    OUTCOMES("Boost and nitrous oxide, case by case", DocumentPart.REASONS),
    /** The seconds of a pass, and the bottle. */
    PASS("The pass and the bottle", DocumentPart.REASONS),
    /** What else was weighed. */
    ALTERNATIVES("What else was weighed", DocumentPart.REASONS),
    /** Faults and what each would do. */
    RISKS("What could go wrong", DocumentPart.REASONS),
    /** How to prove the plan in small steps. */
    STEP_UP("Step-up plan", DocumentPart.REASONS),
    /** Wiring, sensors, and channels of the controller. */
    WIRING("Wiring and sensors", DocumentPart.REASONS),
    /** What changed since the last revision, and why. */
    REVISIONS("Revisions and differences", DocumentPart.REASONS),
    /** Every figure with its reasoning. */
    REASONING("The reasoning in full", DocumentPart.LEDGER),
    /** Publications, standards and files behind the figures. */
    SOURCES("Sources", DocumentPart.LEDGER);

    private final String heading;
    private final DocumentPart part;

    Section(String heading, DocumentPart part) {
        this.heading = heading;
        this.part = part;
    }

    /**
     * The part it belongs to.
     *
     * @return the part with which it is printed or left out
     */
    public DocumentPart part() {
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
