package org.shotledger.evaluate;

import java.util.List;
import org.shotledger.fluid.FluidState;
import org.shotledger.limits.Limit;

/**
 * What the bottle does over the passes asked for, for searches that know the engine already.
 *
 * @param limits every limit that does not ask at which engine speed, with no nitrous fuel drawn
 * @param end what enters the siphon in the last moment of the last pass
 */
public record BottleOutcome(List<Limit> limits, FluidState end) {
    public BottleOutcome {
        limits = List.copyOf(limits);
    }
}
