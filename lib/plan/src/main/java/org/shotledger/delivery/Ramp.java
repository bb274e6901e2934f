package org.shotledger.delivery;

import java.util.List;

/**
 * A table of steps that any controller with a stepped output can hold.
 *
 * @param axis what the steps run over
 * @param gear gear for which it was made, 1 for the first; 0 when every step has its own
 * @param frequency pulse frequency, Hz
 * @param steps the steps, ascending
 */
public record Ramp(Axis axis, int gear, double frequency, List<RampStep> steps) {

    /** What a ramp runs over. */
    public enum Axis {
        /** Seconds since the nitrous was enabled. */
        TIME("time"),
        /** Engine speed. */
        RPM("engine speed"),
        /** Gear engaged. */
        GEAR("gear");

        private final String words;

        Axis(String words) {
            this.words = words;
        }

        /**
         * The words a reader sees.
         *
         * @return for example {@code "engine speed"}
         */
        public String words() {
            return words;
        }
    }

    public Ramp {
        steps = List.copyOf(steps);
    }
}
