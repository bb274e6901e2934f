package org.shotledger.car;

import org.shotledger.bottle.Bottle;
import org.shotledger.bottle.Cylinder;
import org.shotledger.bottle.Filling;
import org.shotledger.bottle.FillingCheck;

/**
 * Bottle and heater.
 *
 * @param vessel the vessel
 * @param heaterPower electric heater, W; 0 for none
 * @param heaterOff temperature at which thermostat or pressure switch turn the heater off, K; NaN without a heater
 * @param servicePressure service pressure of the marking, Pa absolute
 * @param reliefPressure pressure at which the relief disc bursts, Pa absolute
 * @param hottestSoak hottest the full bottle may stand, K
 */
public record BottleSheet(
        Bottle vessel,
        double heaterPower,
        double heaterOff,
        double servicePressure,
        double reliefPressure,
        double hottestSoak) {

    /**
     * Temperature at which a further pass can begin: that of the first, or, where the heater turns off below it, that.
     *
     * @param startTemperature of the first pass, K
     * @return temperature, K
     */
    public double reheated(double startTemperature) {
        return Double.isNaN(heaterOff) ? startTemperature : Math.min(startTemperature, heaterOff);
    }

    /**
     * What is held against the rules of filling.
     *
     * @param charge nitrous oxide in it, kg
     * @param startTemperature at the start of a pass, K
     * @param limits the builder's limits, which may be stricter
     * @return the filling
     */
    public Filling filling(double charge, double startTemperature, BuilderLimits limits) {
        Filling filling = Filling.of(
                        vessel,
                        charge,
                        new Cylinder(servicePressure, reliefPressure),
                        startTemperature,
                        hottestSoak,
                        limits.bottlePressureLow(),
                        limits.bottlePressureHigh())
                .stricter(FillingCheck.LARGEST_DENSITY, Math.min(limits.reliefShare(), FillingCheck.DISC_SHARE));
        return Double.isNaN(heaterOff) ? filling : filling.withHeaterOff(heaterOff);
    }
}
