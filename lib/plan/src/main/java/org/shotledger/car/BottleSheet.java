package org.shotledger.car;

import org.shotledger.bottle.Bottle;

/**
 * Bottle and heater.
 *
 * @param vessel the vessel
 * @param heaterPower electric heater, W; 0 for none
 * @param heaterOff temperature at which thermostat or pressure switch turn the heater off, K; NaN without a heater
 * @param reliefPressure pressure at which the relief disc bursts, Pa absolute
 * @param hottestSoak hottest the full bottle may stand, K
 */
public record BottleSheet(
        Bottle vessel, double heaterPower, double heaterOff, double reliefPressure, double hottestSoak) {

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
     * Pressure of the full bottle at its hottest.
     *
     * @param charge nitrous oxide in it, kg
     * @return pressure, Pa absolute
     */
    public double hottestPressure(double charge) {
        return vessel.pressureAt(charge, hottestSoak);
    }
}
