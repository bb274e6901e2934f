package org.shotledger.workshop;

import java.util.List;
import org.shotledger.wiring.SensorReading;

/**
 * What the controller showed in known states of the car.
 *
 * @param barometer pressure of the air when it was read, Pa absolute; NaN where it was not read
 * @param air temperature of the air then, K; NaN where it was not read
 * @param readings the readings
 */
public record Readings(double barometer, double air, List<SensorReading> readings) {
    /** Nothing read yet. */
    public static final Readings NONE = new Readings(Double.NaN, Double.NaN, List.of());

    public Readings {
        readings = List.copyOf(readings);
    }
}
