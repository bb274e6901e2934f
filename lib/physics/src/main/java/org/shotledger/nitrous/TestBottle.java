package org.shotledger.nitrous;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * The bottle during a timed discharge.
 *
 * @param pressure mean pressure, Pa absolute
 * @param deviation one standard deviation of it, Pa, zero or above
 * @param temperature temperature of the liquid, K; NaN where it was not read
 */
public record TestBottle(double pressure, double deviation, double temperature) {
    /** A gauge and a thermometer on one bottle may differ by this share of the pressure: our choice. */
    public static final double AGREE = 0.05;

    /** So near to the critical pressure a boiling liquid ends for the law: our choice. */
    private static final double BOILS_UP_TO = 0.99 * NitrousOxide.CRITICAL_PRESSURE;

    /**
     * The liquid with the pressure off by so many standard deviations.
     *
     * @param off number of standard deviations
     * @return the boiling liquid; in a full bottle, which stands above its boiling pressure, the liquid at that pressure
     */
    public FluidState liquid(int off) {
        double p = pressure + off * deviation;
        boolean full = !Double.isNaN(temperature) && p > NitrousOxide.saturationPressure(temperature) * (1 + AGREE);
        return full
                ? NitrousOxide.atTemperaturePressure(temperature, p)
                : NitrousOxide.saturatedLiquid(NitrousOxide.saturationTemperature(Math.min(p, BOILS_UP_TO)));
    }
}
