package org.shotledger.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.shotledger.wiring.Signal.Instead.BUS;
import static org.shotledger.wiring.Signal.Instead.NOTHING;
import static org.shotledger.wiring.Signal.Instead.SHARED;
import static org.shotledger.wiring.Signal.Need.COULD;
import static org.shotledger.wiring.Signal.Need.MUST;
import static org.shotledger.wiring.Signal.Need.SHOULD;
import static org.shotledger.wiring.Signal.Way.INPUT;
import static org.shotledger.wiring.Signal.Way.OUTPUT;
import static org.shotledger.wiring.Signal.Way.PULSE;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ChannelsTest {

    @Test
    void what_must_be_there_comes_first_whatever_the_order() {
        Channels plan = Channels.set(
                1, 0, 0, List.of(new Signal("nice", INPUT, COULD, NOTHING), new Signal("vital", INPUT, MUST, NOTHING)));
        assertEquals(Map.of("vital", Channels.Fate.FITS, "nice", Channels.Fate.OUT), fates(plan));
        assertEquals(List.of(), plan.missing());
    }

    @Test
    void among_equals_the_one_without_another_way_keeps_the_channel() {
        Channels plan = Channels.set(
                1, 0, 0, List.of(new Signal("a", INPUT, MUST, BUS), new Signal("b", INPUT, MUST, NOTHING)));
        assertEquals(Map.of("a", Channels.Fate.MOVED, "b", Channels.Fate.FITS), fates(plan));
    }

    @Test
    void a_plain_output_is_spent_before_one_that_pulses() {
        Channels plan = Channels.set(
                0,
                2,
                1,
                List.of(new Signal("lamp", OUTPUT, MUST, NOTHING), new Signal("valve", PULSE, SHOULD, NOTHING)));
        assertEquals(Map.of("lamp", Channels.Fate.FITS, "valve", Channels.Fate.FITS), fates(plan));
        Channels tight = Channels.set(
                0, 1, 1, List.of(new Signal("lamp", OUTPUT, MUST, NOTHING), new Signal("valve", PULSE, MUST, SHARED)));
        assertEquals(Map.of("lamp", Channels.Fate.FITS, "valve", Channels.Fate.MOVED), fates(tight));
    }

    @Test
    void a_vital_signal_without_a_channel_is_named() {
        Channels plan = Channels.set(0, 0, 0, List.of(new Signal("vital", INPUT, MUST, NOTHING)));
        assertEquals("vital", plan.missing().get(0).name());
    }

    private static Map<String, Channels.Fate> fates(Channels plan) {
        return plan.places().stream().collect(Collectors.toMap(p -> p.signal().name(), Channels.Place::fate));
    }
}
