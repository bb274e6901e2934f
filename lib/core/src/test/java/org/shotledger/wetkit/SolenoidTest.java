package org.shotledger.wetkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SolenoidTest {
    private final Solenoid valve = new Solenoid(2.6e-3, 0.8, 0.008, 0.006);

    @Test
    void a_pulsed_valve_delivers_by_the_dead_time_model() {
        // dead-time model: 20 Hz, duty 0.30, opens after 8 ms, closes after 6 ms (SAE 800508, from memory)
        assertEquals(0.26, valve.deliveredFraction(0.30, 20), 1e-12);
    }

    @Test
    void a_pulse_shorter_than_the_opening_delay_delivers_nothing() {
        assertEquals(0, valve.deliveredFraction(0.15, 20));
    }

    @Test
    void a_pause_shorter_than_the_closing_delay_delivers_everything() {
        assertEquals(1, valve.deliveredFraction(0.90, 20));
    }
}
