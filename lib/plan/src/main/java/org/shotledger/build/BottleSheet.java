package org.shotledger.build;

import org.shotledger.bottle.Bottle;

/**
 * Bottle, charge and heater.
 *
 * @param vessel the vessel
 * @param charge nitrous oxide when full, kg
 * @param startTemperature temperature of bottle and contents at the start of a pass, K
 * @param heaterPower electric heater, W; 0 for none
 * @param heaterOff temperature at which thermostat or pressure switch turn the heater off, K; NaN without a heater
 * @param reliefPressure pressure at which the relief disc bursts, Pa absolute
 * @param hottestSoak hottest the full bottle may stand, K
 */
public record BottleSheet(
        Bottle vessel,
        double charge,
        double startTemperature,
        double heaterPower,
        double heaterOff,
        double reliefPressure,
        double hottestSoak) {

    /**
     * Temperature at which a further pass can begin: that of the first, or, where the heater turns off below it, that.
     *
     * @return temperature, K
     */
    public double reheatedTemperature() {
        return Double.isNaN(heaterOff) ? startTemperature : Math.min(startTemperature, heaterOff);
    }

    /**
     * Pressure of the full bottle at its hottest.
     *
     * @return pressure, Pa absolute
     */
    public double hottestPressure() {
        return vessel.pressureAt(charge, hottestSoak);
    }
}
