package org.shotledger.wiring;

import java.util.List;

/**
 * Signals set on pins.
 *
 * @param placements every signal with what became of it, in the order given
 * @param expanders bought for it
 * @param price of all options and expanders in use, in the sheet's money
 * @param visited nodes of the search
 * @param proven whether the search was exhaustive, so that no better plan exists
 */
public record PinPlan(
        List<PinPlacement> placements, List<PinExpander> expanders, double price, long visited, boolean proven) {
    public PinPlan {
        placements = List.copyOf(placements);
        expanders = List.copyOf(expanders);
    }

    /**
     * Signals of an importance that are not provided for.
     *
     * @param importance which
     * @return in the order given
     */
    public List<PinSignal> unplaced(Importance importance) {
        return placements.stream()
                .filter(placement -> !placement.placed() && placement.signal().importance() == importance)
                .map(PinPlacement::signal)
                .toList();
    }

    /**
     * What became of the signals that must be there and are not provided for.
     *
     * @return in the order given
     */
    public List<PinPlacement> missing() {
        return placements.stream()
                .filter(placement -> !placement.placed() && placement.signal().importance() == Importance.MUST)
                .toList();
    }

    /**
     * Whether a signal without which the kit must not be armed is not provided for.
     *
     * @return true when the verdict of the whole car must be "broken"
     */
    public boolean broken() {
        return !unplaced(Importance.MUST).isEmpty();
    }

    /**
     * Where a signal is.
     *
     * @param signal its name
     * @return what became of it
     * @throws IllegalArgumentException for a name that is not there
     */
    public PinPlacement of(String signal) {
        return placements.stream()
                .filter(placement -> placement.signal().name().equals(signal))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No signal is called \"" + signal + "\"; there are "
                        + placements.stream().map(p -> p.signal().name()).toList() + "."));
    }
}
