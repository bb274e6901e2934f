package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Two valves by the dead-time model, by hand: at 10 Hz a millisecond is one per cent of the period. */
class PulsingTest {
    private static final Pulsing PAIR =
            new Pulsing(new Solenoid(2e-3, 0.65, 0.008, 0.006), new Solenoid(1e-3, 0.65, 0.012, 0.004), 10);

    @Test
    void at_one_duty_the_valves_deliver_different_shares() {
        Pulsing.Pulse pulse = PAIR.together(0.5);
        assertEquals(0.48, pulse.nitrousShare(), 1e-12, "50 - 8 + 6 %");
        assertEquals(0.42, pulse.fuelShare(), 1e-12, "50 - 12 + 4 %");
        assertEquals(0.5, pulse.nitrousDuty());
        assertEquals(0.5, pulse.fuelDuty());
    }

    @Test
    void with_a_duty_of_its_own_each_delivers_the_share_asked_for() {
        Pulsing.Pulse pulse = PAIR.matched(0.40);
        assertEquals(0.42, pulse.nitrousDuty(), 1e-12, "40 + 8 - 6 %");
        assertEquals(0.48, pulse.fuelDuty(), 1e-12, "40 + 12 - 4 %");
        assertEquals(0.40, pulse.nitrousShare());
        assertEquals(0.40, pulse.fuelShare());
    }

    @Test
    void the_slower_valve_sets_what_both_can_do() {
        assertEquals(0.06, PAIR.leastShare(), 1e-12, "the nitrous valve closes 6 ms late");
        assertEquals(0.88, PAIR.mostShare(), 1e-12, "the fuel valve opens 12 ms late");
    }

    /** Each delay moves by half of 2 ms: 7 and 7 ms deliver 50 %, 13 and 3 ms deliver 40 %: more nitrous oxide on less fuel. */
    @Test
    void worn_delays_make_it_leaner() {
        Pulsing.Pulse pulse = PAIR.leaner(0.002).together(0.5);
        assertEquals(0.50, pulse.nitrousShare(), 1e-12);
        assertEquals(0.40, pulse.fuelShare(), 1e-12);
        Pulsing far = PAIR.leaner(0.020);
        assertEquals(0, far.nitrous().openingDelay(), "no delay falls below zero");
        assertEquals(0.016, far.nitrous().closingDelay(), 1e-12);
        assertEquals(0.022, far.fuel().openingDelay(), 1e-12);
        assertEquals(0, far.fuel().closingDelay(), "no delay falls below zero");
    }

    @Test
    void the_frequency_is_above_0_and_at_most_200() {
        assertNotNull(new Pulsing(PAIR.nitrous(), PAIR.fuel(), 200));
        for (double frequency : new double[] {0, 200.1}) {
            var e = assertThrows(
                    IllegalArgumentException.class, () -> new Pulsing(PAIR.nitrous(), PAIR.fuel(), frequency));
            assertEquals(
                    "The pulse frequency is " + frequency + " Hz; allowed is above 0, at most 200 Hz.", e.getMessage());
        }
    }
}
