package org.shotledger.track;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.evaluate.PassOutcome.Moment;

class BottleOverMassTest {
    /** A bottle that passes 0.1 kg/s and then 0.08, the shot worth 50 kW and then 40 kW. */
    private static final List<Moment> EMPTYING =
            List.of(new Moment(0, 300, 6e6, 4, 0.10, 0.80, 350e3), new Moment(2, 296, 5.5e6, 3.8, 0.08, 0.84, 340e3));

    @Test
    void strength_and_pressure_follow_the_mass_taken() {
        BottleOverMass bottle = new BottleOverMass(EMPTYING, 300e3);
        assertEquals(0.18, bottle.known(), 1e-12, "mean flow over two seconds");
        assertEquals(0.9, bottle.strength(0.09), 1e-12);
        assertEquals(5.75e6, bottle.pressure(0.09), 1e-6);
        assertEquals(0.02, bottle.lambdaChange(0.09), 1e-12);
    }

    /** 0.18 kg in the first two seconds, 0.07 in the third. */
    @Test
    void mass_adds_up_from_moment_to_moment() {
        List<Moment> three =
                List.of(EMPTYING.get(0), EMPTYING.get(1), new Moment(3, 295, 5.4e6, 3.7, 0.06, 0.85, 335e3));
        assertEquals(0.25, new BottleOverMass(three, 300e3).known(), 1e-12);
    }

    @Test
    void a_shot_that_adds_no_power_cannot_fade() {
        for (double without : new double[] {350e3, 360e3}) {
            assertEquals(1, new BottleOverMass(EMPTYING, without).strength(0.09));
        }
    }
}
