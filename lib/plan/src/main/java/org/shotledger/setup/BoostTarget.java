package org.shotledger.setup;

import java.util.function.DoubleUnaryOperator;
import org.shotledger.units.Require;

/**
 * What the boost control holds, and how it changes over when the nitrous comes on.
 *
 * <p>While the nitrous is armed the control follows {@code armed} at every engine speed, also below the speed at which the nitrous
 * opens: so the boost has come down, where it must, before the nitrous adds its load. {@code off} is for driving without it.
 *
 * @param off boost with the nitrous not armed
 * @param armed boost with the nitrous armed, whether or not it flows
 * @param tolerance the nitrous opens only while the boost is at most this far above {@code armed}, Pa, 0 to 1 bar
 */
public record BoostTarget(BoostTable off, BoostTable armed, double tolerance) {
    /** Boost overshoot that a closed-loop control is usually allowed, Pa: common practice, no source. */
    public static final double USUAL_TOLERANCE = 0.05e5;

    public BoostTarget {
        Require.within("boost allowed above its target when the nitrous opens", tolerance, 0, 1e5, "Pa");
    }

    /**
     * The same boost at every speed, armed or not.
     *
     * @param gaugePressure Pa above ambient
     * @return the target
     */
    public static BoostTarget constant(double gaugePressure) {
        BoostTable table = BoostTable.constant(gaugePressure);
        return new BoostTarget(table, table, USUAL_TOLERANCE);
    }

    /**
     * The same with both tables changed.
     *
     * @param change from Pa gauge to Pa gauge
     * @return the changed target
     */
    public BoostTarget map(DoubleUnaryOperator change) {
        return new BoostTarget(off.map(change), armed.map(change), tolerance);
    }
}
