package org.shotledger.build;

import org.shotledger.bottle.Bottle;

/**
 * Bottle, charge and heater.
 *
 * @param vessel the vessel
 * @param charge nitrous oxide when full, kg
 * @param startTemperature temperature of bottle and contents at the start of a pass, K
 * @param heaterPower electric heater, W; 0 for none
 * @param reliefPressure pressure at which the relief disc bursts, Pa absolute
 */
public record BottleSheet(
        Bottle vessel, double charge, double startTemperature, double heaterPower, double reliefPressure) {}
