package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.Require;

/**
 * From the battery through contacts in series to something that lets nitrous or fuel pass.
 *
 * @param name of the valve or pump
 * @param role what it does
 * @param contacts in series, battery first
 */
public record SafetyCircuit(String name, Role role, List<SafetyContact> contacts) {

    /** What stands at the end of a circuit. Valves of one role lie in one line, one after the other. */
    public enum Role {
        /** A nitrous valve, closed without current. */
        NITROUS_VALVE,
        /** A valve of the nitrous system's fuel, closed without current. */
        FUEL_VALVE,
        /** The pump that feeds it. */
        FUEL_PUMP
    }

    public SafetyCircuit {
        Require.named("circuit", name);
        Require.given("role of " + name, role);
        contacts = List.copyOf(contacts);
    }
}
