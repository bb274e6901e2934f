package org.shotledger.wiring;

import org.shotledger.units.Require;

/**
 * An electric load on its own cable.
 *
 * @param name what it is
 * @param current current while it is on, A
 * @param surge current at switching on, A; not below {@code current}
 * @param surgeTime how long the surge lasts, s
 * @param duty share of the time it is on while its phase lasts, 0 to 1
 * @param length of the cable one way, m
 * @param engineSpace whether the cable lies in the engine space
 * @param coil whether it is a coil, which gives its energy back when it is switched off
 * @param pulsed whether it is pulsed
 * @param phase when it is on
 */
public record Load(
        String name,
        double current,
        double surge,
        double surgeTime,
        double duty,
        double length,
        boolean engineSpace,
        boolean coil,
        boolean pulsed,
        Phase phase) {

    /** When a load is on. */
    public enum Phase {
        /** Whenever the engine runs. */
        ALWAYS("always"),
        /** During a pass. */
        PASS("during a pass"),
        /** Between two passes. */
        WAITING("between passes");

        private final String words;

        Phase(String words) {
            this.words = words;
        }

        /**
         * The phase in words.
         *
         * @return for example {@code "during a pass"}
         */
        public String words() {
            return words;
        }
    }

    public Load {
        Require.named("load", name);
        Require.within("current of " + name, current, 0.01, 500, "A");
        Require.within("surge of " + name, surge, current, 5000, "A");
        Require.within("surge time of " + name, surgeTime, 0, 10, "s");
        Require.within("duty of " + name, duty, 0, 1, "");
        Require.within("cable length of " + name, length, 0.05, 30, "m");
    }

    /**
     * Current on average while its phase lasts.
     *
     * @return A
     */
    public double meanCurrent() {
        return current * duty;
    }

    /**
     * What has to switch it, and what that has to bear.
     *
     * @param outputCurrent current that a controller output can switch, A
     * @return a sentence
     */
    public String switching(double outputCurrent) {
        return driver(outputCurrent) + (coil ? " " + flyback() : "");
    }

    private String driver(double outputCurrent) {
        if (phase == Phase.ALWAYS) {
            return "On the engine's main relay.";
        }
        if (current <= outputCurrent) {
            return "By a controller output.";
        }
        return pulsed
                ? "By a solid-state switch: the current is beyond an output and a relay cannot follow pulses."
                : "By a relay: the current is beyond an output.";
    }

    /** Common practice, no source: a plain diode prolongs the current of a coil and with it the closing of a valve. */
    private String flyback() {
        return pulsed
                ? "Its coil needs a clamp of 30 V or more across it; a plain diode lets it close late."
                : "Its coil needs a diode or a clamp across it.";
    }
}
