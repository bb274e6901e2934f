package org.shotledger.bottle;

import org.shotledger.curve.Bracket;
import org.shotledger.fluid.HelmholtzPoint;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.SaturationCurve;

/**
 * Pressure of a charge at rest at one temperature, single-phase states included; it is never refused.
 *
 * @param pressure absolute pressure, Pa; where it is beyond the equation of state its limit of 50 MPa
 * @param beyond whether the true pressure is higher than that: outside the equation, and far beyond any cylinder
 */
public record ChargePressure(double pressure, boolean beyond) {
    /** Highest pressure of the equation of state, Pa. */
    public static final double HIGHEST = 50e6;

    private static final double HIGHEST_DENSITY = 1250;

    /**
     * Pressure of a charge.
     *
     * @param bottle the vessel, rigid
     * @param mass charge, kg, above 0
     * @param temperature temperature of all of it, K, 182.33 to 525
     * @return the pressure, or that it is beyond the equation
     */
    public static ChargePressure of(Bottle bottle, double mass, double temperature) {
        double density = mass / bottle.waterCapacity();
        if (density > HIGHEST_DENSITY) {
            return new ChargePressure(HIGHEST, true);
        }
        if (temperature < NitrousOxide.CRITICAL_TEMPERATURE
                && density <= SaturationCurve.liquidDensity(temperature)
                && density >= SaturationCurve.vapourDensity(temperature)) {
            return new ChargePressure(SaturationCurve.pressure(temperature), false);
        }
        double pressure =
                new HelmholtzPoint().temperature(temperature).density(density).pressure();
        return pressure > HIGHEST ? new ChargePressure(HIGHEST, true) : new ChargePressure(pressure, false);
    }

    /**
     * Temperature at which liquid fills the bottle; above it the pressure climbs steeply.
     *
     * @param bottle the vessel
     * @param mass charge, kg
     * @return temperature, K; NaN for a charge thinner than critical, whose vapour space never closes, and the triple point's for one that is
     *     liquid-full at any temperature
     */
    public static double liquidFullTemperature(Bottle bottle, double mass) {
        double density = mass / bottle.waterCapacity();
        if (density <= NitrousOxide.CRITICAL_DENSITY) {
            return Double.NaN;
        }
        return Bracket.edge(
                        t -> SaturationCurve.liquidDensity(t) > density,
                        NitrousOxide.TRIPLE_TEMPERATURE,
                        NitrousOxide.CRITICAL_TEMPERATURE,
                        1e-9)
                .inside();
    }
}
