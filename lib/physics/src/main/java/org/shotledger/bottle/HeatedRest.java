package org.shotledger.bottle;

import org.shotledger.fluid.NitrousOxide;

/**
 * What a wait of a given time does to a closed bottle with a heater and its switch, shell and contents lumped as in
 * {@link EquilibriumBottle}. The switch is at the vapour pressure of the temperature wanted; it turns the heater on again 1 % below.
 *
 * @param after bottle and contents at the end of the wait
 * @param seconds time until the temperature wanted was reached, s; 0 when it was there already, NaN when the wait is too short
 * @param heaterSeconds time the heater was on, s
 * @param ampereHours charge taken from the battery, A h; 0 without a heater
 */
public record HeatedRest(Charge after, double seconds, double heaterSeconds, double ampereHours) {
    private static final double HOUR = 3600;
    /** Share of the switch's pressure at which it turns on again: our choice, a usual switch's hysteresis. */
    private static final double ON_AGAIN = 0.99;
    /** A pressure this close to that of the switch has reached it. */
    private static final double CLOSE = 1e-6;

    /**
     * Waits.
     *
     * @param before bottle and contents when the pass has ended
     * @param wait time, s, above 0 to 1e7
     * @param air temperature of the air, K
     * @param power electric power of the heater, W; 0 for warm air alone
     * @param wanted temperature at the next start, K, below the critical temperature
     * @param voltage supply voltage, V, above 0
     * @return the bottle then, and what it took
     * @throws IllegalArgumentException when the voltage is not above 0 or the temperature not below the critical one
     */
    public static HeatedRest of(Charge before, double wait, double air, double power, double wanted, double voltage) {
        if (!(voltage > 0 && wanted < NitrousOxide.CRITICAL_TEMPERATURE)) {
            throw new IllegalArgumentException("Wait: the voltage is " + voltage + " V and the temperature wanted "
                    + wanted + " K; the voltage must be above 0 and the temperature below the critical "
                    + NitrousOxide.CRITICAL_TEMPERATURE + " K.");
        }
        double off = NitrousOxide.saturationPressure(wanted);
        HeatInput still = HeatInput.surroundings(air);
        History history = Emptying.of(before, Outflow.none())
                .withHeat(power > 0 ? still.withHeater(power, off, ON_AGAIN * off) : still)
                .withBand(0, off)
                .withDuration(wait)
                .until()
                .equilibrium();
        double reached = before.pressure() >= off * (1 - CLOSE)
                ? 0
                : history.find(BottleEvent.Kind.PRESSURE_ABOVE)
                        .map(BottleEvent::time)
                        .orElse(Double.NaN);
        double on = power > 0 ? heated(history, before.pressure() < off) : 0;
        return new HeatedRest(history.left(), reached, on, power * on / voltage / HOUR);
    }

    /** Time between the switchings, the heater as it was at the start. */
    private static double heated(History history, boolean atStart) {
        boolean on = atStart;
        double since = 0;
        double sum = 0;
        for (BottleEvent event : history.events()) {
            if (event.kind() == BottleEvent.Kind.THERMOSTAT) {
                sum += on ? event.time() - since : 0;
                on = !on;
                since = event.time();
            }
        }
        return sum + (on ? history.last().time() - since : 0);
    }

    /**
     * Whether the wait was long enough.
     *
     * @return true when the temperature wanted was reached
     */
    public boolean enough() {
        return !Double.isNaN(seconds);
    }
}
