package org.shotledger.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Signals set on the free channels of a controller.
 *
 * @param inputs free inputs
 * @param outputs free outputs, pulsing ones included
 * @param pulsing free outputs that can pulse
 * @param places every signal with what became of it, in the order of urgency
 */
public record Channels(int inputs, int outputs, int pulsing, List<Place> places) {

    /** Copies the list. */
    public Channels {
        places = List.copyOf(places);
    }

    /** What became of a signal. */
    public enum Fate {
        /** It has a channel of its own. */
        FITS("fits"),
        /** It has none and takes its other way. */
        MOVED("moved"),
        /** It has none, and there is no other way. */
        OUT("must go");

        private final String words;

        Fate(String words) {
            this.words = words;
        }

        /**
         * The fate in words.
         *
         * @return {@code "fits"}, {@code "moved"} or {@code "must go"}
         */
        public String words() {
            return words;
        }
    }

    /**
     * A signal with what became of it.
     *
     * @param signal the signal
     * @param fate what became of it
     */
    public record Place(Signal signal, Fate fate) {}

    /**
     * Sets the signals: those that must be there before those that should, and among equals those without another way first.
     * A plain output is spent before one that can pulse.
     *
     * @param inputs free inputs
     * @param outputs free outputs, pulsing ones included
     * @param pulsing free outputs that can pulse
     * @param signals the signals
     * @return the plan
     */
    public static Channels set(int inputs, int outputs, int pulsing, List<Signal> signals) {
        int[] free = {inputs, outputs - pulsing, pulsing};
        List<Signal> order = new ArrayList<>(signals);
        order.sort(Comparator.comparing(Signal::need)
                .thenComparing(s -> s.instead() != Signal.Instead.NOTHING)
                .thenComparing(Signal::way));
        List<Place> places = new ArrayList<>();
        for (Signal signal : order) {
            places.add(new Place(signal, fate(signal, free)));
        }
        return new Channels(inputs, outputs, pulsing, places);
    }

    /**
     * Signals that must be there and are not.
     *
     * @return empty when the kit may be armed with this controller
     */
    public List<Signal> missing() {
        return places.stream()
                .filter(place -> place.fate() == Fate.OUT && place.signal().need() == Signal.Need.MUST)
                .map(Place::signal)
                .toList();
    }

    private static Fate fate(Signal signal, int[] free) {
        int from = switch (signal.way()) {
            case INPUT -> 0;
            case PULSE -> 2;
            case OUTPUT -> free[1] > 0 ? 1 : 2;
        };
        if (free[from] > 0) {
            free[from]--;
            return Fate.FITS;
        }
        return signal.instead() == Signal.Instead.NOTHING ? Fate.OUT : Fate.MOVED;
    }
}
