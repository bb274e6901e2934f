package org.shotledger.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shotledger.wiring.SafetyCircuit.Role.FUEL_PUMP;
import static org.shotledger.wiring.SafetyCircuit.Role.FUEL_VALVE;
import static org.shotledger.wiring.SafetyCircuit.Role.NITROUS_VALVE;
import static org.shotledger.wiring.SafetyContact.Holder.ARMING;
import static org.shotledger.wiring.SafetyContact.Holder.ENGINE;
import static org.shotledger.wiring.SafetyContact.Holder.FUEL_PRESSURE;
import static org.shotledger.wiring.SafetyContact.Holder.FUSE;
import static org.shotledger.wiring.SafetyContact.Holder.MASTER;
import static org.shotledger.wiring.SafetyContact.Holder.THROTTLE;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Each verdict can be followed by hand on the circuits written down here. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SafetyChainTest {
    private static final SafetyContact MAIN = SafetyContact.of("master switch", MASTER);
    private static final SafetyContact ARM = SafetyContact.of("arming switch", ARMING);
    private static final SafetyContact WIDE = SafetyContact.of("throttle switch", THROTTLE);
    private static final SafetyContact PRESSURE = SafetyContact.of("fuel pressure switch", FUEL_PRESSURE);
    private static final SafetyContact F1 = SafetyContact.of("fuse 1", FUSE);
    private static final SafetyContact F2 = SafetyContact.of("fuse 2", FUSE);
    private static final SafetyContact OIL = SafetyContact.of("oil pressure relay", ENGINE);
    private static final SafetyContact VALVES = SafetyContact.output("valve driver", "O1");
    private static final SafetyContact SECOND = SafetyContact.output("bottle valve driver", "O2");
    private static final SafetyContact PUMP = SafetyContact.output("pump relay", "O3");

    @Test
    void two_valves_on_one_output_behind_an_arming_input_fail_where_they_should() {
        SafetyChain chain = new SafetyChain(List.of(
                circuit("nitrous valve", NITROUS_VALVE, F1, VALVES), circuit("fuel valve", FUEL_VALVE, F2, VALVES)));
        List<SafetyFinding> findings = chain.findings();
        assertEquals("O1: opens it alone", findings.get(0).because());
        assertEquals(List.of(false, false, false, false, false, false, true), holds(findings));
        assertEquals("fuse 2: cuts the fuel alone", findings.get(5).because());
    }

    @Test
    void a_chain_with_hand_throttle_second_valve_and_one_fuse_holds_every_rule() {
        SafetyChain chain = new SafetyChain(List.of(
                circuit("nitrous valve", NITROUS_VALVE, MAIN, F1, ARM, WIDE, PRESSURE, VALVES),
                circuit("bottle valve", NITROUS_VALVE, MAIN, F1, ARM, SECOND),
                circuit("fuel valve", FUEL_VALVE, MAIN, F1, ARM, WIDE, VALVES),
                circuit("fuel pump", FUEL_PUMP, MAIN, F2, OIL, PUMP)));
        assertTrue(
                chain.findings().stream().allMatch(SafetyFinding::holds),
                chain.findings().toString());
    }

    @Test
    void without_a_pressure_switch_the_pumps_fuse_gives_a_lean_shot() {
        SafetyChain chain = new SafetyChain(List.of(
                circuit("nitrous valve", NITROUS_VALVE, MAIN, F1, ARM, WIDE, VALVES),
                circuit("bottle valve", NITROUS_VALVE, MAIN, F1, ARM, SECOND),
                circuit("fuel valve", FUEL_VALVE, MAIN, F1, ARM, WIDE, VALVES),
                circuit("fuel pump", FUEL_PUMP, MAIN, F2, PUMP)));
        List<SafetyFinding> findings = chain.findings();
        assertEquals(List.of(true, true, true, true, true, false, false), holds(findings));
        assertEquals("fuse 2, pump relay: cuts the fuel alone", findings.get(5).because());
        assertEquals("fuel pump: runs on", findings.get(6).because());
    }

    @Test
    void one_valve_alone_is_the_part_that_may_stick() {
        SafetyChain chain =
                new SafetyChain(List.of(circuit("nitrous valve", NITROUS_VALVE, MAIN, F1, ARM, WIDE, VALVES)));
        assertEquals(
                "nitrous valve: keeps it flowing when stuck",
                chain.findings().get(4).because());
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new SafetyChain(List.of()))
                .getMessage()
                .contains("no nitrous valve"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> SafetyContact.output("relay", ""))
                .getMessage()
                .contains("name the pin"));
    }

    /** The plate's two currents, and the law's limit at great speed. */
    @Test
    void an_alternator_meets_its_plate_and_gives_little_at_idle() {
        Alternator alternator = new Alternator(55, 120, 2.6);
        assertEquals(55, alternator.current(1_500 / 2.6), 1e-9);
        assertEquals(120, alternator.current(6_000 / 2.6), 1e-9);
        assertEquals(0, alternator.current(300));
        double idle = alternator.current(850);
        assertTrue(idle > 55 && idle < 120);
        Load fans = new Load("fans", 100, 100, 0, 1, 1, false, false, false, Load.Phase.ALWAYS);
        CurrentBalance waiting = alternator.balance(Load.Phase.WAITING, List.of(fans), 850, 600, 200_000);
        assertEquals(100 - idle, waiting.shortfall(), 1e-9);
        assertEquals(
                0,
                alternator
                        .balance(Load.Phase.PASS, List.of(fans), 6_000, 12, 200_000)
                        .shortfall());
    }

    private static SafetyCircuit circuit(String name, SafetyCircuit.Role role, SafetyContact... contacts) {
        return new SafetyCircuit(name, role, List.of(contacts));
    }

    private static List<Boolean> holds(List<SafetyFinding> findings) {
        return findings.stream().map(SafetyFinding::holds).toList();
    }
}
