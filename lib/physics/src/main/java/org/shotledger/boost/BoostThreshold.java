package org.shotledger.boost;

import java.util.Optional;
import java.util.function.DoubleFunction;
import org.shotledger.units.Require;

/**
 * The lowest engine speed at which the turbine, with the wastegate shut, can drive the compressor to a wanted boost. With
 * nitrous oxide the exhaust carries more mass and heat for the same air, so the threshold comes earlier: find it once with
 * and once without and compare. Steady state: how fast the shaft gets there is another question.
 *
 * @param rpm crankshaft speed of the threshold
 * @param balance the shaft there
 */
public record BoostThreshold(double rpm, ShaftBalance balance) {
    private static final int LOOKS = 40;

    /**
     * Finds the threshold.
     *
     * @param turbine the turbine
     * @param demand what the wanted boost asks of the shaft at an engine speed; may throw {@link OutsideMapException} where
     *     the compressor cannot be there
     * @param lowRpm where to begin, above zero
     * @param highRpm where to end
     * @return the threshold to 1 rpm; empty where no speed holds the boost
     */
    public static Optional<BoostThreshold> find(
            Turbine turbine, DoubleFunction<ShaftDemand> demand, double lowRpm, double highRpm) {
        Require.positive("lowest speed", lowRpm, "rpm");
        Require.within("highest speed", highRpm, lowRpm, 30_000, "rpm");
        double below = lowRpm;
        for (int i = 0; i <= LOOKS; i++) {
            double rpm = lowRpm + (highRpm - lowRpm) * i / LOOKS;
            if (balance(turbine, demand, rpm).isPresent()) {
                return refine(turbine, demand, below, rpm);
            }
            below = rpm;
        }
        return Optional.empty();
    }

    private static Optional<BoostThreshold> refine(
            Turbine turbine, DoubleFunction<ShaftDemand> demand, double below, double holding) {
        double low = below;
        double high = holding;
        while (high - low > 1) {
            double middle = (low + high) / 2;
            if (balance(turbine, demand, middle).isPresent()) {
                high = middle;
            } else {
                low = middle;
            }
        }
        double rpm = high;
        return balance(turbine, demand, rpm).map(b -> new BoostThreshold(rpm, b));
    }

    /** The balance where it holds the boost and the compressor map has the point. */
    private static Optional<ShaftBalance> balance(Turbine turbine, DoubleFunction<ShaftDemand> demand, double rpm) {
        try {
            ShaftDemand wanted = demand.apply(rpm);
            ShaftBalance found =
                    ShaftBalance.solve(turbine, wanted.gas(), wanted.compressorPower(), wanted.outletPressure());
            return Optional.of(found).filter(ShaftBalance::holdsBoost);
        } catch (OutsideMapException e) {
            return Optional.empty();
        }
    }
}
