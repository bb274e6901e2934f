package org.shotledger.bottle;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.SaturationCurve;

/**
 * How full a bottle is, and what heat would do to it.
 *
 * <p>Sources: 49 CFR 173.304a (filling by weight; nitrous oxide 68 % of the water capacity; at 55 degC not above 5/4 of the
 * service pressure); UN Model Regulations P200 (0.68, 0.74, 0.75 for test pressures of 180, 225, 250 bar, from memory).
 *
 * @param fillingDensity charge per water capacity, kg/L
 * @param liquidFullTemperature temperature at which liquid fills the bottle, K; NaN when the vapour space never closes
 * @param pressureAtLimit absolute pressure at 55 degC, Pa
 * @param warnings sentences, empty when the filling is within the regulation
 */
public record Filling(
        double fillingDensity, double liquidFullTemperature, double pressureAtLimit, List<String> warnings) {
    /** Largest charge per water capacity of 49 CFR 173.304a, kg/L. */
    public static final double LARGEST_DENSITY = 0.68;

    /** Reference temperature of 49 CFR 173.304a(c), 55 degC, K. */
    public static final double LIMIT_TEMPERATURE = 328.15;

    /**
     * Copies the list.
     */
    public Filling {
        warnings = List.copyOf(warnings);
    }

    /**
     * Checks a charge.
     *
     * @param bottle the vessel
     * @param mass charge, kg
     * @param servicePressure service pressure marked on the vessel, Pa absolute (1800 psi marks: 124.1e5)
     * @return figures and warnings
     */
    public static Filling of(Bottle bottle, double mass, double servicePressure) {
        double density = bottle.fillingDensity(mass);
        double pressure = bottle.pressureAt(mass, LIMIT_TEMPERATURE);
        double full = liquidFull(1000 * density);
        List<String> warnings = new ArrayList<>();
        // half a per mille covers the rounding of a water capacity given to two digits
        if (density > LARGEST_DENSITY * 1.0005) {
            warnings.add(String.format(
                    "Overfilled: %.3f kg per litre of water capacity, 49 CFR 173.304a allows %.2f; the charge must not exceed %.2f kg.",
                    density, LARGEST_DENSITY, LARGEST_DENSITY * 1000 * bottle.waterCapacity()));
        }
        if (pressure > 1.25 * servicePressure) {
            warnings.add(String.format(
                    "At 55 degC the pressure would be %.0f bar, above 5/4 of the service pressure (%.0f bar), 49 CFR 173.304a(c).",
                    pressure / 1e5, 1.25 * servicePressure / 1e5));
        }
        if (full < 303) {
            warnings.add(String.format(
                    "Liquid fills the bottle at %.1f degC; above that the pressure climbs steeply and the relief disc may burst.",
                    full - 273.15));
        }
        return new Filling(density, full, pressure, warnings);
    }

    private static double liquidFull(double density) {
        double low = NitrousOxide.TRIPLE_TEMPERATURE;
        double high = NitrousOxide.CRITICAL_TEMPERATURE;
        if (density <= NitrousOxide.CRITICAL_DENSITY || density > SaturationCurve.liquidDensity(low)) {
            return Double.NaN;
        }
        while (high - low > 1e-9) {
            double middle = 0.5 * (low + high);
            if (SaturationCurve.liquidDensity(middle) > density) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }
}
