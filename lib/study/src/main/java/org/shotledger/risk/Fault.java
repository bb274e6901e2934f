package org.shotledger.risk;

import java.util.function.UnaryOperator;
import org.shotledger.units.Require;

/**
 * Something that goes wrong with the engine under nitrous: how it changes the scenario and how fast it grows.
 *
 * <p>A fault of one's own takes one line: {@code Fault.sudden("regulator drops to 2.8 bar", s -> s.withFuelPressure(2.8e5))}.
 *
 * @param name in a few words
 * @param cause what happened
 * @param onset when it begins
 * @param growth time from its beginning to its full size, s; 0 for at once
 * @param closes true when closing the nitrous ends it
 * @param change the scenario at a severity from 0, nothing, to 1, full
 */
public record Fault(String name, String cause, Onset onset, double growth, boolean closes, Change change) {

    /** When a fault begins. */
    public enum Onset {
        /** Before the nitrous opens; a sensor that reads without flow can keep it closed. */
        BEFORE("before the nitrous opens"),
        /** While the nitrous flows. */
        DURING("while the nitrous flows");

        private final String words;

        Onset(String words) {
            this.words = words;
        }

        /**
         * The words a reader sees.
         *
         * @return for example {@code "while the nitrous flows"}
         */
        public String words() {
            return words;
        }
    }

    /** What a fault does to a sound scenario. */
    @FunctionalInterface
    public interface Change {
        /**
         * Applies the fault.
         *
         * @param plan the sound scenario
         * @param severity 0 to 1
         * @return the disturbed scenario
         */
        Scenario apply(Scenario plan, double severity);
    }

    public Fault {
        Require.named("fault", name);
        Require.within("growth of the fault " + name, growth, 0, 3600, "s");
        Require.given("change of the fault " + name, change);
    }

    /**
     * A fault that comes at once while the nitrous flows.
     *
     * @param name in a few words
     * @param change the disturbed scenario
     * @return the fault
     */
    public static Fault sudden(String name, UnaryOperator<Scenario> change) {
        return growing(name, 0, (plan, severity) -> severity > 0 ? change.apply(plan) : plan);
    }

    /**
     * A fault that grows evenly while the nitrous flows.
     *
     * @param name in a few words
     * @param seconds from its beginning to its full size, s
     * @param change the disturbed scenario at a severity from 0 to 1
     * @return the fault
     */
    public static Fault growing(String name, double seconds, Change change) {
        return new Fault(name, "", Onset.DURING, seconds, true, change);
    }

    /**
     * A fault that is there before the nitrous opens.
     *
     * @param name in a few words
     * @param change the disturbed scenario
     * @return the fault
     */
    public static Fault before(String name, UnaryOperator<Scenario> change) {
        return new Fault(name, "", Onset.BEFORE, 0, true, sudden(name, change).change());
    }

    /**
     * The same fault with its cause.
     *
     * @param text what happened
     * @return the fault
     */
    public Fault because(String text) {
        return new Fault(name, text, onset, growth, closes, change);
    }

    /**
     * The same fault, which closing the nitrous does not end: its solenoid sticks, or what flows is not nitrous.
     *
     * @return the fault
     */
    public Fault thatClosingDoesNotEnd() {
        return new Fault(name, cause, onset, growth, false, change);
    }
}
