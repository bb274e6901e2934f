package org.shotledger.document;

/** The parts of a customer document, in the order in which they are read. */
public enum Section {
    /** One page to decide on: what is asked, what is proposed, what it needs, and the next step. */
    DECISION("To decide on"),
    /** What to mind so that nobody is hurt. */
    CAUTIONS("Cautions"),
    /** What the customer asked for, and the cases in which it must hold. */
    TARGET("What is asked"),
    /** Everything that is set by hand. */
    SETUP("The setup"),
    /** The verdict, and what is left to each limit. */
    LIMITS("Verdict and limits"),
    /** What the setup does in every case and at every engine speed. */
    OUTCOMES("Boost and nitrous oxide, case by case"),
    /** The seconds of a pass, and the bottle. */
    PASS("The pass and the bottle"),
    /** What else was weighed. */
    ALTERNATIVES("What else was weighed"),
    /** Faults and what each would do. */
    RISKS("What could go wrong"),
    /** How to prove the plan in small steps. */
    STEP_UP("Step-up plan"),
    /** Wiring, sensors, and channels of the controller. */
    WIRING("Wiring and sensors"),
    /** Every figure with its reasoning. */
    REASONING("The reasoning in full"),
    /** Publications, standards and files behind the figures. */
    SOURCES("Sources"),
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
