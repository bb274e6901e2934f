package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.Require;

/**
 * What an alternator gives over its speed, {@code I = I_max sqrt(1 - (n_0/n)^2)}.
 *
 * <p>Both the induced voltage and the reactance of the winding rise with speed, so that a rectifier at constant voltage takes this current
 * when resistance is left out (textbook circuit of a synchronous machine). Fixed by the two currents on the plate: at 1500/min and at
 * 6000/min of the alternator (ISO 8854, from memory). Known error: some per cent between these points; below 1500/min too high.
 *
 * @param low current at 1500/min of the alternator, hot, A
 * @param rated current at 6000/min of the alternator, hot, A
 * @param ratio turns of the alternator for one of the crankshaft, 1 to 5
 */
public record Alternator(double low, double rated, double ratio) {
    private static final double LOW_SPEED = 1_500;
    private static final double RATED_SPEED = 6_000;

    public Alternator {
        Require.within("current of the alternator at 6000/min", rated, 5, 1_000, "A");
        Require.within("current of the alternator at 1500/min", low, 0.05 * rated, 0.99 * rated, "A");
        Require.within("ratio of the alternator", ratio, 1, 5, "");
    }

    /**
     * Current at an engine speed.
     *
     * @param rpm of the crankshaft, zero or above
     * @return A; zero below the speed at which it begins to charge
     */
    public double current(double rpm) {
        double q = low * low / (rated * rated);
        double begin = (1 - q) / (1 / (LOW_SPEED * LOW_SPEED) - q / (RATED_SPEED * RATED_SPEED));
        double most = rated / Math.sqrt(1 - begin / (RATED_SPEED * RATED_SPEED));
        double speed = Require.notNegative("engine speed", rpm, "rpm") * ratio;
        return speed * speed <= begin ? 0 : most * Math.sqrt(1 - begin / (speed * speed));
    }

    /**
     * What alternator and battery give in a phase at an engine speed: idling is {@code ALWAYS} at idle, waiting is {@code WAITING} at
     * idle or at zero, a pass is {@code PASS} at its mean speed.
     *
     * @param phase the phase
     * @param loads every load of the car
     * @param rpm engine speed in it
     * @param duration of it, s
     * @param battery rated charge of the battery, C
     * @return the balance
     */
    public CurrentBalance balance(Load.Phase phase, List<Load> loads, double rpm, double duration, double battery) {
        return CurrentBalance.of(phase, loads, current(rpm), duration, battery);
    }
}
