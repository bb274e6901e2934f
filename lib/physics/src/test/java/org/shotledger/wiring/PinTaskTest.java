package org.shotledger.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shotledger.wiring.Importance.COULD;
import static org.shotledger.wiring.Importance.MUST;
import static org.shotledger.wiring.Importance.SHOULD;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class PinTaskTest {
    private static final PinSignal BOTTLE = PinSignal.input("bottle pressure", MUST, PinNeed.voltage(), 50);
    private static final PinSignal FUEL = PinSignal.input("fuel pressure", MUST, PinNeed.voltage(), 50);
    private static final PinSignal NITROUS_VALVE = valve("nitrous valve", 3);
    private static final PinSignal FUEL_VALVE = valve("fuel valve", 2);

    @Test
    void a_vital_signal_without_a_pin_breaks_the_plan_and_says_who_holds_the_pin() {
        PinPlan plan = new PinTask(
                        List.of(Pin.analogue("A1"), Pin.output("O1", PinKind.LOW_SIDE, 4, 100)),
                        List.of(BOTTLE, FUEL, NITROUS_VALVE),
                        List.of())
                .asBuilt();
        assertTrue(plan.broken());
        assertEquals(List.of(FUEL), plan.unplaced(MUST));
        assertEquals(
                "the pins that would serve are taken: A1 by bottle pressure",
                plan.of("fuel pressure").why());
        assertTrue(plan.proven());
    }

    @Test
    void what_must_be_there_displaces_what_could_and_a_versatile_pin_is_kept_for_who_needs_it() {
        Pin versatile = Pin.pullUp("A2", 2_200, true);
        PinSignal thermistor = PinSignal.input("bottle temperature", SHOULD, PinNeed.resistance(1_000, 5_000), 1);
        PinSignal level = PinSignal.input("cell level", COULD, PinNeed.voltage(), 1);
        PinPlan plan = new PinTask(
                        List.of(versatile, Pin.analogue("A1")), List.of(level, thermistor, BOTTLE), List.of())
                .asBuilt();
        assertEquals("A1", plan.of("bottle pressure").pin().orElseThrow().name());
        assertEquals("A2", plan.of("bottle temperature").pin().orElseThrow().name());
        assertEquals(List.of(level), plan.unplaced(COULD));
        assertFalse(plan.broken());
    }

    @Test
    void two_valves_share_an_output_only_when_it_carries_both_and_neither_is_the_others_cut() {
        Pin strong = Pin.output("O1", PinKind.LOW_SIDE, 6, 100);
        PinPlan shared = plan(strong, NITROUS_VALVE, FUEL_VALVE);
        assertEquals(List.of("nitrous valve"), shared.of("fuel valve").sharedWith());
        assertTrue(shared.of("fuel valve").why().contains("same duty from \"nitrous delivery\""));
        assertTrue(plan(Pin.output("O1", PinKind.LOW_SIDE, 4, 100), NITROUS_VALVE, FUEL_VALVE)
                .broken());
        assertTrue(plan(strong, NITROUS_VALVE, FUEL_VALVE.apartFrom("nitrous valve"))
                .broken());
        PinSignal other = PinSignal.output("pump", MUST, NITROUS_VALVE.need(), "fuel pump");
        assertEquals(Optional.of("they are driven differently"), other.sharingRefusal(NITROUS_VALVE));
        assertTrue(plan(strong, NITROUS_VALVE, other).broken());
    }

    @Test
    void valves_get_an_output_each_while_there_are_enough() {
        PinPlan plan = new PinTask(
                        List.of(Pin.output("O1", PinKind.LOW_SIDE, 6, 100), Pin.output("O2", PinKind.LOW_SIDE, 6, 100)),
                        List.of(NITROUS_VALVE, FUEL_VALVE),
                        List.of())
                .asBuilt();
        assertTrue(plan.of("fuel valve").sharedWith().isEmpty());
    }

    @Test
    void a_pin_that_does_not_serve_says_what_it_lacks() {
        PinNeed fast = PinNeed.edges(3_000, 0, 5);
        assertEquals(Optional.empty(), fast.refusal(Pin.frequency("D1", 2.5, 5_000)));
        assertTrue(fast.refusal(Pin.frequency("D1", 2.5, 1_000)).orElseThrow().contains("1000.0 Hz"));
        assertTrue(fast.refusal(Pin.frequency("D1", 4.8, 5_000)).orElseThrow().contains("changes at 4.8 V"));
        assertTrue(PinNeed.resistance(1_000, 5_000)
                .refusal(Pin.pullUp("A1", 100, false))
                .orElseThrow()
                .contains("100.0 ohm"));
        assertTrue(PinNeed.of(PinKind.LOW_SIDE, 9, 0)
                .refusal(Pin.output("O1", PinKind.HALF_BRIDGE, 8, 0))
                .orElseThrow()
                .contains("8.0 A"));
        assertEquals(
                Optional.of("it is no thermocouple input"),
                PinNeed.thermocouple().refusal(Pin.analogue("A1")));
    }

    @Test
    void each_purchase_alone_says_what_it_provides_for_and_the_cheapest_plan_gives_up_no_more_than_it_must() {
        PinSignal temperature = PinSignal.input(
                "bottle temperature", SHOULD, PinNeed.voltage(), 1, PinOption.bus("sensor with bus", 90, 10));
        PinSignal level =
                PinSignal.input("cell level", COULD, PinNeed.voltage(), 1, PinOption.ownDevice("dipstick lamp", 15));
        PinExpander box = new PinExpander("four inputs", 140, 50, 20, List.of(Pin.analogue("X1"), Pin.analogue("X2")));
        PinTask task = new PinTask(
                List.of(Pin.analogue("A1"), Pin.bus("bus", 200)),
                List.of(BOTTLE, FUEL, temperature, level),
                List.of(box));
        assertTrue(task.asBuilt().broken());
        assertEquals(
                List.of(15.0, 90.0, 140.0),
                PinRemedy.all(task).stream().map(PinRemedy::price).toList(),
                "the expander is too slow for both pressures and helps only the other two");
        assertTrue(task.cheapest(MUST).broken());
        PinPlan all = new PinTask(task.pins(), List.of(BOTTLE, temperature, level), task.expanders()).cheapest(COULD);
        assertEquals(105, all.price(), 1e-9);
        PinPlan vital = new PinTask(task.pins(), List.of(BOTTLE, temperature, level), task.expanders()).cheapest(MUST);
        assertEquals(0, vital.price(), 1e-9);
    }

    @Test
    void what_opens_nitrous_stays_off_the_bus() {
        PinSignal direct = NITROUS_VALVE.onController();
        PinExpander box = new PinExpander("outputs", 100, 50, 100, List.of(Pin.output("X1", PinKind.LOW_SIDE, 6, 100)));
        assertTrue(new PinTask(List.of(Pin.bus("bus", 200)), List.of(direct), List.of(box))
                .cheapest(COULD)
                .broken());
        assertFalse(new PinTask(List.of(Pin.bus("bus", 200)), List.of(NITROUS_VALVE), List.of(box))
                .cheapest(COULD)
                .broken());
        assertTrue(assertThrows(
                        IllegalArgumentException.class,
                        () -> PinSignal.input("x", MUST, PinNeed.voltage(), 1, PinOption.bus("b", 1, 1))
                                .onController())
                .getMessage()
                .startsWith("The signal x must stay on the controller itself"));
    }

    @Test
    void a_relay_lets_a_weak_output_switch_a_strong_load() {
        PinSignal pump = PinSignal.output(
                "pump",
                MUST,
                PinNeed.of(PinKind.LOW_SIDE, 14, 0),
                "pump",
                PinOption.relay("40 A relay", 12, PinNeed.of(PinKind.LOW_SIDE, 0.2, 0)));
        PinTask task = new PinTask(List.of(Pin.output("O1", PinKind.LOW_SIDE, 1, 0)), List.of(pump), List.of());
        assertTrue(task.asBuilt().broken());
        PinPlan plan = task.cheapest(MUST);
        assertEquals("by a relay: 40 A relay", plan.of("pump").why());
        assertEquals(12, plan.price(), 1e-9);
    }

    private static PinPlan plan(Pin pin, PinSignal... signals) {
        return new PinTask(List.of(pin), List.of(signals), List.of()).asBuilt();
    }

    private static PinSignal valve(String name, double current) {
        return PinSignal.output(name, MUST, PinNeed.of(PinKind.LOW_SIDE, current, 30), "nitrous delivery");
    }
}
