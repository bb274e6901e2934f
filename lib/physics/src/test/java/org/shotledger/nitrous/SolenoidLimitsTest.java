package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** The dead-time model at its ends, with delays that are exact in binary: 1/128 s to open, 1/256 s to close, pulses of 16 Hz. */
class SolenoidLimitsTest {
    private static final Solenoid VALVE = new Solenoid(2e-3, 0.5, 1.0 / 128, 1.0 / 256);

    @Test
    void a_pulse_as_long_as_the_opening_delay_still_opens_nothing() {
        assertEquals(0, VALVE.deliveredFraction(1.0 / 8, 16));
        // a little longer, and the late closing counts: 1/8 more on time, less 1/8 to open, plus 1/16 to close
        assertEquals(3.0 / 16, VALVE.deliveredFraction(1.0 / 4, 16));
    }

    @Test
    void a_pause_as_long_as_the_closing_delay_leaves_it_open() {
        assertEquals(1, VALVE.deliveredFraction(15.0 / 16, 16));
        assertEquals(13.0 / 16, VALVE.deliveredFraction(14.0 / 16, 16));
    }

    @Test
    void off_and_on_are_what_they_say() {
        Solenoid quick = new Solenoid(2e-3, 0.5, 0, 0);
        for (Solenoid valve : new Solenoid[] {VALVE, quick}) {
            assertEquals(0, valve.deliveredFraction(0, 16));
            assertEquals(1, valve.deliveredFraction(1, 16));
            assertEquals(0, valve.dutyFor(0, 16));
            assertEquals(1, valve.dutyFor(1, 16));
        }
    }

    @Test
    void the_least_and_the_most_share_are_still_had() {
        assertEquals(1.0 / 16, VALVE.leastShare(16));
        assertEquals(7.0 / 8, VALVE.mostShare(16));
        assertEquals(1.0 / 8, VALVE.dutyFor(1.0 / 16, 16));
        assertEquals(15.0 / 16, VALVE.dutyFor(7.0 / 8, 16));
        assertThrows(IllegalArgumentException.class, () -> VALVE.dutyFor(0.0624, 16));
        assertThrows(IllegalArgumentException.class, () -> VALVE.dutyFor(0.8751, 16));
    }

    /** Half of a circle of 2 mm: 0.5 x pi mm2. */
    @Test
    void the_area_that_counts() {
        assertEquals(0.5 * Math.PI * 1e-6, VALVE.effectiveArea(), 1e-15);
    }

    @Test
    void values_beyond_their_range_are_refused() {
        refused("duty is -0.01; allowed is 0 to 1.", () -> VALVE.deliveredFraction(-0.01, 16));
        refused("duty is 1.01; allowed is 0 to 1.", () -> VALVE.deliveredFraction(1.01, 16));
        refused("pulse frequency is 0.0; allowed is above 0 Hz.", () -> VALVE.deliveredFraction(0.5, 0));
        refused("delivered share is -0.01; allowed is 0 to 1.", () -> VALVE.dutyFor(-0.01, 16));
        refused("delivered share is 1.01; allowed is 0 to 1.", () -> VALVE.dutyFor(1.01, 16));
        refused("pulse frequency is 0.0; allowed is above 0 Hz.", () -> VALVE.dutyFor(0, 0));
        refused("hole diameter is 0.0; allowed is above 0 and below 0.05 m.", () -> new Solenoid(0, 0.5, 0, 0));
        refused("hole diameter is 0.05; allowed is above 0 and below 0.05 m.", () -> new Solenoid(0.05, 0.5, 0, 0));
        refused("discharge coefficient is 0.0; allowed is above 0, at most 1.", () -> new Solenoid(2e-3, 0, 0, 0));
        refused("discharge coefficient is 1.01; allowed is above 0, at most 1.", () -> new Solenoid(2e-3, 1.01, 0, 0));
        refused("opening delay is -0.1; allowed is 0 to 1 s.", () -> new Solenoid(2e-3, 0.5, -0.1, 0));
        refused("opening delay is 1.0; allowed is 0 to 1 s.", () -> new Solenoid(2e-3, 0.5, 1, 0));
        refused("closing delay is -0.1; allowed is 0 to 1 s.", () -> new Solenoid(2e-3, 0.5, 0, -0.1));
        refused("closing delay is 1.0; allowed is 0 to 1 s.", () -> new Solenoid(2e-3, 0.5, 0, 1));
        assertNotNull(new Solenoid(2e-3, 1, 0, 0), "a coefficient of 1 is allowed");
    }

    private static void refused(String sentence, Executable e) {
        assertEquals(
                "The solenoid's " + sentence,
                assertThrows(IllegalArgumentException.class, e).getMessage());
    }
}
