package org.shotledger.budget;

import java.util.function.DoubleFunction;
import org.shotledger.build.BuilderLimits;

/**
 * Takes boost back at engine speeds where torque or peak pressure with nitrous would come closer to its limit than a
 * reserve: nitrous is constant in time, so the load of a cylinder grows as the speed falls, and boost is what can follow.
 */
final class Taper {
    /** Share of torque and peak pressure limit kept in reserve: common practice, no source. */
    static final double RESERVE = 0.03;

    private static final double CLOSE_ENOUGH = 1e-4;
    private static final int MOST_STEPS = 12;

    private Taper() {}

    /**
     * The point at the highest plenum pressure, at most the one held, at which the reserve is kept.
     *
     * @param allowed the builder's limits
     * @param held plenum pressure held where nothing is overloaded, Pa absolute
     * @param ambient ambient pressure, below which boost is not taken back, Pa absolute
     * @param evaluate the point at a plenum pressure
     * @return the point
     */
    static Evaluation point(BuilderLimits allowed, double held, double ambient, DoubleFunction<Evaluation> evaluate) {
        Evaluation point = evaluate.apply(held);
        double excess = excess(allowed, point);
        double high = held;
        double atHigh = excess;
        for (int i = 0; i < MOST_STEPS && excess > CLOSE_ENOUGH && high > ambient; i++) {
            // load rises nearly in proportion to pressure, so the proportional step lands just below the wanted load
            double next = Math.max(ambient, high / (1 + 1.05 * atHigh));
            point = evaluate.apply(next);
            excess = excess(allowed, point);
            high = next;
            atHigh = excess;
        }
        return point;
    }

    private static double excess(BuilderLimits allowed, Evaluation point) {
        double torque = point.crankTorque() / allowed.crankTorque();
        double peak = point.cylinder().peakPressure() / allowed.peakPressure();
        return Math.max(torque, peak) / (1 - RESERVE) - 1;
    }
}
