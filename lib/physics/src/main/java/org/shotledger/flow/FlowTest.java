package org.shotledger.flow;

/**
 * A flow measured the trade's way: so much gone in so many seconds.
 *
 * @param mass what went through, kg, above 0
 * @param massDeviation one standard deviation of it, kg, above 0
 * @param seconds how long, s, above 0
 * @param secondsDeviation one standard deviation of it, s, zero or above
 */
public record FlowTest(double mass, double massDeviation, double seconds, double secondsDeviation) {
    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when one lies outside its range
     */
    public FlowTest {
        Checks.positive("Flow test", "mass gone", mass, "kg");
        Checks.positive("Flow test", "error of the mass", massDeviation, "kg");
        Checks.positive("Flow test", "time", seconds, "s");
        Checks.notNegative("Flow test", "error of the time", secondsDeviation, "s");
    }

    /**
     * Fuel or water caught in a measure at flowing pressure.
     *
     * @param volume what was caught, m3, above 0
     * @param volumeDeviation one standard deviation of it, m3, above 0
     * @param density density of the liquid, kg/m3, above 0
     * @param seconds time open, s, above 0
     * @param stopwatchDeviation one standard deviation of the time, s
     * @return the test
     */
    public static FlowTest ofLiquid(
            double volume, double volumeDeviation, double density, double seconds, double stopwatchDeviation) {
        return new FlowTest(volume * density, volumeDeviation * density, seconds, stopwatchDeviation);
    }

    /**
     * The measured flow.
     *
     * @return kg/s
     */
    public double flow() {
        return mass / seconds;
    }

    /**
     * Its error.
     *
     * @return one standard deviation of the natural logarithm of the flow, to first order
     */
    public double deviation() {
        return Math.hypot(massDeviation / mass, secondsDeviation / seconds);
    }
}
