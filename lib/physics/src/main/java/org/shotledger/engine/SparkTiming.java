package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * Timing of the burning for best work or inside limits.
 *
 * @param input the cycle with that timing
 * @param cycle what it gives
 * @param retard later than best work by this, deg
 * @param workLost relative loss of work against best timing
 */
public record SparkTiming(CycleInput input, Cycle cycle, double retard, double workLost) {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final double EARLIEST = -80;
    private static final double LATEST = 20;

    /**
     * The timing of most work, by golden section.
     *
     * @param cylinder the cylinder
     * @param input the cycle; its own timing does not matter
     * @return best timing, to 0.01 degrees
     */
    public static SparkTiming best(Cylinder cylinder, CycleInput input) {
        double low = EARLIEST;
        double high = LATEST;
        while (high - low > 0.01) {
            double left = high - GOLDEN * (high - low);
            double right = low + GOLDEN * (high - low);
            if (cylinder.run(at(input, left)).work()
                    > cylinder.run(at(input, right)).work()) {
                high = right;
            } else {
                low = left;
            }
        }
        CycleInput best = at(input, (low + high) / 2);
        return new SparkTiming(best, cylinder.run(best), 0, 0);
    }

    /**
     * The earliest timing, not before best, that keeps a peak pressure and a knock integral.
     *
     * @param cylinder the cylinder
     * @param input the cycle; its own timing does not matter
     * @param peakPressure limit, Pa
     * @param knockIntegral limit, for example that of the safe base; infinite for none
     * @return the timing
     * @throws IllegalArgumentException when not even burning 40 degrees after best keeps them
     */
    public static SparkTiming within(Cylinder cylinder, CycleInput input, double peakPressure, double knockIntegral) {
        Require.positive("peak pressure limit", peakPressure, "Pa");
        SparkTiming best = best(cylinder, input);
        if (keeps(best.cycle, peakPressure, knockIntegral)) {
            return best;
        }
        double bestStart = best.input.burning().start();
        double early = 0;
        double late = 40;
        Cycle latest = cylinder.run(at(input, bestStart + late));
        if (!keeps(latest, peakPressure, knockIntegral)) {
            throw new IllegalArgumentException("Even 40 degrees after best timing the peak pressure is "
                    + Require.shown(latest.peakPressure() / 1e3) + " kPa and the knock integral "
                    + Require.shown(latest.knockIntegral()) + "; allowed are " + Require.shown(peakPressure / 1e3)
                    + " kPa and " + Require.shown(knockIntegral) + ". Use less boost or less nitrous oxide.");
        }
        while (late - early > 0.01) {
            double middle = (early + late) / 2;
            if (keeps(cylinder.run(at(input, bestStart + middle)), peakPressure, knockIntegral)) {
                late = middle;
            } else {
                early = middle;
            }
        }
        CycleInput found = at(input, bestStart + late);
        Cycle cycle = cylinder.run(found);
        return new SparkTiming(found, cycle, late, 1 - cycle.work() / best.cycle.work());
    }

    private static boolean keeps(Cycle cycle, double peakPressure, double knockIntegral) {
        return cycle.peakPressure() <= peakPressure && cycle.knockIntegral() <= knockIntegral;
    }

    private static CycleInput at(CycleInput input, double start) {
        return input.withBurning(input.burning().startingAt(start));
    }
}
