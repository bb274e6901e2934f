package org.shotledger.bottle;

/**
 * What is done with a charged bottle: how much is taken out, for how long, in what surroundings.
 *
 * @param charge bottle and contents at the start
 * @param draw what is taken
 * @param warmth heat that reaches the contents
 * @param duration longest time, s
 * @param rows time between rows of the history, s; zero for the integrator's own steps
 * @param pressureLimit pressure whose crossing is reported, Pa absolute; zero for none
 * @param stopUncovered true to stop when the siphon draws vapour, false to go on with vapour
 */
public record Emptying(
        Charge charge,
        Draw draw,
        Warmth warmth,
        double duration,
        double rows,
        double pressureLimit,
        boolean stopUncovered) {
    private static final double LONG = 3600;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when one lies outside its range
     */
    public Emptying {
        if (!(duration > 0 && duration < 1e7)) {
            throw new IllegalArgumentException(
                    "Emptying: the duration is " + duration + " s; allowed are above 0 to 1e7 s.");
        }
        if (!(rows >= 0 && pressureLimit >= 0)) {
            throw new IllegalArgumentException("Emptying: the row spacing is " + rows + " s and the pressure limit "
                    + pressureLimit + " Pa; both must be zero or above.");
        }
    }

    /**
     * Adiabatic emptying through a draw until the liquid is gone.
     *
     * @param charge bottle and contents
     * @param draw what is taken
     * @return the task; refine it with the {@code with} methods
     */
    public static Emptying of(Charge charge, Draw draw) {
        return new Emptying(charge, draw, Warmth.none(), LONG, 0, 0, true);
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
        return of(charge, Draw.constant(massFlow)).withRows(rows).equilibrium();
    }

    /**
     * The same in other surroundings.
     *
     * @param value heat that reaches the contents
     * @return new task
     */
    public Emptying withWarmth(Warmth value) {
        return new Emptying(charge, draw, value, duration, rows, pressureLimit, stopUncovered);
    }

    /**
     * The same for a given time.
     *
     * @param seconds longest time, s
     * @return new task
     */
    public Emptying withDuration(double seconds) {
        return new Emptying(charge, draw, warmth, seconds, rows, pressureLimit, stopUncovered);
    }

    /**
     * The same with evenly spaced rows.
     *
     * @param seconds time between rows, s
     * @return new task
     */
    public Emptying withRows(double seconds) {
        return new Emptying(charge, draw, warmth, duration, seconds, pressureLimit, stopUncovered);
    }

    /**
     * The same with a pressure whose crossing is reported.
     *
     * @param pressure absolute pressure, Pa
     * @return new task
     */
    public Emptying withPressureLimit(double pressure) {
        return new Emptying(charge, draw, warmth, duration, rows, pressure, stopUncovered);
    }

    /**
     * The same, going on with vapour when the liquid is gone.
     *
     * @return new task
     */
    public Emptying throughVapour() {
        return new Emptying(charge, draw, warmth, duration, rows, pressureLimit, false);
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
