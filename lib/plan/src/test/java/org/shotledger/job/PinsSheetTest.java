package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.JetPair;
import org.shotledger.sheet.Problem;
import org.shotledger.wiring.Importance;
import org.shotledger.wiring.PinPlan;
import org.shotledger.wiring.PinSignal;
import org.shotledger.wiring.Wiring;

/** A controller with too few pins, on the invented demonstration car. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PinsSheetTest {
    private final String demo = Files.readString(DemoSheetTest.DEMO);
    private final String poor = demo.replace("inputs-used: 13", "inputs-used: 15")
            .replace("  outputs-used: 11", "  outputs-used: 13")
            .replaceFirst("pulsing-outputs-used: .*", "pulsing-outputs-used: 8");

    PinsSheetTest() throws IOException {}

    private Job job(String sheet) {
        return Job.read(sheet, DemoSheetTest.DEMO.getParent());
    }

    private static Outcome outcome(Job job) {
        return Evaluate.of(job.car(), job.setup().withJets(new JetPair(0.9e-3, 0.5e-3)), job.stated());
    }

    @Test
    void with_one_input_and_one_output_free_the_verdict_is_broken_and_names_the_signals() {
        Job job = job(poor);
        PinPlan pins = job.car().wiring().orElseThrow().pins();
        assertEquals(
                1,
                pins.unplaced(Importance.MUST).stream()
                        .filter(s -> s.name().equals("nitrous solenoid"))
                        .count());
        Limit limit = outcome(job).limits().find("pins").orElseThrow();
        assertEquals(Verdict.BROKEN, limit.verdict());
        assertEquals(pins.missing().size(), limit.value());
        assertTrue(limit.reason().contains("nitrous solenoid (no free pin serves"), limit.reason());
    }

    @Test
    void with_pins_enough_the_limit_is_kept_and_never_called_tight() {
        Limit limit = outcome(job(demo)).limits().find("pins").orElseThrow();
        assertEquals(Verdict.HOLDS, limit.verdict());
        assertEquals(1, limit.relativeMargin());
    }

    @Test
    void check_says_which_signal_has_no_pin_and_which_rule_of_the_chain_has_a_gap(@TempDir Path folder)
            throws IOException {
        List<Problem> problems = WiringCheck.problems(job(poor));
        assertFalse(problems.isEmpty());
        assertTrue(
                problems.stream()
                        .anyMatch(p -> p.sentence().startsWith("nitrous solenoid must be there and has no pin: ")),
                problems.toString());
        List<Problem> notices = WiringCheck.notices(job(demo));
        assertEquals(1, notices.size());
        assertTrue(notices.get(0).sentence().contains("nitrous solenoid: keeps it flowing when stuck"));
    }

    @Test
    void pins_can_stand_one_by_one_with_what_may_be_bought_and_its_price() {
        String pins = demo.replaceFirst("(?s)controller:\n  inputs: 16.*?  sensor-inputs:", """
                controller:
                  pins:
                    A3: {kind: analogue, count: 2}
                    T1: {kind: pull-up, pull-up: 2.49 kohm, switchable: yes}
                    F1: {kind: frequency, threshold: 2.5 V, edges: 300 Hz}
                    Q1: {kind: low-side, current: 1 A, pulses: 60 Hz}
                    Q2: {kind: low-side, current: 1 A}
                    net: {kind: bus, frames: 100 Hz}
                  expanders:
                    box: {price: 200, frames: 20 Hz, rate: 50 Hz, pins: {out: {kind: low-side, current: 2 A, count: 3}}}
                  sensor-inputs:""");
        Wiring wiring = job(pins).car().wiring().orElseThrow();
        assertEquals(7, wiring.pinTask().pins().size());
        assertEquals("A3 2", wiring.pinTask().pins().get(1).name());
        assertEquals(List.of(), wiring.pins().missing());
        PinPlan bought = wiring.pinTask().cheapest(Importance.COULD);
        assertTrue(bought.proven());
        assertEquals(
                List.of(),
                bought.unplaced(Importance.SHOULD).stream().map(PinSignal::name).toList());
    }
}
