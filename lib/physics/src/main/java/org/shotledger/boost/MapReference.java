package org.shotledger.boost;

import org.shotledger.units.Require;
import org.shotledger.units.UnitFactors;

/**
 * The inlet state to which the flow and speed of a map are corrected, after SAE J1826 and J922. It must travel with the
 * map: two usual pairs differ by 4.6 % in flow.
 *
 * @param temperature stagnation temperature, K, 250 to 330
 * @param pressure stagnation pressure, Pa, 80 to 110 kPa
 */
public record MapReference(double temperature, double pressure) {
    /** 298 K and 100 kPa. */
    public static final MapReference SI = new MapReference(298, 100e3);
    /** 85 F and 28.4 inHg. */
    public static final MapReference US =
            new MapReference((85 + UnitFactors.FAHRENHEIT_OFFSET) / 1.8, 28.4 * UnitFactors.INCH_OF_MERCURY);

    public MapReference {
        Require.within("reference temperature of a map", temperature, 250, 330, "K");
        Require.within("reference pressure of a map", pressure, 80e3, 110e3, "Pa");
    }

    /**
     * Corrected flow, {@code W sqrt(T01/T_ref) / (p01/p_ref)}.
     *
     * @param flow physical flow, kg/s
     * @param temperature01 inlet stagnation temperature, K
     * @param pressure01 inlet stagnation pressure, Pa
     * @return kg/s
     */
    public double correctedFlow(double flow, double temperature01, double pressure01) {
        return flow * Math.sqrt(temperature01 / temperature) / (pressure01 / pressure);
    }

    /**
     * Physical speed of a corrected one.
     *
     * @param correctedRpm corrected speed
     * @param temperature01 inlet stagnation temperature, K
     * @return rpm
     */
    public double speed(double correctedRpm, double temperature01) {
        return correctedRpm * Math.sqrt(temperature01 / temperature);
    }
}
