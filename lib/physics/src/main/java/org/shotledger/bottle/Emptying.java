package org.shotledger.bottle;

import java.util.Set;

/**
 * What is done with a charged bottle: how much is taken out, for how long, in what surroundings.
 *
 * @param charge bottle and contents at the start
 * @param outflow what is taken
 * @param heat heat that reaches the contents
 * @param duration longest time, s
 * @param rows time between rows of the history, s; zero for the integrator's own steps
 * @param pressureLimit lowest working pressure; falling below it is reported, Pa absolute; zero for none
 * @param pressureCeiling highest working pressure; standing or rising above it is reported, Pa absolute; zero for none
 * @param stops events that end the run; without {@link BottleEvent.Kind#LIQUID_UNCOVERED} it goes on with vapour
 */
public record Emptying(
        Charge charge,
        Outflow outflow,
        HeatInput heat,
        double duration,
        double rows,
        double pressureLimit,
        double pressureCeiling,
        Set<BottleEvent.Kind> stops) {
    private static final double LONG = 3600;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when one lies outside its range
     */
    public Emptying {
        stops = Set.copyOf(stops);
        if (!(duration > 0 && duration < 1e7)) {
            throw new IllegalArgumentException(
                    "Emptying: the duration is " + duration + " s; allowed are above 0 to 1e7 s.");
        }
        if (!(rows >= 0 && pressureLimit >= 0 && pressureCeiling >= 0)) {
            throw new IllegalArgumentException("Emptying: the row spacing is " + rows + " s, the lowest pressure "
                    + pressureLimit + " Pa and the highest " + pressureCeiling + " Pa; all must be zero or above.");
        }
    }

    /**
     * Adiabatic emptying until the liquid is gone.
     *
     * @param charge bottle and contents
     * @param outflow what is taken
     * @return the task; refine it with the {@code with} methods
     */
    public static Emptying of(Charge charge, Outflow outflow) {
        return new Emptying(
                charge, outflow, HeatInput.none(), LONG, 0, 0, 0, Set.of(BottleEvent.Kind.LIQUID_UNCOVERED));
    }

    /**
     * Adiabatic, equilibrium emptying at a constant liquid flow until the liquid is gone.
     *
     * @param charge bottle and contents
     * @param massFlow liquid taken out, kg/s
     * @param rows time between rows of the history, s; zero for the integrator's own steps
     * @return history of temperature, pressure, liquid and vapour mass
     */
    public static History drain(Charge charge, double massFlow, double rows) {
        return of(charge, Outflow.constant(massFlow)).withRows(rows).equilibrium();
    }

    /**
     * The same in other surroundings.
     *
     * @param value heat that reaches the contents
     * @return new task
     */
    public Emptying withHeat(HeatInput value) {
        return new Emptying(charge, outflow, value, duration, rows, pressureLimit, pressureCeiling, stops);
    }

    /**
     * The same for a given time.
     *
     * @param seconds longest time, s
     * @return new task
     */
    public Emptying withDuration(double seconds) {
        return new Emptying(charge, outflow, heat, seconds, rows, pressureLimit, pressureCeiling, stops);
    }

    /**
     * The same with evenly spaced rows.
     *
     * @param seconds time between rows, s
     * @return new task
     */
    public Emptying withRows(double seconds) {
        return new Emptying(charge, outflow, heat, duration, seconds, pressureLimit, pressureCeiling, stops);
    }

    /**
     * The same with a working band of pressure whose two edges are reported.
     *
     * @param low lowest working pressure, Pa absolute
     * @param high highest working pressure, Pa absolute
     * @return new task
     */
    public Emptying withBand(double low, double high) {
        return new Emptying(charge, outflow, heat, duration, rows, low, high, stops);
    }

    /**
     * The same, going on with vapour when the liquid is gone.
     *
     * @return new task
     */
    public Emptying throughVapour() {
        return new Emptying(charge, outflow, heat, duration, rows, pressureLimit, pressureCeiling, Set.of());
    }

    /**
     * The same, ended by other events.
     *
     * @param kinds events that end the run
     * @return new task
     */
    public Emptying until(BottleEvent.Kind... kinds) {
        return new Emptying(charge, outflow, heat, duration, rows, pressureLimit, pressureCeiling, Set.of(kinds));
    }

    /**
     * Runs with the equilibrium model.
     *
     * @return what happened
     */
    public History equilibrium() {
        return EquilibriumBottle.MODEL.run(this);
    }

    /**
     * Runs with the two-node model, which knows the boiling delay.
     *
     * @return what happened
     */
    public History twoNode() {
        return TwoNodeBottle.MODEL.run(this);
    }
}
