package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shotledger.curve.Curve;

class AirLawsTest {
    @Test
    void moisture_and_altitude_make_air_thinner() {
        MoistAir dry = new MoistAir(87e3, 300, 0);
        MoistAir wet = new MoistAir(87e3, 300, 0.9);
        assertTrue(wet.density() < dry.density());
        assertTrue(MoistAir.atAltitude(1250, 300, 0.35).density()
                < MoistAir.atAltitude(200, 300, 0.35).density());
        assertEquals(wet.pressure(), wet.dryPressure() + wet.vapourPressure(), 1e-9);
    }

    @Test
    void a_correction_beyond_its_limits_says_so() {
        assertTrue(PowerCorrection.SAE_J1349_2004.holds(new MoistAir(97e3, 300, 0.3)));
        assertFalse(PowerCorrection.SAE_J1349_2004.holds(new MoistAir(84e3, 308, 0.3)));
    }

    @Test
    void back_pressure_takes_volumetric_efficiency() {
        assertEquals(1, BackPressure.factor(1.2, 1.2, 9.2, 1.3), 1e-15);
        assertTrue(BackPressure.factor(1.2, 1.6, 9.2, 1.3) < 1);
        assertTrue(BackPressure.factor(1.2, 0.9, 9.2, 1.3) > 1);
    }

    /** Mass and energy over the intake stroke: residual gas in the clearance, fresh gas drawn in against the plenum pressure. */
    @Test
    void back_pressure_follows_from_a_balance() {
        double r = 9.2;
        double gamma = 1.32;
        double cv = 287 / (gamma - 1);
        double clearance = 1e-4;
        double full = r * clearance;
        double intake = 1.8e5;
        for (double exhaust : new double[] {1.1e5, 1.8e5, 2.6e5}) {
            double residual = exhaust * clearance / (287 * 1150);
            double energy = residual * cv * 1150;
            double end = intake * full / (gamma - 1);
            double fresh = (end + intake * (full - clearance) - energy) / (cv * gamma * 330);
            double filled = fresh * 287 * 330 / (intake * (full - clearance));
            assertEquals(filled, BackPressure.idealVolumetricEfficiency(exhaust / intake, r, gamma), 1e-12);
        }
    }

    @Test
    void bands_of_the_trade_hold_their_middle() {
        // 10 hp per lb/min and 0.6 lb/(hp h): common practice, no source.
        assertTrue(CommonPractice.POWER_PER_AIR.contains(10 * 745.7 * 60 / 0.45359237));
        assertTrue(CommonPractice.PETROL_CONSUMPTION.contains(0.6 * 0.45359237 / (745.7 * 3600)));
        assertFalse(CommonPractice.ETHANOL_CONSUMPTION.contains(0.6 * 0.45359237 / (745.7 * 3600)));
    }

    @Test
    void the_crank_spans_stroke_and_compression() {
        Engine e = new Engine("six", 6, 0.0845, 0.086, 0.1455, 9.2, Curve.constant("ve", 1), 8000);
        Crank crank = new Crank(e);
        assertEquals(0, crank.travel(0), 1e-15);
        assertEquals(e.stroke(), crank.travel(180), 1e-15);
        assertEquals(e.compressionRatio(), crank.volume(180) / crank.volume(0), 1e-12);
        assertEquals(crank.volume(50), crank.volume(-50), 1e-18);
        assertEquals(2.894e-3, e.displacement(), 1e-6);
    }

    @Test
    void an_engine_with_a_slipped_unit_is_refused() {
        var thrown = assertThrows(
                IllegalArgumentException.class,
                () -> new Engine("six", 6, 84.5, 0.086, 0.1455, 9.2, Curve.constant("ve", 1), 8000));
        assertEquals(
                "The bore of six is 84.5 m; allowed is 0.04 to 0.16 m. Check the value and its unit.",
                thrown.getMessage());
    }

    @Test
    void friction_grows_with_speed_and_pressure() {
        ChenFlynn f = ChenFlynn.TYPICAL;
        assertTrue(f.meanEffectivePressure(12e6, 20) > f.meanEffectivePressure(8e6, 20));
        assertTrue(f.meanEffectivePressure(8e6, 22) > f.meanEffectivePressure(8e6, 20));
    }
}
