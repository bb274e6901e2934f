package org.shotledger.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.shotledger.curve.Curve;

/** An injector is a hole of constant size: Bernoulli says how its flow goes with pressure and density. */
class InjectorTest {
    /** 440 ml/min of n-heptane at 3 bar; dead time 1.2 ms at 10 V, 0.8 ms at 14 V. */
    private static final Injector INJECTOR = new Injector(
            "invented",
            440e-6 / 60,
            3e5,
            Injector.HEPTANE_DENSITY,
            Curve.of("dead time", new double[] {10, 14}, new double[] {1.2e-3, 0.8e-3}));

    /** 440 ml in a minute at 0.684 g/ml are 300.96 g in a minute. */
    @Test
    void at_its_test_point_it_passes_what_was_measured() {
        assertEquals(0.30096 / 60, INJECTOR.massFlow(684, 3e5), 1e-12);
        assertEquals(440e-6 / 60, INJECTOR.volumeFlow(684, 3e5), 1e-15);
    }

    /** Limiting laws of Bernoulli: mass flow goes with the root of the pressure drop and with the root of the density. */
    @Test
    void four_times_the_drop_or_the_density_gives_twice_the_mass() {
        double once = INJECTOR.massFlow(700, 2e5);
        assertEquals(2 * once, INJECTOR.massFlow(700, 8e5), 1e-12);
        assertEquals(2 * once, INJECTOR.massFlow(2800, 2e5), 1e-12);
        assertEquals(0, INJECTOR.massFlow(700, 0));
    }

    /** Denser fuel: more mass, less volume. Ethanol, 789 kg/m3 (handbook value at 20 degC): sqrt(789/684) = 1.0740. */
    @Test
    void ethanol_passes_seven_percent_more_mass_and_seven_less_volume_than_heptane() {
        assertEquals(1.0740, INJECTOR.massFlow(789, 3e5) / INJECTOR.massFlow(684, 3e5), 5e-5);
        assertEquals(1 / 1.0740, INJECTOR.volumeFlow(789, 3e5) / INJECTOR.volumeFlow(684, 3e5), 5e-5);
    }

    /**
     * At 6000 rpm a cycle of a four-stroke engine lasts 20 ms. The injector passes 5.016 g/s, so 1.5048 g/s over all the time are
     * 30.096 mg in a cycle and 6 ms open; 1 ms of dead time at 12 V makes 7 ms, 35 % of the cycle.
     */
    @Test
    void open_time_and_duty_by_hand() {
        assertEquals(7e-3, INJECTOR.openTime(1.5048e-3, 6000, 684, 3e5, 12), 1e-9);
        assertEquals(0.35, INJECTOR.duty(1.5048e-3, 6000, 684, 3e5, 12), 1e-7);
        assertEquals(7.2e-3, INJECTOR.openTime(1.5048e-3, 6000, 684, 3e5, 9), 1e-9, "below the table its end counts");
    }
}
