package org.shotledger.wiring;

/** What a pin of a controller can be. A pin that can be set up in several ways has several kinds. */
public enum PinKind {
    /** Voltage input, 0 to 5 V, without a pull-up. */
    ANALOGUE("analogue input without pull-up", false),
    /** Voltage input with a pull-up resistor, for sensors that are a resistance. */
    ANALOGUE_PULL_UP("analogue input with pull-up", false),
    /** Input with amplifier and cold end for a thermocouple. */
    THERMOCOUPLE("thermocouple input", false),
    /** Input that knows on and off and is read now and then. */
    DIGITAL("digital input", false),
    /** Input that times edges. */
    FREQUENCY("frequency input", false),
    /** Output that connects to ground. */
    LOW_SIDE("low-side output", true),
    /** Output that connects to the supply. */
    HIGH_SIDE("high-side output", true),
    /** Output that connects to either and can reverse or hold a current. */
    HALF_BRIDGE("half bridge", true),
    /** Data bus, shared by all that talk on it. */
    BUS("data bus", false);

    private final String words;
    private final boolean output;

    PinKind(String words, boolean output) {
        this.words = words;
        this.output = output;
    }

    /**
     * The kind in words.
     *
     * @return for example {@code "low-side output"}
     */
    public String words() {
        return words;
    }

    /**
     * Whether it drives something.
     *
     * @return true for the three outputs
     */
    public boolean output() {
        return output;
    }
}
