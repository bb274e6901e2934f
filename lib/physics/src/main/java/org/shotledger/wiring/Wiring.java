package org.shotledger.wiring;

import java.util.List;
import java.util.Optional;
import org.shotledger.units.Require;

/**
 * Everything electric that the plan adds to a car or leans on.
 *
 * @param rules what holds for every cable
 * @param outputCurrent current that one controller output can switch, A
 * @param supply alternator and battery
 * @param loads the loads
 * @param pinTask signals, free pins and what may be bought
 * @param pins the signals on the pins that are there, nothing bought
 * @param inputs the sensors on their inputs
 * @param safety what lets nitrous flow and what cuts it; empty where the sheet does not describe it
 */
public record Wiring(
        Cable.Rules rules,
        double outputCurrent,
        PowerSupply supply,
        List<Load> loads,
        PinTask pinTask,
        PinPlan pins,
        List<SensorInput> inputs,
        Optional<SafetyChain> safety) {
    public Wiring {
        Require.given("supply of the wiring", supply);
        loads = List.copyOf(loads);
        inputs = List.copyOf(inputs);
    }

    /**
     * The sensors without their inputs.
     *
     * @return in the order of the sheet
     */
    public List<Sensor> sensors() {
        return inputs.stream().map(SensorInput::sensor).toList();
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
     * The cable from the battery to the fuses of everything that the nitrous system adds.
     *
     * @param length from battery to fuses one way, m
     * @return the cable with the main fuse; empty where the sum of currents is beyond a blade fuse, which then is a bolted one
     */
    public Optional<Cable> feed(double length) {
        double pass = added(Load.Phase.PASS);
        double waiting = added(Load.Phase.WAITING);
        double current = Math.max(pass, waiting);
        if (current == 0) {
            return Optional.empty();
        }
        try {
            return Optional.of(Cable.of(
                    new Load("feed", current, current, 0, 1, length, true, false, false, Load.Phase.PASS), rules));
        } catch (IllegalArgumentException beyond) {
            return Optional.empty();
        }
    }

    /** All that is on at once; what is on a part of the time counts whole, as all may be on together. */
    private double added(Load.Phase phase) {
        return loads.stream()
                .filter(load -> load.phase() == phase)
                .mapToDouble(Load::current)
                .sum();
    }

    /**
     * What alternator and battery give in each phase.
     *
     * @param passSeconds duration of a pass, s
     * @param passRpm mean engine speed of a pass, rev/min
     * @param waitSeconds time between two passes, s
     * @return idling and a pass over the time of a pass, and the time between two with the engine idling
     */
    public List<CurrentBalance> balances(double passSeconds, double passRpm, double waitSeconds) {
        return List.of(
                balance(Load.Phase.ALWAYS, supply.idleRpm(), passSeconds),
                balance(Load.Phase.PASS, passRpm, passSeconds),
                balance(Load.Phase.WAITING, supply.idleRpm(), waitSeconds));
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
        return share * supply.battery() / current;
    }

    private CurrentBalance balance(Load.Phase phase, double rpm, double seconds) {
        return CurrentBalance.of(phase, loads, supply.current(rpm), seconds, supply.battery());
    }
}
