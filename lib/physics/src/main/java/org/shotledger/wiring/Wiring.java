package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.Require;

/**
 * Everything electric that the plan adds to a car or leans on.
 *
 * @param rules what holds for every cable
 * @param outputCurrent current that one controller output can switch, A
 * @param alternator rated current of the alternator, A
 * @param alternatorShare share of it that is there with a hot alternator, 0 to 1
 * @param battery rated charge of the battery, C
 * @param loads the loads
 * @param channels the signals on the controller's channels
 * @param sensors the sensors
 */
public record Wiring(
        Cable.Rules rules,
        double outputCurrent,
        double alternator,
        double alternatorShare,
        double battery,
        List<Load> loads,
        Channels channels,
        List<Sensor> sensors) {

    /** Copies the lists and checks the figures. */
    public Wiring {
        Require.within("share of the alternator", alternatorShare, 0.1, 1, "");
        loads = List.copyOf(loads);
        sensors = List.copyOf(sensors);
    }

    /**
     * Wire and fuse for every load.
     *
     * @return one cable a load, in the order of the loads
     * @throws IllegalArgumentException when a load has neither fuse nor wire; the sentence names it
     */
    public List<Cable> cables() {
        return loads.stream().map(load -> Cable.of(load, rules)).toList();
    }

    /**
     * What alternator and battery give in each phase.
     *
     * @param passSeconds duration of a pass, s
     * @param waitSeconds time between two passes, s
     * @return plain driving over the time of a pass, a pass, and the time between two with the engine running
     */
    public List<Balance> balances(double passSeconds, double waitSeconds) {
        return List.of(
                balance(Load.Phase.ALWAYS, passSeconds),
                balance(Load.Phase.PASS, passSeconds),
                balance(Load.Phase.WAITING, waitSeconds));
    }

    /**
     * How long the loads of the waiting phase may run on the battery alone, engine off, the loads of the running engine off too.
     *
     * @param share share of the battery's charge that may be taken, 0 to 1
     * @return s; infinite when nothing runs then
     */
    public double waitingOnBattery(double share) {
        double current = loads.stream()
                .filter(load -> load.phase() == Load.Phase.WAITING)
                .mapToDouble(Load::meanCurrent)
                .sum();
        return share * battery / current;
    }

    private Balance balance(Load.Phase phase, double seconds) {
        return Balance.of(phase, loads, alternator * alternatorShare, seconds, battery);
    }
}
