package org.shotledger.bottle;

import java.util.Optional;

/**
 * What it takes to bring a closed bottle to a pressure.
 *
 * @param seconds time, s; NaN when it is not reached
 * @param ampereHours charge taken from the battery, A h; NaN when not reached, 0 without a heater
 * @param energy electric energy, J
 * @param liquidFull whether liquid filled the bottle on the way, from where on the pressure climbs steeply
 * @param reached bottle and contents at the end
 */
public record HeaterTime(double seconds, double ampereHours, double energy, boolean liquidFull, Charge reached) {
    private static final double HOUR = 3600;

    /**
     * Heats a closed bottle, shell and contents lumped as in {@link EquilibriumBottle}.
     *
     * @param charge bottle and contents
     * @param surroundings air and coefficients; its heater is replaced
     * @param power electric power of the heater, W; 0 for warm air alone
     * @param pressure pressure to be reached, Pa absolute, above 0
     * @param voltage supply voltage, V, above 0
     * @param longest patience, s, above 0 to 1e7
     * @return time, ampere-hours and the bottle then
     */
    public static HeaterTime to(
            Charge charge, HeatInput surroundings, double power, double pressure, double voltage, double longest) {
        if (!(voltage > 0 && pressure > 0)) {
            throw new IllegalArgumentException("Heater: the pressure to reach is " + pressure + " Pa and the voltage "
                    + voltage + " V; both must be above 0.");
        }
        if (charge.pressure() >= pressure) {
            return new HeaterTime(0, 0, 0, charge.liquidVolumeFraction() >= 1, charge);
        }
        // the switch is set out of the way; the run ends at the pressure
        HeatInput heat = power > 0 ? surroundings.withHeater(power, 2 * pressure, pressure) : surroundings;
        History history = Emptying.of(charge, Outflow.none())
                .withHeat(heat)
                .withBand(0, pressure)
                .withDuration(longest)
                .until(BottleEvent.Kind.PRESSURE_ABOVE)
                .equilibrium();
        Optional<BottleEvent> there = history.find(BottleEvent.Kind.PRESSURE_ABOVE);
        double seconds = there.map(BottleEvent::time).orElse(Double.NaN);
        return new HeaterTime(
                seconds,
                power * seconds / voltage / HOUR,
                power * seconds,
                history.find(BottleEvent.Kind.LIQUID_FULL).isPresent(),
                history.left());
    }
}
