package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    @ParameterizedTest
    @ValueSource(doubles = {0.16, 0.3, 0.5, 0.8, 1})
    void duty_and_delivered_share_are_inverse(double share) {
        Solenoid valve = new Solenoid(2e-3, 0.65, 0.012, 0.010);
        assertEquals(share, valve.deliveredFraction(valve.dutyFor(share, 15), 15), 1e-12);
    }

    @Test
    void a_share_no_pulse_can_make_is_refused_with_what_can_be_had() {
        Solenoid valve = new Solenoid(2e-3, 0.65, 0.012, 0.010);
        var refused = assertThrows(IllegalArgumentException.class, () -> valve.dutyFor(0.1, 15));
        assertTrue(refused.getMessage().contains("0.15 to 0.82"), refused.getMessage());
    }
}
