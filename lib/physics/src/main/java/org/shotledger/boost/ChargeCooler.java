package org.shotledger.boost;

import org.shotledger.units.Require;

/**
 * A charge cooler with constant effectiveness, {@code T_out = T_in - eps (T_in - T_coolant)}.
 *
 * @param name what it is called
 * @param effectiveness 0 to 1
 * @param loss its pressure loss
 */
public record ChargeCooler(String name, double effectiveness, FlowLoss loss) {
    public ChargeCooler {
        Require.named("charge cooler", name);
        Require.within("effectiveness of " + name, effectiveness, 0, 1, "");
        Require.given("pressure loss of " + name, loss);
    }

    /**
     * Temperature after the cooler.
     *
     * @param inletTemperature of the charge air, K
     * @param coolantTemperature of the ambient air or water entering, K
     * @return K
     */
    public double outletTemperature(double inletTemperature, double coolantTemperature) {
        return inletTemperature - effectiveness * (inletTemperature - coolantTemperature);
    }
}
