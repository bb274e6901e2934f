package org.shotledger.wiring;

import java.util.List;
import java.util.Optional;

/**
 * What became of a signal.
 *
 * @param signal the signal
 * @param pin where it is; empty when it has none or needs none
 * @param option the other way it takes; empty when it is wired as it asks
 * @param expander whose pin it is; empty when it is on the controller
 * @param sharedWith names of the signals on the same pin, the bus left out
 * @param placed whether it is provided for
 * @param why one phrase
 */
public record PinPlacement(
        PinSignal signal,
        Optional<Pin> pin,
        Optional<PinOption> option,
        Optional<PinExpander> expander,
        List<String> sharedWith,
        boolean placed,
        String why) {
    public PinPlacement {
        sharedWith = List.copyOf(sharedWith);
    }
}
