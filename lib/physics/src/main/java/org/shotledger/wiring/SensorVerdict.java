package org.shotledger.wiring;

import java.util.List;

/**
 * The readings of a sensor, judged.
 *
 * @param sensor its name
 * @param good whether every reading lies inside its check value
 * @param worst greatest distance of a reading from its check value, over the half width
 * @param causes single causes that explain every reading of the sensor, exchanged plugs before all others, then the closest first; empty when good, or when none does
 */
public record SensorVerdict(String sensor, boolean good, double worst, List<Cause> causes) {
    public SensorVerdict {
        causes = List.copyOf(causes);
    }

    /**
     * A cause that explains the readings.
     *
     * @param what in words
     * @param misfit greatest distance of a reading from what the cause would show, over the half width, 0 to 1
     */
    public record Cause(String what, double misfit) {}
}
