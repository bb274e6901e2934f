package org.shotledger.engine;

import org.shotledger.units.Require;
import org.shotledger.units.UnitFactors;

/**
 * Ignition delay of the end gas after Douaud and Eyzat, SAE 780080 (1978):
 * {@code tau = 17.68 ms (ON/100)^3.402 p^-1.7 exp(3800/T)} with p in atm, and the integral of Livengood and Wu (1955)
 * over it. Made for fuels of known octane number in engines of its day: use it only relative to a base that is known to be
 * safe on the same engine and fuel.
 */
public final class Knock {
    static final double PRESSURE_EXPONENT = 1.7;
    static final double ACTIVATION = 3800;

    private Knock() {}

    /**
     * The delay at constant state.
     *
     * @param octane octane number, 60 to 130
     * @param pressure Pa
     * @param temperature of the unburned gas, K
     * @return s
     */
    public static double delay(double octane, double pressure, double temperature) {
        return constant(octane)
                * Math.exp(ACTIVATION / temperature - PRESSURE_EXPONENT * Math.log(pressure / UnitFactors.ATMOSPHERE));
    }

    /**
     * Livengood-Wu integral of a course of end-gas states, by the trapezoidal rule; knock is expected near 1.
     *
     * @param octane octane number, 60 to 130
     * @param time s, increasing, at least two
     * @param pressure Pa at each time
     * @param temperature of the unburned gas at each time, K
     * @return a pure number
     */
    public static double integral(double octane, double[] time, double[] pressure, double[] temperature) {
        if (time.length < 2 || pressure.length != time.length || temperature.length != time.length) {
            throw new IllegalArgumentException("The knock integral got " + time.length + " times, " + pressure.length
                    + " pressures and " + temperature.length + " temperatures; give equally many, at least two.");
        }
        double sum = 0;
        double before = 1 / delay(octane, pressure[0], temperature[0]);
        for (int i = 1; i < time.length; i++) {
            double now = 1 / delay(octane, pressure[i], temperature[i]);
            sum += 0.5 * (before + now) * (time[i] - time[i - 1]);
            before = now;
        }
        return sum;
    }

    /** The part of the delay that belongs to the fuel, s. */
    static double constant(double octane) {
        Require.within("octane number for the knock index", octane, 60, 130, "");
        return 17.68e-3 * Math.pow(octane / 100, 3.402);
    }
}
