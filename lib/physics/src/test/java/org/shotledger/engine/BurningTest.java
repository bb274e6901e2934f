package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The course of burning and the delay to knock, from their definitions. */
class BurningTest {
    /** Heywood, chapter 9: with a = 5 the share burned at the end is 1 - exp(-5) = 0.9933; half way 1 - exp(-5/8) = 0.4647 for m = 2. */
    @Test
    void burned_share_over_the_angle() {
        Wiebe burning = Wiebe.of(-20, 50);
        assertEquals(0.9933, burning.burned(30), 5e-5);
        assertEquals(0.4647, burning.burned(5), 5e-5);
        assertEquals(0, burning.burned(-20));
        assertEquals(0, burning.burned(-90));
        assertEquals(1, burning.burned(180));
        // m = 1: half way 1 - exp(-5/4) = 0.7135
        assertEquals(0.7135, new Wiebe(-20, 50, 5, 1).burned(5), 5e-5);
    }

    @Test
    void the_angle_of_a_share_is_where_that_share_is_burned() {
        for (Wiebe burning : new Wiebe[] {Wiebe.of(-20, 50), new Wiebe(-10, 40, 6.9, 1.5)}) {
            assertEquals(burning.start(), burning.angleOf(0));
            for (double share : new double[] {0.1, 0.5, 0.9}) {
                assertEquals(share, burning.burned(burning.angleOf(share)), 1e-12);
            }
        }
    }

    /** What burns over all angles is what is burned: the sum of the rises, whatever the steps. */
    @Test
    void the_share_never_falls() {
        Wiebe burning = new Wiebe(-15, 45, 5, 3);
        double before = 0;
        for (double angle = -60; angle < 180; angle += 0.5) {
            double now = burning.burned(angle);
            assertTrue(now >= before && now <= 1, "at " + angle);
            before = now;
        }
        assertEquals(1, before, 1e-12);
    }

    @Test
    void phasing_puts_the_half_burned_angle_where_it_says() {
        BurnPhasing phasing = new BurnPhasing(12, 8, 18, 50);
        Wiebe base = phasing.burning(0, 1);
        assertEquals(12, base.angleOf(0.5), 1e-9);
        assertEquals(50, base.duration());
        Wiebe late = phasing.burning(6, 1);
        assertEquals(18, late.angleOf(0.5), 1e-9, "six degrees later");
        Wiebe fast = phasing.burning(6, 0.8);
        assertEquals(40, fast.duration(), 1e-12);
        assertEquals(base.start() + 6, fast.start(), 1e-12, "the spark sets the start, not the centre");
    }

    /** Douglas and Eyzat (1978): 17.68 ms x (ON/100)^3.402 x (p/atm)^-1.7 x exp(3800 K/T). */
    @Test
    void delay_of_knock() {
        assertEquals(17.68e-3 * Math.E, Knock.delay(100, 101_325, 3800), 1e-12);
        // 40 atm and 900 K: exp(4.2222) = 68.18, 40^1.7 = 529.1: 2.278 ms
        assertEquals(2.278e-3, Knock.delay(100, 40 * 101_325, 900), 2e-6);
        double once = Knock.delay(90, 30e5, 850);
        assertEquals(once / Math.pow(2, 1.7), Knock.delay(90, 60e5, 850), 1e-9);
        assertTrue(Knock.delay(95, 30e5, 850) > once && Knock.delay(90, 30e5, 900) < once);
    }

    /** Livengood and Wu: at a state that does not change the integral is time over delay; a steady rise of its inverse gives the mean. */
    @Test
    void a_steady_end_gas_knocks_after_its_delay() {
        double delay = Knock.delay(95, 40e5, 900);
        double[] p = {40e5, 40e5, 40e5};
        double[] t = {900, 900, 900};
        assertEquals(1, Knock.integral(95, new double[] {0, 0.3 * delay, delay}, p, t), 1e-12);
        double later = Knock.delay(95, 80e5, 900);
        double mean = Knock.integral(95, new double[] {0, delay}, new double[] {40e5, 80e5}, new double[] {900, 900});
        assertEquals((1 / delay + 1 / later) / 2 * delay, mean, 1e-12);
        double[] two = {0, 1};
        for (double[] wrong : new double[][] {{1}, {1, 2, 3}}) {
            assertThrows(IllegalArgumentException.class, () -> Knock.integral(95, two, wrong, two));
            assertThrows(IllegalArgumentException.class, () -> Knock.integral(95, two, two, wrong));
        }
        double[] one = {0};
        assertThrows(IllegalArgumentException.class, () -> Knock.integral(95, one, one, one));
    }

    /** Up to 55 K the full share counts, beyond it the smaller one: 0.65 x 55 + 0.3 x 20 = 41.75 K of 75 K. */
    @Test
    void cooling_that_knock_counts_on() {
        assertEquals(0.65 * 40, KnockModel.BEST.credited(40), 1e-12);
        assertEquals(41.75, KnockModel.BEST.credited(75), 1e-12);
        assertEquals(0.65 * 55, KnockModel.BEST.credited(55), 1e-12);
    }

    /** Newton: the probe sees the wall plus what is left of the gas's excess over it; none lost is the gas itself. */
    @Test
    void a_probe_sees_between_wall_and_gas() {
        assertEquals(400 + 0.9 * 800, ExhaustProbe.NOT_MEASURED.at(1200), 1e-9);
        assertEquals(1200, new ExhaustProbe(1, 400).at(1200), 1e-9);
        assertEquals(0.75, ExhaustProbe.calibrate(1000, 1200).factor(), 1e-12);
    }

    /** Nothing of the added work arrives with 0, all with 1, half of 100 kW over 300 with 0.5. */
    @Test
    void share_of_the_nitrous_work() {
        assertEquals(350e3, new NitrousFactor(0.5, 0.5, 1).work(400e3, 300e3), 1e-6);
        assertEquals(400e3, new NitrousFactor(1, 1, 1).work(400e3, 300e3), 1e-6);
    }

    @Test
    void bands_of_the_trade_hold_their_ends() {
        CommonPractice band = new CommonPractice("band", 1, 2);
        assertTrue(band.contains(1) && band.contains(2));
        assertTrue(!band.contains(0.999) && !band.contains(2.001));
    }
}
