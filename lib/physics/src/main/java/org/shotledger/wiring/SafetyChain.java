package org.shotledger.wiring;

import static org.shotledger.wiring.SafetyContact.Holder.ARMING;
import static org.shotledger.wiring.SafetyContact.Holder.ENGINE;
import static org.shotledger.wiring.SafetyContact.Holder.FUEL_PRESSURE;
import static org.shotledger.wiring.SafetyContact.Holder.MASTER;
import static org.shotledger.wiring.SafetyContact.Holder.OUTPUT;
import static org.shotledger.wiring.SafetyContact.Holder.THROTTLE;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What can let nitrous flow, and what cuts it.
 *
 * <p>Nitrous flows when every nitrous valve is open, fuel when every fuel valve is open and the pump runs; a valve is open when every
 * contact of its circuit is closed. Each rule is tried on that logic, one fault at a time; two faults at once are not looked at.
 *
 * @param circuits of valves and pump
 */
public record SafetyChain(List<SafetyCircuit> circuits) {
    public SafetyChain {
        circuits = List.copyOf(circuits);
        if (circuits.stream().noneMatch(c -> c.role() == SafetyCircuit.Role.NITROUS_VALVE)) {
            throw new IllegalArgumentException("The safety chain has no nitrous valve; give the circuit of each.");
        }
    }

    /**
     * Holds every rule against the chain.
     *
     * @return one finding a rule
     */
    public List<SafetyFinding> findings() {
        return List.of(oneOutput(), byHand(MASTER), byHand(ARMING), closedThrottle(), oneFault(), leanShot(), pump());
    }

    private SafetyFinding oneOutput() {
        Predicate<String> opens = output -> nitrous(SafetyState.of(SafetyState.without(THROTTLE), Set.of(output)));
        return finding(
                "no single controller output can open nitrous, armed and off full throttle",
                outputs().stream().filter(opens).toList(),
                "opens it alone");
    }

    private SafetyFinding byHand(SafetyContact.Holder hand) {
        boolean flows = nitrous(SafetyState.of(SafetyState.without(hand), outputs()));
        String name = hand == MASTER ? "master" : "arming";
        return new SafetyFinding(
                "the " + name + " switch cuts nitrous without the controller",
                !flows,
                flows
                        ? "with every output on it flows with the switch off"
                        : "no current reaches every valve without it");
    }

    private SafetyFinding closedThrottle() {
        boolean flows = nitrous(SafetyState.of(SafetyState.without(THROTTLE), outputs()));
        return new SafetyFinding(
                "a lifted throttle cuts nitrous without the controller",
                !flows,
                flows
                        ? "with every output on it flows on a closed throttle"
                        : "a switch on the throttle opens the circuit");
    }

    /** With one contact stuck the arming switch or the controller must still cut; with one valve stuck, both must. */
    private SafetyFinding oneFault() {
        List<String> bad = new ArrayList<>();
        SafetyState byHand = SafetyState.of(SafetyState.without(ARMING), outputs());
        SafetyState byController = SafetyState.of(SafetyState.all(), Set.of());
        for (String contact : contacts(SafetyCircuit.Role.NITROUS_VALVE)) {
            if (nitrous(byHand.withStuckClosed(contact)) && nitrous(byController.withStuckClosed(contact))) {
                bad.add(contact);
            }
        }
        for (SafetyCircuit circuit : circuits) {
            if (circuit.role() == SafetyCircuit.Role.NITROUS_VALVE
                    && (nitrous(byHand.withStuckValve(circuit.name()))
                            || nitrous(byController.withStuckValve(circuit.name())))) {
                bad.add(circuit.name());
            }
        }
        return finding("no single stuck contact or valve keeps nitrous flowing", bad, "keeps it flowing when stuck");
    }

    private SafetyFinding leanShot() {
        SafetyState full = SafetyState.of(SafetyState.all(), outputs());
        List<String> bad = new ArrayList<>();
        for (String contact : contacts(SafetyCircuit.Role.FUEL_VALVE, SafetyCircuit.Role.FUEL_PUMP)) {
            SafetyState state = full.withStuckOpen(contact);
            if (!fuel(state) && nitrous(state)) {
                bad.add(contact);
            }
        }
        return finding("whatever cuts the fuel cuts nitrous with it", bad, "cuts the fuel alone");
    }

    private SafetyFinding pump() {
        List<String> bad = new ArrayList<>();
        for (SafetyCircuit circuit : circuits) {
            boolean pump = circuit.role() == SafetyCircuit.Role.FUEL_PUMP;
            if (pump
                    && (live(circuit, SafetyState.of(SafetyState.without(ENGINE), outputs()))
                            || live(circuit, SafetyState.of(SafetyState.without(MASTER), outputs())))) {
                bad.add(circuit.name());
            }
        }
        return finding(
                "the fuel pump stops with the engine and with the master switch, without the controller",
                bad,
                "runs on");
    }

    private static SafetyFinding finding(String rule, List<String> bad, String does) {
        return new SafetyFinding(
                rule, bad.isEmpty(), bad.isEmpty() ? "none does" : String.join(", ", bad) + ": " + does);
    }

    private boolean nitrous(SafetyState state) {
        return every(SafetyCircuit.Role.NITROUS_VALVE, state);
    }

    private boolean fuel(SafetyState state) {
        return every(SafetyCircuit.Role.FUEL_VALVE, state) && every(SafetyCircuit.Role.FUEL_PUMP, state);
    }

    private boolean every(SafetyCircuit.Role role, SafetyState state) {
        return circuits.stream()
                .filter(circuit -> circuit.role() == role)
                .allMatch(circuit -> live(circuit, state)
                        || state.stuckValve().filter(circuit.name()::equals).isPresent());
    }

    private boolean live(SafetyCircuit circuit, SafetyState state) {
        return circuit.contacts().stream().allMatch(contact -> closed(contact, state));
    }

    private boolean closed(SafetyContact contact, SafetyState state) {
        if (state.stuckOpen().filter(contact.name()::equals).isPresent()) {
            return false;
        }
        if (state.stuckClosed().filter(contact.name()::equals).isPresent()) {
            return true;
        }
        if (contact.holder() == OUTPUT) {
            return state.outputs().contains(contact.output());
        }
        // a pressure switch knows only what the pump does; a valve behind it makes no pressure go away
        boolean pressure = contact.holder() != FUEL_PRESSURE || every(SafetyCircuit.Role.FUEL_PUMP, state);
        return pressure && state.holders().contains(contact.holder());
    }

    private Set<String> outputs() {
        Set<String> names = new LinkedHashSet<>();
        circuits.stream()
                .flatMap(circuit -> circuit.contacts().stream())
                .filter(contact -> contact.holder() == OUTPUT)
                .forEach(contact -> names.add(contact.output()));
        return names;
    }

    private Set<String> contacts(SafetyCircuit.Role... roles) {
        Set<String> names = new LinkedHashSet<>();
        circuits.stream()
                .filter(circuit -> List.of(roles).contains(circuit.role()))
                .flatMap(circuit -> circuit.contacts().stream())
                .forEach(contact -> names.add(contact.name()));
        return names;
    }
}
