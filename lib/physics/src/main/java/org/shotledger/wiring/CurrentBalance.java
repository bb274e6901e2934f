package org.shotledger.wiring;

import java.util.List;

/**
 * What the loads take in one phase, and who gives it.
 *
 * @param phase the phase; {@link Load.Phase#ALWAYS} is plain driving
 * @param current taken on average, A
 * @param alternator what the alternator gives at most, A
 * @param duration of the phase, s
 * @param battery rated charge of the battery, C
 */
public record CurrentBalance(Load.Phase phase, double current, double alternator, double duration, double battery) {

    /**
     * Adds the loads of a phase up. Those that are always on count in every phase.
     *
     * @param phase the phase
     * @param loads every load of the car
     * @param alternator what the alternator gives at most, A
     * @param duration of the phase, s
     * @param battery rated charge of the battery, C
     * @return the balance
     */
    public static CurrentBalance of(
            Load.Phase phase, List<Load> loads, double alternator, double duration, double battery) {
        double current = loads.stream()
                .filter(load -> load.phase() == Load.Phase.ALWAYS || load.phase() == phase)
                .mapToDouble(Load::meanCurrent)
                .sum();
        return new CurrentBalance(phase, current, alternator, duration, battery);
    }

    /**
     * What the alternator lacks.
     *
     * @return A, taken out of the battery; zero when the alternator suffices
     */
    public double shortfall() {
        return Math.max(0, current - alternator);
    }

    /**
     * Charge taken out of the battery in the phase, as a share of its rating.
     *
     * @return 0 to 1; above 1 the battery is too small
     */
    public double batteryShare() {
        return shortfall() * duration / battery;
    }
}
