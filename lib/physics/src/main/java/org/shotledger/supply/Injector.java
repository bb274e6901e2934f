package org.shotledger.supply;

import org.shotledger.curve.Curve;
import org.shotledger.units.Require;

/**
 * A port injector: static flow by Bernoulli from its test point, and dead time over battery voltage.
 *
 * @param name what it is called
 * @param staticFlow volume flow held open at the test point, m3/s, 1e-7 to 1e-3
 * @param testDrop pressure drop of the test, Pa, 1 to 10 bar
 * @param testDensity density of the test fluid, kg/m3, 600 to 900 (n-heptane 684 at 20 C, SAE J1832)
 * @param deadTime opening less closing delay over voltage, s, 0 to 5 ms
 */
public record Injector(String name, double staticFlow, double testDrop, double testDensity, Curve deadTime) {
    /** Density of n-heptane at 20 C, the usual test fluid, kg/m3. */
    public static final double HEPTANE_DENSITY = 684;

    public Injector {
        Require.named("injector", name);
        Require.within("static flow of " + name, staticFlow, 1e-7, 1e-3, "m3/s");
        Require.within("test pressure drop of " + name, testDrop, 1e5, 10e5, "Pa");
        Require.within("test density of " + name, testDensity, 600, 900, "kg/m3");
        Require.given("dead time of " + name, deadTime);
        for (double time : deadTime.ordinates()) {
            Require.within("dead time of " + name, time, 0, 5e-3, "s");
        }
    }

    /**
     * Mass flow held open, {@code m = V rho_test sqrt(rho dp / (rho_test dp_test))}.
     *
     * @param density of the fuel at its temperature, kg/m3
     * @param drop pressure in the rail less pressure at the tip, Pa, 0 or more
     * @return kg/s
     */
    public double massFlow(double density, double drop) {
        Require.positive("fuel density", density, "kg/m3");
        Require.notNegative("pressure drop", name, drop, "Pa");
        return staticFlow * testDensity * Math.sqrt(density * drop / (testDensity * testDrop));
    }

    /**
     * Volume flow held open.
     *
     * @param density of the fuel, kg/m3
     * @param drop pressure drop, Pa, 0 or more
     * @return m3/s
     */
    public double volumeFlow(double density, double drop) {
        return massFlow(density, drop) / density;
    }

    /**
     * Time the injector must be held open in each cycle of a four-stroke engine, one opening per cycle.
     *
     * @param flow fuel needed from this injector, kg/s
     * @param rpm crankshaft speed
     * @param density of the fuel, kg/m3
     * @param drop pressure drop, Pa, above zero
     * @param voltage at the injector, V; outside the table the nearer end counts
     * @return s, dead time included
     */
    public double openTime(double flow, double rpm, double density, double drop, double voltage) {
        return flow * 120 / rpm / massFlow(density, drop) + deadTime.clamped(voltage);
    }

    /**
     * Share of the cycle the injector is held open.
     *
     * @param flow fuel needed from this injector, kg/s
     * @param rpm crankshaft speed
     * @param density of the fuel, kg/m3
     * @param drop pressure drop, Pa, above zero
     * @param voltage at the injector, V
     * @return duty, above 1 where the injector is too small; 0.80 to 0.85 as a limit is common practice
     */
    public double duty(double flow, double rpm, double density, double drop, double voltage) {
        return openTime(flow, rpm, density, drop, voltage) * rpm / 120;
    }
}
